// Bytes that a whole entry costs an app (minified, gzip), and what each folder of `src` and each dependency adds to the
// main imports (minified), by the bundler's metafile. Prints them; the budgets stand in test/package/folder-budgets.json.
import { gzipSync } from 'node:zlib';
import { entries } from './entries.mjs';
import { minified } from './minified.mjs';

/** What an app imports for the main job, and for the page that shows it. */
const mainImports = {
  groundroll: `export * from 'groundroll';`,
  'assessTakeoff alone': `export { assessTakeoff } from 'groundroll';`,
  'assessment and worksheet': `export { assessTakeoff } from 'groundroll'; export * from 'groundroll/worksheet';`,
};

/** The folder of `src`, or the dependency, that a file of the bundle comes from. */
function origin(file) {
  const [, dependency] = /node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(file) ?? [];
  if (dependency !== undefined) return dependency;
  const [, folder] = /^dist\/(?:internal\/)?([\w-]+)/.exec(file) ?? [];
  return folder ?? file;
}

const whole = {};
for (const { specifier } of entries) {
  const { bytes } = await minified(`export * from '${specifier}';`);
  whole[specifier] = gzipSync(bytes, { level: 9 }).length;
}
const folders = {};
for (const [name, contents] of Object.entries(mainImports)) {
  const sums = {};
  for (const { file, bytes } of (await minified(contents)).files) {
    sums[origin(file)] = (sums[origin(file)] ?? 0) + bytes;
  }
  folders[name] = Object.fromEntries(Object.entries(sums).sort(([a], [b]) => a.localeCompare(b, 'en')));
}
console.log(JSON.stringify({ whole, folders }, null, 2));
