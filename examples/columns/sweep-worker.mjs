// One thread of the sweep: prepares the take-off of a runway and writes its verdicts and distances into shared memory.

import { prepareTakeoffColumns } from 'groundroll/columns';
import { tallied } from './report.mjs';
import { prepared, requestOf } from './scenario.mjs';

export default function sweepRunway({ runway, weather, into }) {
  const takeoff = prepared(prepareTakeoffColumns(requestOf(runway)));
  return tallied(takeoff.compare({ weather, into }));
}
