// `npm run bench`: how fast the library is on this machine, after a build. `-- topic` runs one topic, `--rounds n` sets
// how often each piece takes its turn, `--only text` the formulas whose id contains it, and `--write` keeps the result in
// docs/measurements/speed.json, from which the page of the documentation is made. A benchmark, not a test: a gate that is
// not met is printed as such and fails nothing; a formula that differs from its form by hand does.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { demandFigures } from './harness.mjs';
import { machineOf } from './machine.mjs';
import { linesOf } from './report.mjs';

export const file = 'docs/measurements/speed.json';

/** What allocates varies more from round to round. */
const often = (options) => ({ ...options, rounds: 5 * options.rounds });

/** Topics in the order of the page; each is measured in a process of its own, so that none is compiled for another. */
const topics = {
  formulas: async (options) => (await import('./formulas.mjs')).measureFormulas(options),
  assessment: async (options) => (await import('./assessment.mjs')).measureAssessment(often(options)),
  variation: async (options) => (await import('./variation.mjs')).measureVariation(often(options)),
  reading: async (options) => (await import('./reading.mjs')).measureReading(often(options)),
  tables: async (options) => (await import('./tables.mjs')).measureTables(often(options)),
  units: async (options) => (await import('./units.mjs')).measureUnits(options),
  import: async (options) => (await import('./import.mjs')).measureImport(options),
  curves: async (options) => (await import('./curves.mjs')).measureCurves(options),
};

const { values, positionals } = parseArgs({
  options: {
    rounds: { type: 'string', default: '31' },
    only: { type: 'string' },
    write: { type: 'boolean', default: false },
  },
  allowPositionals: true,
});
const rounds = Number(values.rounds);
if (!(rounds >= 1)) throw new Error(`--rounds ${values.rounds}: a number from 1`);
if (values.write && values.only !== undefined) throw new Error('a part of the formulas is not written');

const [topic, ...others] = positionals;
if (topic === undefined) {
  for (const name of Object.keys(topics)) {
    execFileSync(process.execPath, [process.argv[1], name, ...process.argv.slice(2)], { stdio: 'inherit' });
  }
} else {
  if (others.length > 0 || !(topic in topics)) throw new Error(`one of the topics ${Object.keys(topics).join(', ')}`);
  await runTopic(topic);
}

async function runTopic(name) {
  const machine = machineOf();
  console.log(`\n== ${name}: ${machine.cpu}, Node ${machine.node}, commit ${machine.commit}, ${rounds} rounds`);
  const result = await topics[name]({ rounds, only: values.only });
  demandFigures();
  for (const line of linesOf(name, result)) console.log(line);
  if (values.write) write(name, { ...machine, rounds, result });
}

/** Keeps the result of one topic beside those of the others. */
function write(name, measured) {
  const before = fs.existsSync(file) ? JSON.parse(fs.readFileSync(file, 'utf8')) : {};
  const all = { ...before, [name]: measured };
  const inOrder = Object.fromEntries(Object.keys(topics).flatMap((key) => (key in all ? [[key, all[key]]] : [])));
  const rounded = (_key, value) => (typeof value === 'number' ? Number(value.toPrecision(5)) : value);
  fs.mkdirSync(path.dirname(file), { recursive: true });
  fs.writeFileSync(file, `${JSON.stringify(inOrder, rounded, 1)}\n`);
}
