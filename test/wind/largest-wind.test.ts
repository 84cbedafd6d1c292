import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError, degrees, degTrue, kt, ratio } from '../../src/units/index.ts';
import { largestWind, largestWinds, windComponents } from '../../src/wind/index.ts';
import { evenly } from '../evenly.ts';

const limits = fc.record({
  crosswindLimit: evenly(1, 40).map(kt),
  tailwindLimit: evenly(1, 20).map(kt),
  headwindLimit: fc.option(evenly(5, 60).map(kt), { nil: undefined }),
  tailwindShare: fc.constantFrom(1, 1.5).map(ratio),
  upTo: evenly(20, 200).map(kt),
});
const angle = evenly(0, 180);

/** By how much a wind exceeds each limit. */
function excess(x: { [K in keyof Parameters<typeof largestWind>[0]]: unknown }, angle_deg: number, speed: number) {
  const wind = windComponents({ from: degTrue(angle_deg), speed: kt(speed), direction: degTrue(0) });
  const { crosswindLimit, tailwindLimit, headwindLimit, tailwindShare } = x as Record<string, number>;
  return {
    crosswind: Math.abs(wind.crosswind) - Number(crosswindLimit),
    tailwind: -wind.headwind * Number(tailwindShare) - Number(tailwindLimit),
    headwind: headwindLimit === undefined ? -1 : wind.headwind - headwindLimit,
  };
}

describe('largestWind', () => {
  it('reaches one limit and exceeds none', () => {
    let answered = 0;
    fc.assert(
      fc.property(limits, angle, (x, angle_deg) => {
        const input = { ...x, angle: degrees(angle_deg) };
        const largest = largestWind(input);
        if (largest.limitedBy === 'none') {
          for (const over of Object.values(excess(input, angle_deg, x.upTo))) expect(over).toBeLessThanOrEqual(1e-9);
          return;
        }
        answered += 1;
        expect(largest.speed).toBeLessThanOrEqual(x.upTo);
        const over = excess(input, angle_deg, largest.speed);
        for (const each of Object.values(over)) expect(each).toBeLessThanOrEqual(1e-9);
        expect(over[largest.limitedBy]).toBeCloseTo(0, 9);
      }),
    );
    expect(answered).toBeGreaterThan(30);
  });

  const x = { crosswindLimit: kt(15), tailwindLimit: kt(6), tailwindShare: ratio(1.5), upTo: kt(80) };

  it('is the limit itself straight across and straight behind', () => {
    expect(largestWind({ ...x, angle: degrees(90) })).toEqual({ limitedBy: 'crosswind', speed: 15 });
    expect(largestWind({ ...x, angle: degrees(180) })).toEqual({ limitedBy: 'tailwind', speed: 4 });
    expect(largestWind({ ...x, tailwindShare: ratio(1), angle: degrees(180) })).toEqual({
      limitedBy: 'tailwind',
      speed: 6,
    });
  });

  it('knows no limit straight ahead without one of headwind, and no wind beyond those considered', () => {
    expect(largestWind({ ...x, angle: degrees(0) })).toEqual({ limitedBy: 'none' });
    expect(largestWind({ ...x, headwindLimit: kt(30), angle: degrees(0) })).toEqual({
      limitedBy: 'headwind',
      speed: 30,
    });
    expect(largestWind({ ...x, angle: degrees(8) })).toEqual({ limitedBy: 'none' });
    expect(largestWind({ ...x, angle: degrees(12) }).limitedBy).toBe('crosswind');
    expect(largestWind({ ...x, upTo: kt(10), angle: degrees(90) })).toEqual({ limitedBy: 'none' });
  });

  it('allows no wind from where a limit is zero, and is not taken in by the sine of a straight angle', () => {
    const none = { ...x, crosswindLimit: kt(0), headwindLimit: kt(0) };
    expect(largestWind({ ...none, angle: degrees(30) })).toMatchObject({ speed: 0 });
    expect(largestWind({ ...none, angle: degrees(180) })).toEqual({ limitedBy: 'tailwind', speed: 4 });
    expect(largestWind({ ...x, tailwindLimit: kt(0), headwindLimit: kt(0), angle: degrees(90) })).toEqual({
      limitedBy: 'crosswind',
      speed: 15,
    });
  });

  it('finds in a south wind of 20 kt that of the runways 24, 14 and 10 only 14 keeps 13 kt of crosswind', () => {
    // Airman knowledge test, Figure 36, second-hand: the only acceptable runway is 14.
    const allowed = [240, 140, 100].map((runway) => {
      const largest = largestWind({
        ...x,
        crosswindLimit: kt(13),
        upTo: kt(100),
        angle: degrees(Math.abs(180 - runway)),
      });
      return largest.limitedBy !== 'none' && largest.speed >= 20;
    });
    expect(allowed).toEqual([false, true, false]);
  });

  it('grows with a limit', () => {
    fc.assert(
      fc.property(limits, angle, evenly(0.1, 10), (each, angle_deg, more) => {
        const input = { ...each, angle: degrees(angle_deg) };
        const before = largestWind(input);
        const after = largestWind({ ...input, crosswindLimit: kt(each.crosswindLimit + more) });
        if (before.limitedBy === 'none') expect(after).toEqual(before);
        else if (after.limitedBy !== 'none') expect(after.speed).toBeGreaterThanOrEqual(before.speed);
      }),
    );
  });
});

