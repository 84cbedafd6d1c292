// How long a fresh process takes to load each entry of the package, as ES module and as CommonJS.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import { spread } from './harness.mjs';

const load = {
  esm: (name) => ['--input-type=module', '-e', `${start}await import(${JSON.stringify(name)});${end}`],
  cjs: (name) => ['--input-type=commonjs', '-e', `${start}require(${JSON.stringify(name)});${end}`],
};
const start = 'const start = process.hrtime.bigint();';
const end = 'process.stdout.write(String(Number(process.hrtime.bigint() - start) / 1e6));';

const timeOf = (kind, name) => Number(execFileSync(process.execPath, load[kind](name), { encoding: 'utf8' }));

/** A module of Node itself: what loading costs where there is nothing to load. */
const nothing = 'node:path';

/** Times the loading of every entry, all in turn. */
export function measureImport({ rounds }) {
  const { exports } = JSON.parse(fs.readFileSync('package.json', 'utf8'));
  const entries = Object.entries(exports)
    .filter(([, target]) => typeof target === 'object')
    .map(([subpath]) => subpath.replace('.', 'groundroll'));
  const names = [...entries, nothing, nothing];
  const times = names.map(() => ({ esm: [], cjs: [] }));
  const processes = Math.max(3, Math.round(rounds / 3));
  for (let round = 0; round < processes; round += 1) {
    for (const [i, name] of names.entries()) {
      for (const kind of ['esm', 'cjs']) times[i][kind].push(timeOf(kind, name));
    }
  }
  const of = (i) => ({ esm_ms: spread(times[i].esm), cjs_ms: spread(times[i].cjs) });
  return {
    processes,
    entries: entries.map((name, i) => ({ name, ...of(i) })),
    nothing: of(entries.length),
    control: of(entries.length + 1),
  };
}
