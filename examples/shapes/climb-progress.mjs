// Time, fuel and distance to climb: tables that count from sea level, read at both ends.

import { climbProgress } from 'groundroll/aircraft';
import { degCDifference, ftPA, kg } from 'groundroll/units';
import { readData, showExamples, showLimitsOfUse } from './read.mjs';

const data = await readData('linnet-two');
showExamples(data);

for (const isaDeviation of [0, 10, 20].map(degCDifference)) {
  const climb = { data: data.climbProgress[0], from: ftPA(500), to: ftPA(5500), mass: kg(740), isaDeviation };
  const { time, fuel, distance } = climbProgress(climb);
  console.log(
    `From 500 ft to 5 500 ft, ${isaDeviation} °C above standard: ${time.toFixed(1)} min, ${fuel.value.toFixed(1)} ${fuel.unit}, ${distance.toFixed(1)} NM in still air`,
  );
}
showLimitsOfUse();