describe('largestWinds', () => {
  it('is the largest wind at each angle, in the order given', () => {
    fc.assert(
      fc.property(limits, fc.array(angle, { maxLength: 20 }), (x, angles) => {
        const series = largestWinds({ ...x, angles: angles.map(degrees) });
        expect(series).toEqual(angles.map((each) => ({ angle: each, ...largestWind({ ...x, angle: degrees(each) }) })));
      }),
    );
  });
});

describe('the largest wind refuses', () => {
  const good = {
    angle: 40,
    angles: [40],
    crosswindLimit: 15,
    tailwindLimit: 5,
    headwindLimit: 30,
    tailwindShare: 1,
    upTo: 60,
  };

  it.each([
    ['crosswindLimit', { crosswindLimit: -1 }],
    ['crosswindLimit', { crosswindLimit: 201 }],
    ['crosswindLimit', { crosswindLimit: undefined }],
    ['tailwindLimit', { tailwindLimit: -1 }],
    ['tailwindLimit', { tailwindLimit: 201 }],
    ['tailwindLimit', { tailwindLimit: Number.NaN }],
    ['headwindLimit', { headwindLimit: -1 }],
    ['headwindLimit', { headwindLimit: 201 }],
    ['headwindLimit', { headwindLimit: Number.NaN }],
    ['tailwindShare', { tailwindShare: 0.99 }],
    ['tailwindShare', { tailwindShare: 3.01 }],
    ['tailwindShare', { tailwindShare: undefined }],
    ['upTo', { upTo: 0.9 }],
    ['upTo', { upTo: 201 }],
    ['upTo', { upTo: undefined }],
  ])('a bad %s, by name', (parameter, inputs) => {
    for (const formula of [largestWind, largestWinds]) {
      const call = () => formula({ ...good, ...inputs } as never);
      expect(call).toThrow(DomainError);
      expect(call).toThrow(new RegExp(`^${parameter}: `));
    }
  });

  it.each([-0.1, 180.1, Number.NaN, undefined])('an angle of %s', (bad) => {
    expect(() => largestWind({ ...good, angle: bad } as never)).toThrow(/^angle: /);
    expect(() => largestWinds({ ...good, angles: [40, bad] } as never)).toThrow(/^angles\[1\]: /);
  });

  it('a series that is none', () => {
    expect(() => largestWinds({ ...good, angles: undefined } as never)).toThrow(/^angles: /);
  });
});
