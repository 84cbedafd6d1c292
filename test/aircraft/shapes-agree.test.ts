import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bracketTable, interpolateCell, type ReadingMode, readChart } from '../../src/aircraft/index.ts';
import { prepareTakeoff } from '../../src/assessment/index.ts';
import { takeoffRequest } from '../assessment/scenario.ts';

import {
  type At,
  anywhere,
  chartOf,
  exactly,
  gridOf,
  type Law,
  type Places,
  printed,
  straightLaw,
} from './digitised.ts';

const mode: ReadingMode = {
  favourableEdge: 'read-at-edge',
  between: 'interpolate',
  worse: 'greater',
  highIsFavourable: ['headwind'],
};

/** What a table and a chart give at one place; `undefined` where they have no figure. */
function readBoth(grid: ReturnType<typeof gridOf>, chart: ReturnType<typeof chartOf>, at: At, how = mode) {
  const cell = bracketTable(grid, at, how);
  const drawn = readChart(chart, at, how);
  return [cell.ok ? interpolateCell(cell.cell) : undefined, drawn.ok ? drawn.value : undefined] as const;
}

/** A place within what is printed, or beyond it by a share of its extent. */
const placeIn = (places: Places, beyond = 0): fc.Arbitrary<At> => {
  const along = (values: readonly number[]) => {
    const [from, to] = [values[0] as number, values.at(-1) as number];
    return anywhere(from - beyond * (to - from), to + beyond * (to - from));
  };
  const { temperature, pressureAltitude, mass, headwind } = places;
  return fc.record({
    temperature: along(temperature),
    pressureAltitude: along(pressureAltitude),
    mass: along(mass),
    headwind: along(headwind),
  });
};

const family = fc.constantFrom('pressureAltitude' as const, 'temperature' as const);
const ordinates = [100, 350, 800, 3000];

describe('a table and a chart of one law with corners', () => {
  it('both give the law itself', () => {
    fc.assert(
      fc.property(straightLaw, family, placeIn(printed), (law, of, at) => {
        const [cell, drawn] = readBoth(gridOf(law, printed), chartOf(law, printed, ordinates, of), at);
        const exact = exactly(law, at);
        expect((cell as number) / exact).toBeCloseTo(1, 12);
        expect((drawn as number) / exact).toBeCloseTo(1, 12);
      }),
    );
  });

  it('have their edges at the same places, on both sides and in both modes', () => {
    const how = fc.constantFrom('read-at-edge' as const, 'refuse' as const);
    fc.assert(
      fc.property(straightLaw, family, placeIn(printed, 0.3), how, (law, of, at, favourableEdge) => {
        const chart = chartOf(law, printed, ordinates, of);
        const [cell, drawn] = readBoth(gridOf(law, printed), chart, at, { ...mode, favourableEdge });
        expect(drawn === undefined).toBe(cell === undefined);
        if (cell !== undefined && drawn !== undefined) expect(drawn / cell).toBeCloseTo(1, 12);
      }),
    );
  });

  it('give one assessment', () => {
    const conditions = fc.record({
      temperature_degC: anywhere(-15, 38),
      qnh_hPa: anywhere(980, 1040),
      from_deg: fc.integer({ min: 1, max: 360 }),
      speed_kt: fc.integer({ min: 0, max: 12 }),
    });
    const weathers = fc.array(conditions, { minLength: 5, maxLength: 5 });
    let decided = 0;
    fc.assert(
      fc.property(straightLaw, family, anywhere(780, 1000), weathers, (law, of, mass, list) => {
        const shape = (digitise: (law: Law) => unknown) => {
          const table = 'performanceData.takeoff.0';
          const half: Law = { ...law, base: (...at) => law.base(...at) / 2 };
          const request = takeoffRequest('takeoff-10', {
            [`${table}.distance`]: digitise(law),
            [`${table}.groundRoll`]: digitise(half),
            [`${table}.corrections`]: {},
            'mass.value': mass,
          });
          const reading = prepareTakeoff(request);
          if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
          return reading.value;
        };
        const table = shape((each) => gridOf(each, printed));
        const chart = shape((each) => chartOf(each, printed, [50, ...ordinates], of));
        for (const { qnh_hPa, speed_kt, ...air } of list) {
          const weather = { ...air, speed_kt, gust_kt: speed_kt + 5, gustReported: true, range_deg: undefined };
          const at = { ...weather, dewPoint_degC: undefined, pressure: { qnh_hPa } };
          const verdicts = ({ verdict, criteria }: ReturnType<typeof table.compare>) => [
            verdict,
            ...criteria.map((each) => [each.id, each.verdict, each.value, each.limit]),
          ];
          expect(verdicts(chart.compare(at))).toEqual(verdicts(table.compare(at)));
          const distance = chart.compare(at).criteria.find(({ id }) => id === 'takeoff-distance');
          if (distance?.verdict !== 'undetermined') decided += 1;
        }
      }),
      { numRuns: 30 },
    );
    expect(decided).toBeGreaterThan(100);
  });
});

