import fs from 'node:fs';

/** Every entry of the package, from its own exports map: `{ name: 'wind', specifier: 'groundroll/wind' }`; `index` is the root. */
export const entries = Object.entries(JSON.parse(fs.readFileSync('package.json', 'utf8')).exports)
  .filter(([, target]) => typeof target === 'object')
  .map(([subpath]) => ({
    name: subpath === '.' ? 'index' : subpath.slice(2),
    specifier: `groundroll${subpath.slice(1)}`,
    source: subpath === '.' ? 'src/index.ts' : `src/${subpath.slice(2)}/index.ts`,
  }));
