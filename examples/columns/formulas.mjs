// Single formulas over columns: crosswind and density altitude of hourly weather, and the variation at many places.

import { densityAltitudeColumn, variationColumn, windComponentsColumns } from 'groundroll/columns';
import { decimalYear, degTrue, ftPA } from 'groundroll/units';
import { stopwatch } from './report.mjs';
import { hoursOfYear, options, shares, weatherOfStations } from './scenario.mjs';

const { evaluations, json } = options();
const [weather] = weatherOfStations();

// One year after the other: the columns for the results are those of the first call.
const wind = (into) => windComponentsColumns({ ...weather, direction: degTrue(290), into });
const air = (into) => densityAltitudeColumn({ pressureAltitude: ftPA(1200), temperature: weather.temperature, into });

const share = shares(7);
const drawn = (unit, from, to) => ({
  unit,
  values: Float64Array.from({ length: hoursOfYear }, () => from + (to - from) * share()),
});
const places = {
  latitude: drawn('degLatitude', -60, 80),
  longitude: drawn('degLongitude', -180, 180),
  date: decimalYear(2026.5),
};
const variation = (into) => variationColumn({ ...places, into });

// The magnetic model costs a few hundred times a sine.
const shareOfRows = { wind: 1, air: 1, variation: 0.1 };

const found = Object.entries({ wind, air, variation }).map(([name, column]) => {
  const years = Math.ceil((evaluations * shareOfRows[name]) / hoursOfYear);
  let result = column();
  const stop = stopwatch();
  for (let year = 0; year < years; year += 1) result = column(result);
  return { name, rows: years * hoursOfYear, ...stop(), refused: result.refused.count, result };
});

if (json) console.log(JSON.stringify(found.map(({ result: _, ...each }) => each)));
else {
  const [{ result: components }, { result: density }, { result: declination }] = found;
  const most = (values) => values.reduce((a, b) => Math.max(a, b)).toFixed(1);
  console.log(`crosswind from the right: at most ${most(components.crosswind.values)} kt`);
  console.log(
    `density altitude: at most ${most(density.densityAltitude.values)} ft, ${density.refused.count} hours refused`,
  );
  console.log(`variation: at most ${most(declination.variation.values)} degrees east`);
  for (const { name, rows, seconds } of found) console.log(`${name}: ${Math.round(rows / seconds)} rows a second`);
}