describe('a table and a chart of one smooth law', () => {
  // y = 300 m e^(aT + bP) at the reference mass; m kilograms make of it y q + k y² (1 - q), q = (m / 1000)².
  const [a, b, k] = [0.006, 1e-4, 2e-4];
  const greatest = { base: 300 * Math.exp(a * 40 + b * 4000), share: 0.36 };
  const law: Law = {
    base: (degC, feet) => 300 * Math.exp(a * degC + b * feet),
    byMass: (y, kg) => y * (kg / 1000) ** 2 + k * y * y * (1 - (kg / 1000) ** 2),
    byWind: (y, kt) => y * (1 - 0.01 * kt),
    reference: { mass: 1000, headwind: 0 },
  };
  const steps = (from: number, to: number, by: number) =>
    Array.from({ length: Math.round((to - from) / by) + 1 }, (_, i) => from + by * i);
  const places = (heat: number, height: number, mass: number): Places => ({
    temperature: steps(0, 40, heat),
    pressureAltitude: steps(0, 4000, height),
    mass: steps(800, 1000, mass),
    headwind: [0, 15],
  });
  const drawnOrdinates = steps(150, 750, 100);
  const grid = gridOf(law, places(10, 1000, 50));
  const chart = chartOf(law, places(8, 800, 40), drawnOrdinates);

  /**
   * A straight line between points h apart is off a curve by no more than h²/8 times its greatest second derivative,
   * and an error of the ordinate is passed on by no more than the slope in it.
   */
  const off = (h: number, secondDerivative: number) => ((h * h) / 8) * secondDerivative;
  const { base, share } = greatest;
  // dG/dy = q + 2 k y (1 - q) is greatest at q = 1, d²G/dy² = 2 k (1 - q), d²G/dm² = 2 (y - k y²) / 1000².
  const [slope, bent, byMass] = [1, 2 * k * share, (2 * (base - k * base * base)) / 1e6];
  const gridBound =
    off(10, bent * (a * base) ** 2 + slope * a * a * base) +
    off(1000, bent * (b * base) ** 2 + slope * b * b * base) +
    off(50, byMass);
  const chartBound = slope * (off(8, a * a * base) + off(800, b * b * base)) + off(100, bent) + off(40, byMass);

  it('have bounds that say something: under half a percent', () => {
    expect(gridBound).toBeLessThan(0.005 * 300);
    expect(chartBound).toBeLessThan(0.005 * 300);
  });

  it('are within their bounds of the law and of each other, never below it, and use up most of the bound somewhere', () => {
    let farthest = 0;
    fc.assert(
      fc.property(placeIn(places(10, 1000, 50)), (at) => {
        const [cell, drawn] = readBoth(grid, chart, at) as [number, number];
        const exact = exactly(law, at);
        // A curve that bends upwards lies below its chords.
        expect(cell - exact).toBeGreaterThanOrEqual(-1e-9);
        expect(drawn - exact).toBeGreaterThanOrEqual(-1e-9);
        expect(cell - exact).toBeLessThanOrEqual(gridBound);
        expect(drawn - exact).toBeLessThanOrEqual(chartBound);
        expect(Math.abs(cell - drawn)).toBeLessThanOrEqual(Math.max(gridBound, chartBound));
        farthest = Math.max(farthest, (cell - exact) / gridBound, (drawn - exact) / chartBound);
      }),
      { numRuns: 2000 },
    );
    expect(farthest).toBeGreaterThan(0.5);
  });
});
