// A runway stated in magnetic degrees under a wind in true degrees: the variation comes from the World Magnetic Model at
// the aerodrome and date, and is put into the request like a charted one. The assessment itself carries no model.

import { readFile } from 'node:fs/promises';
import { assessTakeoff } from 'groundroll';
import { magneticFromTrue, magneticVariation } from 'groundroll/magnetism';
import { decimalYearFromDate, degLatitude, degLongitude, degTrue, formatQuantity } from 'groundroll/units';
import { worksheetText } from 'groundroll/worksheet';

const json = async (name) => JSON.parse(await readFile(new URL(name, import.meta.url), 'utf8'));

const date = '2026-07-14';
const found = magneticVariation({
  latitude: degLatitude(62.3),
  longitude: degLongitude(29.5),
  date: decimalYearFromDate(date),
});
if (found.zone === 'blackout') throw new Error('no usable variation here');
const { variation, uncertainty } = found;
const shown = formatQuantity(variation, 'degEast', { decimals: 1 });
console.log(`Variation ${shown}, one standard deviation ${formatQuantity(uncertainty, 'deg', { decimals: 1 })}\n`);

const request = await json('requests/takeoff-28.json');
request.performanceData = await json('performance-data/corran-four.json');
request.variation = { value: { value: variation, unit: 'degEast' }, source: `World Magnetic Model 2025, ${date}` };
for (const end of request.runway.ends) {
  const direction = magneticFromTrue({ direction: degTrue(end.direction.value), variation });
  end.direction = { value: direction, unit: 'degMagnetic' };
}

const result = assessTakeoff(request);
console.log(result.ok ? worksheetText(result.value) : result.faults);
