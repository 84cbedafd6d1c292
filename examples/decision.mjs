// Before the take-off on 28: what would change the verdict, how much matters most, and how sure the distance is.

import { readFile } from 'node:fs/promises';
import {
  compareRunways,
  greatestTailwind,
  highestTemperature,
  performanceLimitedMass,
  reassessTriggers,
  runwayDistanceTable,
  sensitivities,
  shortestRunway,
  uncertainty,
} from 'groundroll/study';
import { runwayDistanceTableMarkdown } from 'groundroll/worksheet';

const readJson = async (file) => JSON.parse(await readFile(new URL(file, import.meta.url), 'utf8'));
const request = await readJson('requests/takeoff-28.json');
request.performanceData = await readJson('performance-data/corran-four.json');

/** The value of a result; faults end the example. */
function known(result) {
  if (result.ok) return result.value;
  throw new Error(result.faults.map(({ path, message }) => `${path}: ${message}`).join('\n'));
}

function print(title, lines) {
  console.log(`${title}:\n${lines.map((line) => `  ${line}`).join('\n')}\n`);
}

const degC = (value) => ({ value, unit: 'degC' });
const kg = (value, loading) => ({ mass: { value, unit: 'kg' }, loading });
const table = known(
  runwayDistanceTable(request, {
    masses: [kg(850, 'one up, half tanks'), kg(900, 'two up, half tanks'), kg(950, 'two up, full tanks')],
    temperatures: [degC(10), degC(20), degC(30), degC(40)],
  }),
);
console.log(runwayDistanceTableMarkdown(table));

const triggers = known(reassessTriggers(request));
print('Hold the verdict as long as it holds', [triggers.sentence.text]);

const limits = [performanceLimitedMass, highestTemperature, greatestTailwind, shortestRunway].map((solve) =>
  known(solve(request)),
);
print(
  'Limits, everything else as it is',
  limits.map(({ sentence }) => sentence.text),
);

const { inputs } = known(sensitivities(request));
print(
  'What matters most',
  inputs.slice(0, 5).map(({ sentence }) => sentence.text),
);

print(
  'Either end of the runway',
  known(compareRunways(request)).rows.map(({ sentence }) => sentence.text),
);

const sure = known(uncertainty(request, { cases: 10_000, seed: 1, share: 0.95 }));
print('How sure the distance is', [sure.sentence.text, ...sure.sentences.map(({ text }) => text)]);

print('Limits of use', [...new Set([...triggers.limitsOfUse, ...sure.limitsOfUse])]);
