// `npm run fuzz`: a million random inputs for every public reader; `npm run fuzz -- readMetar 1000` a thousand for one,
// `-- all 1000` for each, and `-- readMetar 1 123456` the one with that number. Needs a build. Writes
// docs/measurements/fuzz.json after a full run of a reader, and fails when an answer is not what it must be.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import { inspect } from 'node:util';
import { fuzz, inputOf } from './fuzz.mjs';
import { publicReaders, targets } from './targets.mjs';

const full = 1_000_000;
const measurements = 'docs/measurements/fuzz.json';
const asJson = process.argv.includes('--json');
const [name = 'all', inputs = String(full), first = '0'] = process.argv.slice(2).filter((each) => each !== '--json');
const names = Object.keys(targets);
if (name !== 'all' && !names.includes(name)) throw new Error(`${name} is not one of ${names.join(', ')}`);
for (const reader of await publicReaders()) {
  if (!names.includes(reader)) throw new Error(`no inputs for ${reader}: add them to tools/fuzz/targets.mjs`);
}

const results = [];
for (const each of name === 'all' ? names : [name]) {
  if (inputs === '1') console.log(inspect(inputOf(each, Number(first)), { depth: 12, maxStringLength: 500 }));
  const begin = performance.now();
  const result = fuzz(each, { inputs: Number(inputs), first: Number(first) });
  const seconds = Math.round((performance.now() - begin) / 1000);
  results.push(result);
  if (result.problems.length > 0) process.exitCode = 1;
  else if (result.inputs >= full) record(result);
  if (!asJson) show(result, seconds);
}
if (asJson) console.log(JSON.stringify(results));

function show({ name: reader, inputs: count, ok, refused, slowest_ms, slowestInput, grown_MB, problems }, seconds) {
  const times = `slowest ${slowest_ms.toFixed(1)} ms (input ${slowestInput}), ${seconds} s`;
  console.log(`${reader}: ${count} inputs, ${ok} read, ${refused} refused, ${grown_MB.toFixed(1)} MB kept, ${times}`);
  for (const { input, problem } of problems) {
    console.error(`  input ${input} ${problem}\n  again: npm run fuzz -- ${reader} 1 ${input}`);
  }
}

function record({ name: reader, inputs: count, ok, refused, slowest_ms, grown_MB }) {
  const all = fs.existsSync(measurements) ? JSON.parse(fs.readFileSync(measurements, 'utf8')) : {};
  all[reader] = {
    inputs: count,
    read: ok,
    refused,
    slowest_ms: Number(slowest_ms.toFixed(1)),
    kept_MB: Number(Math.max(0, grown_MB).toFixed(1)),
    date: new Date().toISOString().slice(0, 10),
    commit: execFileSync('git', ['rev-parse', '--short=7', 'HEAD'], { encoding: 'utf8' }).trim(),
  };
  const lines = names
    .filter((target) => target in all)
    .map((target) => `  ${JSON.stringify(target)}: ${JSON.stringify(all[target])}`);
  fs.mkdirSync('docs/measurements', { recursive: true });
  fs.writeFileSync(measurements, `{\n${lines.join(',\n')}\n}\n`);
}
