// Writes the worksheets of the invented aeroplane at the invented field as pages to be opened in a browser or printed,
// one for each request, into the folder named (worksheets if none is): for A4 as FILE.html, for A6 as FILE-a6.html; and
// a runway distance table for the pocket.

import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { assessLanding, assessTakeoff } from 'groundroll';
import { checkValues, formulaMathml, formulaRecords } from 'groundroll/register';
import { runwayDistanceTable } from 'groundroll/study';
import { runwayDistanceTableHtml, worksheet, worksheetHtml } from 'groundroll/worksheet';

/** A request of the examples with its performance data in place. */
async function readRequest(name) {
  const file = new URL(`requests/${name}.json`, import.meta.url);
  const request = JSON.parse(await readFile(file, 'utf8'));
  const data = JSON.parse(await readFile(new URL(request.performanceData, file), 'utf8'));
  return { ...request, performanceData: data };
}

const [folder = 'worksheets'] = process.argv.slice(2);
await mkdir(folder, { recursive: true });

for (const name of ['takeoff-28', 'takeoff-10', 'landing-10', 'landing-28']) {
  const assess = name.startsWith('takeoff') ? assessTakeoff : assessLanding;
  const assessed = assess(await readRequest(name));
  if (!assessed.ok) throw new Error(JSON.stringify(assessed.faults));
  const sheet = worksheet(assessed.value, formulaRecords, checkValues);
  const mathml = formulaMathml;
  await writeFile(join(folder, `${name}.html`), worksheetHtml(sheet, { mathml, paper: 'A4' }));
  await writeFile(join(folder, `${name}-a6.html`), worksheetHtml(sheet, { mathml, paper: 'A6' }));
  console.log(`${join(folder, `${name}.html`)}: ${assessed.value.headline[0].text}`);
}

// A pre-worked grid of the same take-off, for the pocket: A6, to be folded once.
const table = runwayDistanceTable(await readRequest('takeoff-28'), {
  masses: [
    { mass: { value: 850, unit: 'kg' }, loading: 'one up, half tanks' },
    { mass: { value: 940, unit: 'kg' }, loading: 'two up, full tanks' },
    { mass: { value: 1000, unit: 'kg' }, loading: 'three up' },
    { mass: { value: 1050, unit: 'kg' } },
  ],
  temperatures: [0, 10, 20, 30, 40].map((value) => ({ value, unit: 'degC' })),
});
if (!table.ok) throw new Error(JSON.stringify(table.faults));
await writeFile(join(folder, 'runway-table-28.html'), runwayDistanceTableHtml(table.value));
console.log(`${join(folder, 'runway-table-28.html')}: ${table.value.title.text}`);
