import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError, degTrue, kt, ratio } from '../../src/units/index.ts';
import { type RunwayOrderInputs, reportedWindComponents, runwayOrder, windUsed } from '../../src/wind/index.ts';

const direction = fc.integer({ min: 1, max: 360 });
const shares = { headwindShare: ratio(0.5), tailwindShare: ratio(1.5) };
const reported = fc
  .record({
    from: fc.oneof(
      { weight: 5, arbitrary: direction.map(degTrue) },
      { weight: 1, arbitrary: fc.constant('variable' as const) },
    ),
    speed: fc.integer({ min: 0, max: 40 }),
    increment: fc.integer({ min: 0, max: 20 }),
    range: fc.option(fc.record({ from: direction.map(degTrue), to: direction.map(degTrue) }), { nil: undefined }),
  })
  .map(({ from, speed, increment, range }) => ({ from, speed: kt(speed), gust: kt(speed + increment), range }));
const ends = fc.array(direction, { minLength: 1, maxLength: 8 });

function named(directions: readonly number[]) {
  return directions.map((each, i) => ({ name: `${i}`, direction: degTrue(each) }));
}

function inOrder(x: Partial<RunwayOrderInputs> & Pick<RunwayOrderInputs, 'wind' | 'runways'>) {
  return runwayOrder({ by: 'along', ...shares, ...x });
}

