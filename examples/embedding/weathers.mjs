// Node: one situation under many weathers, prepared once. `compare` is the fast form: verdicts and figures, no words.
//   node weathers.mjs takeoff-28.json corran-four.json

import { readFileSync } from 'node:fs';
import { prepareTakeoff } from 'groundroll';

const [request, performanceData] = process.argv.slice(2).map((file) => JSON.parse(readFileSync(file, 'utf8')));
const prepared = prepareTakeoff({ ...request, performanceData });
if (prepared.ok) {
  const weather = { from_deg: 190, speed_kt: 7, gust_kt: 17, gustReported: true, pressure: { qnh_hPa: 1006 } };
  for (const temperature_degC of [20, 30, 36]) {
    const { verdict } = prepared.value.compare({ ...weather, temperature_degC });
    console.log(`${temperature_degC} °C: ${verdict}`);
  }
} else {
  for (const { path, message } of prepared.faults) console.error(`${path}: ${message}`);
  process.exitCode = 2;
}
