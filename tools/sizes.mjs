// Bytes (minified, gzip) that each public function costs an app that imports it alone, dependencies included.
// Prints them; with --write it renews the committed table, whose figures are the budgets of test/package.
import fs from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import { entries } from './entries.mjs';
import { minified } from './minified.mjs';

/** @type {Record<string, number>} */
const sizes = {};
const jobs = [];

for (const { name, specifier } of entries) {
  const module = path.resolve('dist', `${name}.js`);
  const exported = await import(pathToFileURL(module).href);
  for (const key of Object.keys(exported)
    .filter((word) => typeof exported[word] === 'function')
    .sort()) {
    const label = `${specifier} ${key}`;
    sizes[label] = 0;
    jobs.push(async () => {
      const { bytes } = await minified(`export { ${key} } from '${specifier}';`);
      sizes[label] = gzipSync(bytes, { level: 9 }).length;
    });
  }
}
await Promise.all(jobs.map((job) => job()));

const table = `${JSON.stringify(sizes, null, 2)}\n`;
if (process.argv.includes('--write')) fs.writeFileSync('test/package/bundle-sizes.json', table);
process.stdout.write(table);
