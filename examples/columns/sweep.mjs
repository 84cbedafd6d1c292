// A year of hourly weather over many runways, in one thread: each runway end is prepared once, and all share one set of
// columns for the results, so that nothing is allocated from one to the next.

import { prepareTakeoffColumns, rowsBetween } from 'groundroll/columns';
import { report, stopwatch, summed, tallied } from './report.mjs';
import { firstHours, hoursOfYear, options, partsOf, prepared, requestOf, weatherOfStations } from './scenario.mjs';

const { evaluations, json } = options();
const weather = weatherOfStations();
const parts = partsOf(evaluations);

const stop = stopwatch();
let year;
const tallies = parts.map(({ runway, station, first, end }) => {
  const takeoff = prepared(prepareTakeoffColumns(requestOf(runway)));
  year ??= takeoff.columns({ rows: hoursOfYear, criteria: ['takeoff-distance'] });
  const hours = end - first;
  const into = rowsBetween(year, 0, hours);
  return tallied(takeoff.compare({ weather: firstHours(weather[station], hours), into }));
});
const times = stop();

report('in one thread', summed(tallies), { runways: parts.length, threads: 1, ...times }, json);
