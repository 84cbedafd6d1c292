// Deno: a weather report into the `weather` of a request, every group accounted for.
//   deno run --node-modules-dir=manual metar.ts "METAR ZZZZ 141350Z 19007G17KT 9999 FEW040 26/16 Q1006"

import { weatherFromMetar } from 'groundroll/assessment';
import { formatValue } from 'groundroll/units';
import { readMetar } from 'groundroll/weather-report';

const read = readMetar(Deno.args[0] ?? '');
const weather = read.ok ? weatherFromMetar(read.value) : read;

if (weather.ok) {
  const { wind, temperature, qnh } = weather.value;
  const from = typeof wind.from === 'string' ? wind.from : formatValue(wind.from.value, wind.from.unit);
  console.log(`wind from ${from} at ${formatValue(wind.speed.value, wind.speed.unit)}`);
  if (wind.gust) console.log(`gusts of ${formatValue(wind.gust.value, wind.gust.unit)}`);
  console.log(`temperature ${formatValue(temperature.value, temperature.unit)}`);
  if (qnh) console.log(`QNH ${formatValue(qnh.value, qnh.unit)}`);
} else {
  for (const { path, message } of weather.faults) console.error(`${path}: ${message}`);
  Deno.exit(2);
}
