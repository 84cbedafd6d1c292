// Single curves, constants and printed laws: the whole take-off and landing on a warm day from a short grass field.

import { readFile } from 'node:fs/promises';
import { assessLanding, assessTakeoff } from 'groundroll';
import { worksheetText } from 'groundroll/worksheet';
import { readData, showExamples } from './read.mjs';

const data = await readData('linnet-two');
showExamples(data);

// The field, the day and the set of the demo, with this aeroplane on them.
const { schema, runway, weather, factorSet } = JSON.parse(
  await readFile(new URL('../requests/takeoff-28.json', import.meta.url), 'utf8'),
);
const request = {
  runway,
  runwayInUse: '28',
  weather,
  factorSet,
  mass: { value: 720, unit: 'kg' },
  performanceData: data,
};
for (const assessed of [
  assessTakeoff({ schema, ...request }),
  assessLanding({ schema: 'groundroll/landing-request/1', ...request }),
]) {
  console.log(assessed.ok ? `\n${worksheetText(assessed.value)}` : assessed.faults);
}
