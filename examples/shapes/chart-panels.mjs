// Chart panels: temperature and altitude, then along guide lines to today's mass, wind and height, panel by panel.

import { interpolateCurves, readChart } from 'groundroll/aircraft';
import { readData, showExamples, showLimitsOfUse } from './read.mjs';

const data = await readData('skerry-two');
showExamples(data);

const mode = { favourableEdge: 'refuse', between: 'interpolate', worse: 'greater', highIsFavourable: ['headwind'] };
const point = { temperature: 20, pressureAltitude: 1000, mass: 850, headwind: 5, height: 15.24 };

const reading = readChart(data.takeoff[0].distance, point, mode, ({ quantity, unit }, inputs) => {
  const ordinate = interpolateCurves(inputs);
  console.log(`  through the panel of ${quantity} to ${inputs.along} ${unit}: ordinate ${ordinate.toFixed(1)}`);
  return ordinate;
});
console.log(reading.ok ? `To 50 ft: ${reading.value.toFixed(0)} m` : `No reading: ${reading.reason}`);
const heavier = readChart(data.takeoff[0].distance, { ...point, mass: 901 }, mode);
console.log(heavier.ok ? `To 50 ft: ${heavier.value} m` : `At 901 kg there is no reading: ${heavier.reason}`);
showLimitsOfUse();
