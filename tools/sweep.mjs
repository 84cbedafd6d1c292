// `npm run sweep`: ten million take-offs by the programs of examples/columns, in one thread, over the cores and through
// Arrow, and ten million rows of single formulas, after a build. `-- --evaluations n` sets how many; `-- --write` keeps
// the result in docs/measurements/sweep.json and in the table of the guide. A measurement, not a test; that all three
// find the same is demanded.
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import { parseArgs } from 'node:util';
import { machineOf } from './bench/machine.mjs';
import { file, guide, tableOf, withTable } from './sweep-table.mjs';

const { values } = parseArgs({
  options: { evaluations: { type: 'string', default: '10000000' }, write: { type: 'boolean', default: false } },
});

/** Each in a process of its own, so that none is compiled for another. */
function run(program) {
  const words = [`examples/columns/${program}.mjs`, '--json', '--evaluations', values.evaluations];
  return JSON.parse(execFileSync(process.execPath, words, { encoding: 'utf8' }));
}

const machine = machineOf();
const takeoffs = ['sweep', 'sweep-over-cores', 'sweep-arrow'].map(run);
const found = ({ evaluations, within, outside, undetermined, refused }) =>
  JSON.stringify({ evaluations, within, outside, undetermined, refused });
if (new Set(takeoffs.map(found)).size !== 1) throw new Error(`not the same: ${takeoffs.map(found).join('\n')}`);
const measured = { ...machine, takeoffs, formulas: run('formulas') };

console.log(tableOf(measured));
if (values.write) {
  const rounded = (_key, value) =>
    typeof value === 'number' && !Number.isInteger(value) ? Number(value.toPrecision(4)) : value;
  fs.writeFileSync(file, `${JSON.stringify(measured, rounded, 1)}\n`);
  fs.writeFileSync(guide, withTable(fs.readFileSync(guide, 'utf8'), JSON.parse(fs.readFileSync(file, 'utf8'))));
}
