// A grid: mass by pressure altitude by temperature, read between its printed figures, at its edge and beyond it.

import { interpolateTable } from 'groundroll/aircraft';
import { DomainError, degC, ftPA, kg } from 'groundroll/units';
import { readData, showExamples, showLimitsOfUse } from './read.mjs';

const data = await readData('corran-four');
showExamples(data);

const table = data.takeoff[0].distance;
const distance = (mass, pressureAltitude, temperature, options = {}) =>
  interpolateTable({
    table,
    at: { mass: kg(mass), pressureAltitude: ftPA(pressureAltitude), temperature: degC(temperature) },
    worse: 'greater',
    ...options,
  });

console.log(`Between the figures, 940 kg, 637 ft, 26 °C: ${distance(940, 637, 26).toFixed(1)} m`);
console.log(`The next worse printed figure: ${distance(940, 637, 26, { between: 'next-worse' })} m`);
console.log(`Colder than printed, read at the edge: ${distance(950, 0, -10)} m`);
try {
  distance(950, 0, 41);
} catch (error) {
  if (!(error instanceof DomainError)) throw error;
  console.log(`Warmer than printed: ${error.message}`);
}
showLimitsOfUse();
