import { describe, expect, it } from 'vitest';
import {
  codes,
  criterion,
  judged,
  landing,
  landingRequest,
  takeoff,
  takeoffRequest,
  totals,
  withoutSteps,
} from './scenario.ts';

type Nested = number | null | readonly Nested[];

/** Every cell of a table replaced by a list along one more axis, innermost. */
function along(cells: unknown, values: readonly number[], factor: (value: number) => number): Nested {
  if (Array.isArray(cells)) return cells.map((part) => along(part, values, factor));
  return values.map((value) => (cells as number) * factor(value));
}

/** The example's table for a phase with one more axis; the law that the axis replaces is taken out of the data. */
function withAxis(
  phase: 'takeoff' | 'landing',
  axis: { quantity: string; unit: string; values: number[] },
  factor: (value: number) => number,
) {
  const data = (phase === 'takeoff' ? takeoffRequest('takeoff-28') : landingRequest('landing-28')).performanceData;
  const [table] = data[phase];
  if (table === undefined) throw new Error('no table in the example');
  const path = `performanceData.${phase}.0`;
  const grown = (figures: typeof table.distance) => {
    if (!('axes' in figures)) throw new Error('the example has a table');
    return { ...figures, axes: [...figures.axes, axis], cells: along(figures.cells, axis.values, factor) };
  };
  return { [`${path}.distance`]: grown(table.distance), [`${path}.groundRoll`]: grown(table.groundRoll) };
}

const winds = { quantity: 'headwind', unit: 'kt', values: [-8, 0, 15] };
const takeoffWind = (kt: number) => (kt >= 0 ? 1 - 0.01 * kt : 1 - 0.045 * kt);

describe('a table with an axis of headwind', () => {
  const changes = { ...withAxis('takeoff', winds, takeoffWind), 'performanceData.takeoff.0.corrections': {} };

  it.each(['takeoff-28', 'takeoff-10'])('gives for %s what the same law gives beside the table', (name) => {
    const [withTable, withLaw] = [takeoff(name, changes), takeoff(name)];
    expect(totals(withTable)).toEqual(totals(withLaw));
    expect(judged(withTable, 'takeoff-distance')).toEqual(judged(withLaw, 'takeoff-distance'));
    expect(withoutSteps(withTable.marks)).toEqual(withoutSteps(withLaw.marks));
    expect(withTable.breakEvens).toEqual(withLaw.breakEvens);
  });

  it('has no figure beyond its last tailwind, and credits no headwind beyond its last', () => {
    const wind = (from: number, knots: number) => ({
      'weather.wind': { source: 'METAR', from: { value: from, unit: 'degTrue' }, speed: { value: knots, unit: 'kt' } },
    });
    expect(criterion(takeoff('takeoff-28', { ...changes, ...wind(112, 6) }), 'takeoff-distance').verdict).toBe(
      'undetermined',
    );
    const strong = takeoff('takeoff-10', { ...changes, ...wind(112, 40) });
    expect(totals(strong)['wind']).toBeCloseTo(443.02 * 0.85, 0);
    expect(codes(strong.trace.flatMap((entry) => (entry.kind === 'decision' ? [entry] : [])))).toContain(
      'headwind-capped',
    );
  });
});

describe('a table with an axis of slope', () => {
  const slopes = { quantity: 'slope', unit: 'percent', values: [-2, 0, 2] };

  it('costs uphill at take-off, and gives no credit downhill', () => {
    const changes = withAxis('takeoff', slopes, (slope) => 1 + 0.05 * slope);
    expect(judged(takeoff('takeoff-10', changes), 'takeoff-distance')).toEqual(
      judged(takeoff('takeoff-10'), 'takeoff-distance'),
    );
    expect(judged(takeoff('takeoff-28', changes), 'takeoff-distance')).toEqual(
      judged(takeoff('takeoff-28'), 'takeoff-distance'),
    );
  });

  it('costs downhill at landing', () => {
    const changes = withAxis('landing', slopes, (slope) => 1 - 0.05 * slope);
    expect(judged(landing('landing-28', changes), 'landing-distance')).toEqual(
      judged(landing('landing-28'), 'landing-distance'),
    );
    expect(judged(landing('landing-10', changes), 'landing-distance')).toEqual(
      judged(landing('landing-10'), 'landing-distance'),
    );
  });

  it('has no figure for a steeper slope than it prints', () => {
    const gentle = withAxis('takeoff', { ...slopes, values: [-1, 0, 1] }, (slope) => 1 + 0.05 * slope);
    expect(criterion(takeoff('takeoff-10', gentle), 'takeoff-distance').verdict).toBe('undetermined');
  });
});

describe('a table on other axes of the air', () => {
  const table = (axes: unknown[], cells: unknown) => ({ axes, unit: 'm', cells });
  const at950 = { 'performanceData.takeoff.0.associatedConditions.mass': { value: 1000, unit: 'kg' } };

  it('is read at the density altitude where that is its axis', () => {
    const axis = { quantity: 'densityAltitude', unit: 'ftDA', values: [0, 4000] };
    const changes = {
      ...at950,
      'performanceData.takeoff.0.distance': table([axis], [400, 600]),
      'performanceData.takeoff.0.groundRoll': table([axis], [200, 300]),
    };
    // 2 053.55 ft dry, 2 287.88 ft with the dew point: the demo's own recomputation.
    expect(totals(takeoff('takeoff-28', changes))['manual']).toBeCloseTo(400 + 200 * (2053.55 / 4000), 1);
    const humid = takeoff('takeoff-28', { ...changes, 'policies.humidity': 'virtual temperature' });
    expect(totals(humid)['manual']).toBeCloseTo(400 + 200 * (2287.88 / 4000), 1);
  });

  it('is read at the deviation from the standard temperature where that is its axis', () => {
    const axes = [
      { quantity: 'pressureAltitude', unit: 'ftPA', values: [0, 4000] },
      { quantity: 'isaDeviation', unit: 'degCDifference', values: [0, 20] },
    ];
    const changes = {
      ...at950,
      'performanceData.takeoff.0.distance': table(axes, [
        [400, 480],
        [400, 480],
      ]),
      'performanceData.takeoff.0.groundRoll': table(axes, [
        [200, 240],
        [200, 240],
      ]),
    };
    // 26 °C less (15 - 0.0019812 x 636.58) = 12.26 °C above standard.
    expect(totals(takeoff('takeoff-28', changes))['manual']).toBeCloseTo(400 + 80 * (12.2612 / 20), 1);
  });
});
