// The same sweep over the cores. Weather and results lie in memory that all threads share: a task is two sets of columns
// and the number of a runway, and nothing but a few sums comes back.

import { availableParallelism } from 'node:os';
import { prepareTakeoffColumns, rowsBetween } from 'groundroll/columns';
import Tinypool from 'tinypool';
import { report, stopwatch, summed } from './report.mjs';
import { firstHours, options, partsOf, prepared, requestOf, weatherOfStations } from './scenario.mjs';

const { evaluations, json } = options();
const shared = (bytes) => new SharedArrayBuffer(bytes);
const weather = weatherOfStations(shared);
const parts = partsOf(evaluations);
const threads = Math.min(availableParallelism(), parts.length);

const stop = stopwatch();
// Every runway has the same criteria, so one set of columns holds the results of all.
const first = prepared(prepareTakeoffColumns(requestOf(0)));
const results = first.columns({ rows: evaluations, criteria: ['takeoff-distance'], allocate: shared });
const pool = new Tinypool({
  filename: new URL('sweep-worker.mjs', import.meta.url).href,
  minThreads: threads,
  maxThreads: threads,
});
try {
  const tasks = parts.map(({ runway, station, first: from, end }) =>
    pool.run({ runway, weather: firstHours(weather[station], end - from), into: rowsBetween(results, from, end) }),
  );
  const found = summed(await Promise.all(tasks));
  const times = stop();
  report('over the cores', found, { runways: parts.length, threads, ...times }, json);
} finally {
  await pool.destroy();
}
