// Reading documents: one request with its performance data, and what it consists of.
import { readTakeoffRequest } from 'groundroll';
import { readPerformanceData } from 'groundroll/aircraft';
import { interleaved, ratio, spread } from './harness.mjs';
import { exampleRequest } from './weathers.mjs';

export const gates = { request_ns: { most: 100_000 } };

/** Times the reading of documents. */
export function measureReading({ rounds }) {
  const request = exampleRequest('takeoff-28');
  const text = JSON.stringify(request);
  const read = () => Number(readTakeoffRequest(request).ok);
  const [whole, control, data, parsed] = interleaved(
    [
      { run: read },
      { run: read },
      { run: () => Number(readPerformanceData(request.performanceData).ok) },
      { run: () => JSON.parse(text).performanceData.takeoff.length },
    ],
    { rounds },
  );
  const ns = spread(whole);
  return {
    gates,
    request: { ns, control: ratio(control, whole), met: ns.median <= gates.request_ns.most },
    performanceData: { ns: spread(data) },
    jsonParse: { ns: spread(parsed), bytes: text.length },
  };
}
