import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError, degTrue, kt, ratio } from '../../src/units/index.ts';
import { reportedWindComponents, usabilityFactor, windUsed } from '../../src/wind/index.ts';

interface Observation {
  readonly from: number | null;
  readonly speed: number | null;
  readonly gust: number | null;
}

const direction = fc.integer({ min: 1, max: 360 });
const observation = fc.oneof(
  fc
    .record({ from: direction, speed: fc.integer({ min: 1, max: 40 }), increment: fc.integer({ min: 0, max: 20 }) })
    .map(
      ({ from, speed, increment }): Observation => ({ from, speed, gust: increment < 10 ? null : speed + increment }),
    ),
  fc.constant<Observation>({ from: 0, speed: 0, gust: null }),
  fc.constant<Observation>({ from: null, speed: 0, gust: null }),
  fc.integer({ min: 1, max: 15 }).map((speed): Observation => ({ from: null, speed, gust: null })),
  fc.constant<Observation>({ from: 180, speed: null, gust: null }),
);
const series = fc
  .array(observation, { minLength: 1, maxLength: 60 })
  .filter((all) => all.some(({ speed }) => speed !== null));
const limits = fc.record({
  crosswindLimit: fc.integer({ min: 0, max: 25 }).map(kt),
  tailwindLimit: fc.integer({ min: 0, max: 10 }).map(kt),
  tailwindShare: fc.constantFrom(1, 1.5).map(ratio),
});
const runwayEnds = fc.array(direction, { minLength: 1, maxLength: 4 });

function columns(all: readonly Observation[]) {
  return {
    directions: { unit: 'degTrue' as const, values: all.map(({ from }) => from) },
    speeds: { unit: 'kt' as const, values: all.map(({ speed }) => speed) },
    gusts: { unit: 'kt' as const, values: all.map(({ gust }) => gust) },
  };
}

function named(directions: readonly number[]) {
  return directions.map((each) => ({ name: `${each}`, direction: degTrue(each) }));
}

