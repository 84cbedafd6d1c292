// How the cost of a job grows with its size.
import { prepareTakeoff, readTakeoffRequest } from 'groundroll';
import { uncertainty } from 'groundroll/study';
import { usabilityFactor } from 'groundroll/wind';
import { inPortions, interleaved, shares, spread } from './harness.mjs';
import { performanceDataOf } from './table-sizes.mjs';
import { exampleRequest, prepared, weathers } from './weathers.mjs';

const comparing = (request) => {
  const { compare } = prepared(prepareTakeoff(request));
  return inPortions(weathers, (weather) => compare(weather).criteria.length);
};

/** The curve of one job: its sizes with the time of each, all sizes in turn. */
function curve(sizes, pieceOf, { rounds }) {
  const times = interleaved(sizes.map(pieceOf), { rounds });
  return sizes.map((size, i) => ({ size, ns: spread(times[i]) }));
}

function withTables(size) {
  const request = exampleRequest('takeoff-28');
  return { ...request, performanceData: performanceDataOf(request.performanceData, size) };
}

function withObstacles(count) {
  const request = exampleRequest('takeoff-10');
  const obstacles = Array.from({ length: count }, (_, i) => ({
    name: `tree ${i + 1}`,
    end: '28',
    beyond: { value: 300 + 20 * i, unit: 'm' },
    groundElevation: { value: 438, unit: 'ftElevation' },
    height: { value: 10 + i / 2, unit: 'mHeight' },
  }));
  return { ...request, runway: { ...request.runway, obstacles } };
}

function withObservations(count) {
  const share = shares(17);
  const directions = Float64Array.from({ length: count }, () => 1 + Math.floor(360 * share()));
  const speeds = Float64Array.from({ length: count }, () => Math.floor(25 * share()));
  const x = {
    directions: { unit: 'degTrue', values: directions },
    speeds: { unit: 'kt', values: speeds },
    crosswindLimit: 15,
    tailwindLimit: 5,
    tailwindShare: 1,
    runways: [
      { name: '10', direction: 112 },
      { name: '28', direction: 292 },
    ],
  };
  return { run: () => usabilityFactor(x).counted };
}

/** Times the growth of jobs. */
export function measureCurves({ rounds }) {
  const slowRounds = Math.max(3, Math.round(rounds / 5));
  const request = exampleRequest('takeoff-28');
  return {
    tables: curve([3, 5, 9, 13, 17, 21], (size) => comparing(withTables(size)), { rounds: 5 * rounds }),
    readingTables: curve(
      [3, 5, 9, 13, 17, 21],
      (size) => {
        const large = withTables(size);
        return { run: () => Number(readTakeoffRequest(large).ok) };
      },
      { rounds: slowRounds },
    ),
    obstacles: curve([0, 1, 2, 5, 10, 20, 50], (count) => comparing(withObstacles(count)), { rounds: 5 * rounds }),
    draws: curve(
      [100, 1000, 10_000, 100_000],
      (cases) => ({ run: () => Number(uncertainty(request, { cases, seed: 1 }).ok) }),
      { rounds: slowRounds },
    ),
    observations: curve([1000, 10_000, 100_000, 1_000_000], withObservations, { rounds: slowRounds }),
  };
}