describe('runwayOrder', () => {
  it('holds every runway end once, with the wind that the report and the shares give it', () => {
    fc.assert(
      fc.property(reported, ends, (wind, directions) => {
        const { runways } = inOrder({ wind, runways: named(directions) });
        expect(runways.map(({ name }) => Number(name)).sort((a, b) => a - b)).toEqual(directions.map((_, i) => i));
        for (const runway of runways) {
          const components = reportedWindComponents({
            ...wind,
            direction: runway.direction as ReturnType<typeof degTrue>,
          });
          expect(runway.components).toEqual(components);
          expect(runway.windUsed).toBeCloseTo(windUsed({ ...components, ...shares }), 8);
          expect(runway.worstCrosswind).toBe(Math.max(components.crosswindFromLeft, components.crosswindFromRight));
        }
      }),
    );
  });

  it('goes down in the wind used along, and up in the crosswind across', () => {
    fc.assert(
      fc.property(reported, ends, (wind, directions) => {
        const along = inOrder({ wind, runways: named(directions) }).runways;
        const across = inOrder({ wind, runways: named(directions), by: 'across' }).runways;
        for (const [i, { windUsed: used }] of along.entries()) {
          if (i > 0) expect(used).toBeLessThanOrEqual(along[i - 1]?.windUsed ?? Number.NaN);
        }
        for (const [i, { worstCrosswind }] of across.entries()) {
          if (i > 0)
            expect(worstCrosswind).toBeGreaterThanOrEqual((across[i - 1]?.worstCrosswind ?? Number.NaN) - 1e-9);
        }
      }),
    );
  });

  it('does not depend on the order in which the runway ends are given, but where their winds are the same', () => {
    fc.assert(
      fc.property(reported, ends, fc.constantFrom('along', 'across'), (wind, directions, by) => {
        const runways = named(directions);
        const places = (list: typeof runways) =>
          Object.fromEntries(inOrder({ wind, runways: list, by }).runways.map(({ name, place }) => [name, place]));
        expect(places([...runways].reverse())).toEqual(places(runways));
      }),
    );
  });

  it('shares a place among equal winds, and leaves the next one out', () => {
    const runways = [
      { name: '09', direction: degTrue(90) },
      { name: '18', direction: degTrue(180) },
      { name: '27', direction: degTrue(270) },
      { name: '36', direction: degTrue(360) },
    ];
    const places = (by: 'along' | 'across', from: number | 'variable') =>
      inOrder({
        wind: { from: from === 'variable' ? from : degTrue(from), speed: kt(12), gust: kt(12) },
        runways,
        by,
      }).runways.map(({ name, place }) => `${place} ${name}`);
    expect(places('along', 360)).toEqual(['1 36', '2 09', '2 27', '4 18']);
    expect(places('across', 360)).toEqual(['1 36', '2 18', '3 09', '3 27']);
    expect(places('along', 'variable')).toEqual(['1 09', '1 18', '1 27', '1 36']);
  });

  it('goes by the worst of the report: a gust or a range can cost a runway end its place', () => {
    const runways = [
      { name: '10', direction: degTrue(100) },
      { name: '16', direction: degTrue(160) },
    ];
    const steady = { from: degTrue(120), speed: kt(10), gust: kt(10) };
    expect(inOrder({ wind: steady, runways }).runways[0]?.name).toBe('10');
    const veering = { ...steady, range: { from: degTrue(110), to: degTrue(200) } };
    expect(inOrder({ wind: veering, runways }).runways[0]?.name).toBe('16');
  });

  it('puts 14 first in a south wind of 20 kt, before 24 and 10, and it alone within 13 kt of crosswind', () => {
    // Airman knowledge test, Figure 36, second-hand: of runways 24, 14 and 10 only 14 is acceptable with 13 kt.
    const runways = [
      { name: '24', direction: degTrue(240) },
      { name: '14', direction: degTrue(140) },
      { name: '10', direction: degTrue(100) },
    ];
    const wind = { from: degTrue(180), speed: kt(20), gust: kt(20) };
    const order = inOrder({ wind, runways, by: 'across' }).runways;
    expect(order.map(({ name }) => name)).toEqual(['14', '24', '10']);
    expect(order.map(({ worstCrosswind }) => worstCrosswind <= 13)).toEqual([true, false, false]);
    expect(inOrder({ wind, runways }).runways[0]?.name).toBe('14');
  });

  it('shows the wind turned by 5° to either side where it is nearly across, and there alone', () => {
    const at = (from: number) => {
      const wind = { from: degTrue(from), speed: kt(20), gust: kt(20) };
      return inOrder({ wind, runways: [{ name: '36', direction: degTrue(360) }] }).runways[0];
    };
    for (const from of [69, 111, 249, 291, 360, 180]) expect(at(from)).not.toHaveProperty('turnedByFiveDegrees');
    for (const from of [70, 110, 250, 290]) expect(at(from)?.turnedByFiveDegrees).toHaveLength(2);
    const [toTheLeft, toTheRight] = at(88)?.turnedByFiveDegrees ?? [];
    expect(toTheLeft?.windUsed).toBeCloseTo(10 * Math.cos((83 * Math.PI) / 180), 8);
    expect(toTheRight?.windUsed).toBeCloseTo(30 * Math.cos((93 * Math.PI) / 180), 8);
    expect(at(88)?.windUsed).toBeCloseTo(10 * Math.cos((88 * Math.PI) / 180), 8);
  });

  it('reckons nearly across from the runway, whichever way it lies', () => {
    const turnedFor = (from: number) => {
      const wind = { from: degTrue(from), speed: kt(20), gust: kt(20) };
      return inOrder({ wind, runways: named([45]) }).runways[0]?.turnedByFiveDegrees;
    };
    for (const across of [135, 315]) expect(turnedFor(across)).toHaveLength(2);
    for (const along of [45, 225]) expect(turnedFor(along)).toBeUndefined();
  });

  it('turns the range with the wind', () => {
    const wind = { from: degTrue(90), speed: kt(20), gust: kt(20), range: { from: degTrue(60), to: degTrue(2) } };
    const [end] = inOrder({ wind, runways: [{ name: '36', direction: degTrue(360) }] }).runways;
    expect(end?.turnedByFiveDegrees?.map(({ windUsed: used }) => used)).toEqual([-30, -30]);
    const narrow = { ...wind, range: { from: degTrue(60), to: degTrue(120) } };
    const [narrowEnd] = inOrder({ wind: narrow, runways: [{ name: '36', direction: degTrue(360) }] }).runways;
    expect(narrowEnd?.turnedByFiveDegrees?.[0].windUsed).toBeCloseTo(30 * Math.cos((115 * Math.PI) / 180), 8);
    expect(narrowEnd?.turnedByFiveDegrees?.[1].windUsed).toBeCloseTo(30 * Math.cos((125 * Math.PI) / 180), 8);
  });

  it('says that it goes by the wind alone, and recommends nothing', () => {
    for (const by of ['along', 'across'] as const) {
      const wind = { from: degTrue(90), speed: kt(8), gust: kt(8) };
      const { basis } = inOrder({ wind, runways: named([90]), by });
      expect(basis.code).toBe('wind-only');
      expect(basis.text).toMatch(/^By the wind alone, .*not considered\.$/);
      expect(basis.text).not.toMatch(/best|safe|recommend/i);
    }
  });

  const good = { wind: { from: 90, speed: 10, gust: 15 }, runways: named([90]), by: 'along', ...shares };
  it.each([
    ['by', { by: 'noise' }],
    ['by', { by: undefined }],
    ['headwindShare', { headwindShare: -0.1 }],
    ['headwindShare', { headwindShare: 1.1 }],
    ['tailwindShare', { tailwindShare: 0.9 }],
    ['tailwindShare', { tailwindShare: 3.1 }],
    ['tailwindShare', { tailwindShare: undefined }],
    ['runways', { runways: [] }],
    ['runways', { runways: undefined }],
    ['runways\\[1\\].direction', { runways: [...named([90]), { name: 'x', direction: 361 }] }],
    ['runways\\[0\\].direction', { runways: [{ name: 'x' }] }],
    ['from', { wind: { from: 361, speed: 10, gust: 10 } }],
    ['speed', { wind: { from: 90, gust: 10 } }],
    ['gust', { wind: { from: 90, speed: 10, gust: 9 } }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => runwayOrder({ ...good, ...inputs } as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
