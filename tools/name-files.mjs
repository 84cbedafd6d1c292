// After the bundler: gives each file of `dist` the name of its source in place of a hash, so that a change of content
// changes no name, and leaves out what no entry of the package reaches.
import fs from 'node:fs';
import path from 'node:path';
import { entries } from './entries.mjs';

const dist = process.argv[2] ?? 'dist';
const all = fs
  .readdirSync(dist, { recursive: true })
  .map((file) => String(file).replaceAll(path.sep, '/'))
  .filter((file) => /\.c?js$|\.d\.c?ts$/.test(file))
  .sort();
const text = new Map(all.map((file) => [file, fs.readFileSync(path.join(dist, file), 'utf8')]));
const published = entries.flatMap(({ name }) =>
  ['.js', '.cjs', '.d.ts', '.d.cts'].map((ending) => `${name}${ending}`).filter((file) => text.has(file)),
);

const specifier = /(?<=(?:from |import |require\(|import\()(["']))(\.{1,2}\/[^"']+)(?=\1)/g;

/** The file that a specifier means; declarations name their neighbours by the ending of the code. */
function target(from, to) {
  const file = path.posix.join(path.posix.dirname(from), to);
  return /\.d\.c?ts$/.test(from) ? file.replace(/\.(c?)js$/, '.d.$1ts') : file;
}

/** The name of a file that is no entry, without its ending. */
function named(file) {
  const types = /^([\w-]+)-[\w-]{8}\.d\.c?ts$/.exec(file);
  if (types) return `internal/types/${types[1]}`;
  const sources = [...text.get(file).matchAll(/\/\/ src\/(\S+)\.(?:ts|json)$/gm)];
  if (sources.length !== 1) throw new Error(`${file} holds ${sources.length} sources, not one`);
  return `internal/${sources[0][1]}`;
}

const names = new Map(published.map((file) => [file, file]));
for (const file of names.keys()) {
  for (const [, , to] of text.get(file).matchAll(specifier)) {
    const next = target(file, to);
    if (names.has(next)) continue;
    const ending = /(?:\.d\.c?ts|\.c?js)$/.exec(next)[0];
    names.set(next, `${named(next)}${ending}`);
  }
}
const taken = new Set(names.values());
if (taken.size !== names.size) throw new Error('two files of the build would have one name');

for (const file of all) fs.rmSync(path.join(dist, file));
fs.rmSync(path.join(dist, 'internal'), { recursive: true, force: true });
for (const [file, name] of names) {
  const renamed = text
    .get(file)
    .replaceAll(specifier, (_, __, to) => {
      const relative = path.posix.relative(path.posix.dirname(name), names.get(target(file, to)));
      const code = relative.replace(/\.d\.(c?)ts$/, '.$1js');
      return code.startsWith('.') ? code : `./${code}`;
    })
    .replaceAll(/_chunk([A-Z0-9]{8})cjs\b/g, (_, hash) => `_${names.get(`chunk-${hash}.cjs`).replaceAll(/\W/g, '_')}`);
  fs.mkdirSync(path.dirname(path.join(dist, name)), { recursive: true });
  fs.writeFileSync(path.join(dist, name), renamed);
}
console.log(`${dist}: ${names.size} files named by their sources`);
