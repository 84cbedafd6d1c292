// What the examples of the shapes have in common: reading a document, and its printed examples beside what it gives.

import { readFile } from 'node:fs/promises';
import { readPerformanceData, verifyExamples } from 'groundroll/aircraft';
import { limitsOfUse } from 'groundroll/assessment';
import { formatValue } from 'groundroll/units';

/** The data of one of the invented aeroplanes; a broken document ends the example with all its faults. */
export async function readData(name) {
  const file = new URL(`../performance-data/${name}.json`, import.meta.url);
  const read = readPerformanceData(JSON.parse(await readFile(file, 'utf8')));
  if (!read.ok) throw new Error(read.faults.map(({ path, message }) => `${path}: ${message}`).join('\n'));
  for (const { path, message } of read.findings) console.log(`Unlikely: ${path}: ${message}`);
  return read.value;
}

/** Prints every figure of the printed examples beside that of the data. */
export function showExamples(data) {
  console.log(`${data.identity.name}: ${data.identity.description}`);
  for (const { locator, quantity, printed, ours, unit, agrees } of verifyExamples(data)) {
    const shown = (value) => (value === undefined ? 'no figure' : formatValue(value, unit, { decimals: 1 }));
    const verdict = agrees ? 'agrees' : 'differs';
    console.log(`  ${quantity}: printed ${shown(printed)}, read ${shown(ours)}, ${verdict} (${locator})`);
  }
}

export function showLimitsOfUse() {
  for (const sentence of limitsOfUse) console.log(sentence);
}
