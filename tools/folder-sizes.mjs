// Bytes that a whole entry costs an app (minified, gzip), and what each folder of `src` and each dependency adds to the
// main imports (minified), by the bundler's metafile. Prints them; the budgets stand in test/package/folder-budgets.json.
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { entries } from './entries.mjs';

/** What an app imports for the main job, and for the page that shows it. */
const mainImports = {
  groundroll: `export * from 'groundroll';`,
  'assessTakeoff alone': `export { assessTakeoff } from 'groundroll';`,
  'assessment and worksheet': `export { assessTakeoff } from 'groundroll'; export * from 'groundroll/worksheet';`,
};

/** The package by its own name, as it was built. */
const itself = {
  name: 'itself',
  setup(build) {
    build.onResolve({ filter: /^groundroll(\/|$)/ }, ({ path: specifier }) => {
      const entry = entries.find((each) => each.specifier === specifier);
      return { path: path.resolve('dist', `${entry?.name}.js`), sideEffects: false };
    });
  },
};

async function bundle(contents) {
  const { outputFiles, metafile } = await build({
    stdin: { contents, resolveDir: '.' },
    plugins: [itself],
    bundle: true,
    minify: true,
    format: 'esm',
    platform: 'neutral',
    mainFields: ['module', 'main'],
    metafile: true,
    write: false,
    logLevel: 'error',
  });
  return { bytes: outputFiles[0].contents, inputs: Object.values(metafile.outputs)[0].inputs };
}

/** The folder of `src`, or the dependency, that a file of the bundle comes from. */
function origin(file) {
  const [, dependency] = /node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(file) ?? [];
  if (dependency !== undefined) return dependency;
  const [, folder] = /^dist\/(?:internal\/)?([\w-]+)/.exec(file) ?? [];
  return folder ?? file;
}

const whole = {};
for (const { specifier } of entries) {
  const { bytes } = await bundle(`export * from '${specifier}';`);
  whole[specifier] = gzipSync(bytes, { level: 9 }).length;
}
const folders = {};
for (const [name, contents] of Object.entries(mainImports)) {
  const sums = {};
  for (const [file, { bytesInOutput }] of Object.entries((await bundle(contents)).inputs)) {
    if (bytesInOutput > 0) sums[origin(file)] = (sums[origin(file)] ?? 0) + bytesInOutput;
  }
  folders[name] = Object.fromEntries(Object.entries(sums).sort(([a], [b]) => a.localeCompare(b, 'en')));
}
console.log(JSON.stringify({ whole, folders }, null, 2));
