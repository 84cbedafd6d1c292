// A grid of four axes that has density altitude, headwind and slope on its own axes, in feet and pounds.

import { interpolateTable } from 'groundroll/aircraft';
import { densityAltitude } from 'groundroll/atmosphere';
import { degC, formatQuantity, ftPA, kilogramsFromPounds, kt, lb, metresFromFeet, percent } from 'groundroll/units';
import { readData, showExamples, showLimitsOfUse } from './read.mjs';

const data = await readData('plover-two');
showExamples(data);

const today = densityAltitude({ pressureAltitude: ftPA(2000), temperature: degC(28) });
const at = { mass: kilogramsFromPounds(lb(1600)), densityAltitude: today, headwind: kt(4), slope: percent(1) };
const distance = interpolateTable({ table: data.takeoff[0].distance, at, worse: 'greater' });
console.log(`Density altitude ${today.toFixed(0)} ft, 1 600 lb, 4 kt of headwind, 1 % uphill:`);
console.log(
  `  ${distance.toFixed(0)} ft to 50 ft, ${formatQuantity(metresFromFeet(distance), 'm', { rounding: 'up' })}`,
);
showLimitsOfUse();