describe('usabilityFactor', () => {
  it('counts as the components of each single report do', () => {
    fc.assert(
      fc.property(series, limits, runwayEnds, (all, limit, directions) => {
        const usability = usabilityFactor({ ...columns(all), runways: named(directions), ...limit });
        const isWithin = ({ from, speed, gust }: Observation, runway: number) => {
          const wind = reportedWindComponents({
            from: speed === 0 ? degTrue(0) : from === null ? 'variable' : degTrue(from),
            speed: kt(speed ?? 0),
            gust: kt(gust ?? speed ?? 0),
            direction: degTrue(runway),
          });
          const used = windUsed({ ...wind, headwindShare: ratio(1), tailwindShare: limit.tailwindShare });
          const across = Math.max(wind.crosswindFromLeft, wind.crosswindFromRight);
          return across <= limit.crosswindLimit + 1e-9 && -used <= limit.tailwindLimit + 1e-9;
        };
        const counted = all.filter(({ speed }) => speed !== null);
        for (const [i, runway] of directions.entries()) {
          const within = counted.filter((each) => isWithin(each, runway)).length;
          expect(usability.runways[i]?.within).toBe(within);
          expect(usability.runways[i]?.usabilityFactor).toBe(within / counted.length);
        }
        const onAny = counted.filter((each) => directions.some((runway) => isWithin(each, runway))).length;
        expect(usability.within).toBe(onAny);
        expect(usability.usabilityFactor).toBe(onAny / counted.length);
      }),
    );
  });

  it('accounts for every observation', () => {
    fc.assert(
      fc.property(series, limits, runwayEnds, (all, limit, directions) => {
        const usability = usabilityFactor({ ...columns(all), runways: named(directions), ...limit });
        const count = (is: (each: Observation) => boolean) => all.filter(is).length;
        expect(usability.observations).toBe(all.length);
        expect(usability.missing).toBe(count(({ speed }) => speed === null));
        expect(usability.counted).toBe(all.length - usability.missing);
        expect(usability.calm).toBe(count(({ speed }) => speed === 0));
        expect(usability.variable).toBe(count(({ from, speed }) => from === null && speed !== null && speed > 0));
        for (const { within, outsideCrosswind, outsideTailwind } of usability.runways) {
          expect(within + outsideCrosswind + outsideTailwind).toBeGreaterThanOrEqual(usability.counted);
          expect(within + Math.max(outsideCrosswind, outsideTailwind)).toBeLessThanOrEqual(usability.counted);
        }
      }),
    );
  });

  it('reads typed arrays with NaN as it reads lists with null', () => {
    fc.assert(
      fc.property(series, limits, runwayEnds, (all, limit, directions) => {
        const { directions: from, speeds, gusts } = columns(all);
        const typed = (values: readonly (number | null)[]) => Float64Array.from(values, (each) => each ?? Number.NaN);
        const asTyped = {
          directions: { ...from, values: typed(from.values) },
          speeds: { ...speeds, values: typed(speeds.values) },
          gusts: { ...gusts, values: typed(gusts.values) },
        };
        const rest = { runways: named(directions), ...limit };
        expect(usabilityFactor({ ...asTyped, ...rest })).toEqual(usabilityFactor({ ...columns(all), ...rest }));
      }),
    );
  });

  it('is never less with one more runway, nor with a wider limit', () => {
    fc.assert(
      fc.property(series, limits, runwayEnds, direction, (all, limit, directions, more) => {
        const here = usabilityFactor({ ...columns(all), runways: named(directions), ...limit });
        const wider = { ...limit, crosswindLimit: kt(limit.crosswindLimit + 3) };
        const onMore = usabilityFactor({ ...columns(all), runways: named([...directions, more]), ...limit });
        expect(onMore.within).toBeGreaterThanOrEqual(here.within);
        expect(onMore.runways.slice(0, -1)).toEqual(here.runways);
        const inWider = usabilityFactor({ ...columns(all), runways: named(directions), ...wider });
        expect(inWider.within).toBeGreaterThanOrEqual(here.within);
      }),
    );
  });

  const limit = { crosswindLimit: kt(10), tailwindLimit: kt(5), tailwindShare: ratio(1) };
  const on36 = { runways: named([360]), ...limit };
  const one = (from: number | null, speed: number | null, gust?: number | null) =>
    usabilityFactor({
      directions: { unit: 'degTrue', values: [from] },
      speeds: { unit: 'kt', values: [speed] },
      gusts: gust === undefined ? undefined : { unit: 'kt', values: [gust] },
      ...on36,
    });

  it('takes a wind that equals a limit as within', () => {
    expect(one(90, 10).within).toBe(1);
    expect(one(270, 10).within).toBe(1);
    expect(one(90, 11).runways[0]).toMatchObject({ within: 0, outsideCrosswind: 1, outsideTailwind: 0 });
    expect(one(180, 5).within).toBe(1);
    expect(one(180, 6).runways[0]).toMatchObject({ within: 0, outsideCrosswind: 0, outsideTailwind: 1 });
    expect(one(30, 20).within).toBe(1);
  });

  it('compares at the gust where gusts are given, and says so', () => {
    expect(one(90, 8)).toMatchObject({ comparedAt: 'mean', within: 1 });
    expect(one(90, 8, null)).toMatchObject({ comparedAt: 'gust', within: 1 });
    expect(one(90, 8, 19)).toMatchObject({ comparedAt: 'gust', within: 0 });
    expect(one(180, 4, 14).runways[0]?.outsideTailwind).toBe(1);
  });

  it('takes a wind without a direction in full, as tailwind and as crosswind', () => {
    expect(one(null, 5)).toMatchObject({ variable: 1, within: 1 });
    expect(one(null, 6).runways[0]).toMatchObject({ outsideCrosswind: 0, outsideTailwind: 1 });
    expect(one(null, 11).runways[0]).toMatchObject({ outsideCrosswind: 1, outsideTailwind: 1 });
  });

  it('takes a calm as within, whatever direction comes with it', () => {
    for (const from of [0, 180, null]) expect(one(from, 0)).toMatchObject({ calm: 1, variable: 0, within: 1 });
  });

  const three = {
    directions: { unit: 'degTrue', values: [10, 20, 30] },
    speeds: { unit: 'kt', values: [5, 6, 7] },
    gusts: { unit: 'kt', values: [null, 16, null] },
    ...on36,
  };
  const withValues = (column: 'directions' | 'speeds' | 'gusts', ...values: unknown[]) => ({
    ...three,
    [column]: { unit: three[column].unit, values },
  });

  it.each([
    ['crosswindLimit', { ...three, crosswindLimit: -1 }],
    ['crosswindLimit', { ...three, crosswindLimit: 201 }],
    ['tailwindLimit', { ...three, tailwindLimit: -1 }],
    ['tailwindLimit', { ...three, tailwindLimit: Number.NaN }],
    ['tailwindShare', { ...three, tailwindShare: 0.9 }],
    ['tailwindShare', { ...three, tailwindShare: 3.1 }],
    ['runways', { ...three, runways: [] }],
    ['runways', { ...three, runways: undefined }],
    ['runways\\[0\\].direction', { ...three, runways: [{ name: '36', direction: -1 }] }],
    ['runways\\[0\\].direction', { ...three, runways: [{ name: '36' }] }],
    ['directions.unit', { ...three, directions: { unit: 'deg', values: [10, 20, 30] } }],
    ['directions.unit', { ...three, directions: undefined }],
    ['speeds.unit', { ...three, speeds: { unit: 'mph', values: [5, 6, 7] } }],
    ['gusts.unit', { ...three, gusts: { unit: 'mps', values: [5, 6, 7] } }],
    ['speeds.values', { ...three, speeds: { unit: 'kt' } }],
    ['directions.values', { ...three, directions: { unit: 'degTrue' } }],
    ['directions.values', withValues('directions', 10, 20)],
    ['gusts.values', withValues('gusts', null, 16, null, null)],
    ['directions\\[1\\]', withValues('directions', 10, 361, 30)],
    ['directions\\[1\\]', withValues('directions', 10, -1, 30)],
    ['directions\\[1\\]', withValues('directions', 10, 0, 30)],
    ['directions\\[1\\]', withValues('directions', 10, 'VRB', 30)],
    ['directions\\[1\\]', withValues('directions', 10, undefined, 30)],
    ['speeds\\[2\\]', withValues('speeds', 5, 6, 201)],
    ['speeds\\[2\\]', withValues('speeds', 5, 6, -1)],
    ['speeds\\[2\\]', withValues('speeds', 5, 6, Number.POSITIVE_INFINITY)],
    ['speeds\\[2\\]', withValues('speeds', 5, 6, '7')],
    ['gusts\\[1\\]', withValues('gusts', null, 5, null)],
    ['gusts\\[1\\]', withValues('gusts', null, 201, null)],
    ['speeds', withValues('speeds', null, Number.NaN, null)],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => usabilityFactor(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });

  it('refuses an empty series', () => {
    const empty = { directions: { unit: 'degTrue', values: [] }, speeds: { unit: 'kt', values: [] }, ...on36 } as const;
    expect(() => usabilityFactor(empty)).toThrow(/^speeds: 0 speeds is inconsistent with 1 to any speeds/);
  });
});
