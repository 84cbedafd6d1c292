import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  combinedStandardUncertainty,
  type Distribution,
  lognormalMoments,
  normalDeviate,
  propagate,
  rectangularStandardUncertainty,
} from '../../src/study/index.ts';
import { draw, meanOf, standardUncertaintyOf } from '../../src/study/uncertainty/distribution.ts';
import { randomStreams } from '../../src/study/uncertainty/random-stream.ts';
import { evenly } from '../evenly.ts';

const normal = (standardDeviation: number) => ({ shape: 'normal', standardDeviation }) as const;

const mask = (1n << 64n) - 1n;

/** The published generator in its own 64-bit integers: xoroshiro128+ with the constants 24, 16 and 37. */
class Reference {
  private s0: bigint;
  private s1: bigint;

  constructor(seed: number) {
    this.s0 = (0xffffffffn << 32n) | BigInt(~seed >>> 0);
    this.s1 = BigInt(seed >>> 0) << 32n;
  }

  next(): number {
    const { s0, s1 } = this;
    const rotated = (x: bigint, k: bigint) => ((x << k) | (x >> (64n - k))) & mask;
    const mixed = s0 ^ s1;
    this.s0 = rotated(s0, 24n) ^ mixed ^ ((mixed << 16n) & mask);
    this.s1 = rotated(mixed, 37n);
    return Number(BigInt.asIntN(32, s0 + s1));
  }

  /** 2 to the 64th steps at once, by the published polynomial. */
  jump(): void {
    let [s0, s1] = [0n, 0n];
    for (const word of [0xdf900294d8f554a5n, 0x170865df4b3201fcn]) {
      for (let bit = 0n; bit < 64n; bit += 1n) {
        if ((word >> bit) & 1n) {
          s0 ^= this.s0;
          s1 ^= this.s1;
        }
        this.next();
      }
    }
    this.s0 = s0;
    this.s1 = s1;
  }

  /** Two integers make one number: 26 bits, then 27. */
  number(): number {
    return ((this.next() & 0x3ffffff) * 2 ** 27 + (this.next() & 0x7ffffff)) / 2 ** 53;
  }
}

describe('the draws', () => {
  it.each([1, 42, -7, 2 ** 31 - 1])('of the seed %i are those of the published generator', (seed) => {
    const reference = new Reference(seed);
    for (const next of randomStreams(seed, 3)) {
      reference.jump();
      const own = Object.assign(new Reference(0), reference);
      expect(Array.from({ length: 50 }, next)).toEqual(Array.from({ length: 50 }, () => own.number()));
    }
  });

  it('of the seed 1 are these, everywhere', () => {
    const streams = randomStreams(1, 3);
    // In units of 2 to the minus 53, so that they are integers.
    expect(streams.map((next) => [next() * 2 ** 53, next() * 2 ** 53])).toEqual([
      [4968613455967444, 8261193224199910],
      [80394165762387, 7897450262231057],
      [2903390534528220, 3840908249136993],
    ]);
  });

  it('of one quantity do not depend on how many others there are', () => {
    const alone = randomStreams(5, 1)[0] as () => number;
    const among = randomStreams(5, 6)[0] as () => number;
    expect(Array.from({ length: 20 }, alone)).toEqual(Array.from({ length: 20 }, among));
    const [first, second] = randomStreams(5, 2) as [() => number, () => number];
    expect(Array.from({ length: 20 }, first)).not.toEqual(Array.from({ length: 20 }, second));
  });

  it.each<[string, Distribution, number]>([
    ['rectangular', { shape: 'rectangular', from: -2, to: 4 }, 10],
    ['normal', normal(3), 10],
    ['lognormal', { shape: 'lognormal', standardDeviation: 0.4 }, 10],
  ])('%s have the mean and the standard uncertainty of their distribution', (_name, distribution, value) => {
    const [next] = randomStreams(3, 1) as [() => number];
    const count = 200_000;
    const drawn = Array.from({ length: count }, () => draw(value, distribution, next));
    const mean = drawn.reduce((sum, each) => sum + each, 0) / count;
    const deviation = Math.sqrt(drawn.reduce((sum, each) => sum + (each - mean) ** 2, 0) / count);
    const expected = standardUncertaintyOf(value, distribution);
    // Five standard errors.
    expect(Math.abs(mean - meanOf(value, distribution))).toBeLessThan((5 * expected) / Math.sqrt(count));
    expect(Math.abs(deviation / expected - 1)).toBeLessThan(0.02);
  });
});

describe('the published examples', () => {
  // First order and a million cases of two examples, computed by another program with another generator.
  const examples = [
    {
      name: 'gradient in ft/NM of 700 ± 50 ft/min at 75 ± 4 kt',
      model: ([rate, speed]: ArrayLike<number> & Iterable<number>) => (60 * (rate as number)) / (speed as number),
      quantities: [
        { name: 'rate of climb', value: 700, distribution: normal(50) },
        { name: 'ground speed', value: 75, distribution: normal(4) },
      ],
      value: 560,
      firstOrder: 49.9201,
      interval: [462.157, 657.843],
      mean: 561.56,
      deviation: 50.29,
      low: 467.55,
      high: 664.71,
    },
    {
      name: 'roll of 666 ± 20 ft in 10 ± 3 kt of headwind at 58 ± 1 kt',
      model: ([roll, wind, speed]: ArrayLike<number> & Iterable<number>) =>
        (roll as number) * (1 - (wind as number) / (speed as number)) ** 2,
      quantities: [
        { name: 'roll', value: 666, distribution: normal(20) },
        { name: 'headwind', value: 10, distribution: normal(3) },
        { name: 'lift-off speed', value: 58, distribution: normal(1) },
      ],
      value: 456.1427,
      firstOrder: 58.7316,
      interval: [341.029, 571.257],
      mean: 457.78,
      deviation: 58.79,
      low: 348.23,
      high: 578.59,
    },
  ];

  it.each(examples)('$name, to first order', ({ model, quantities, value, firstOrder, interval }) => {
    const found = propagate({ model: model as never, quantities, cases: 100, reach: 1e-4 }).firstOrder;
    expect(Math.abs((found?.value as number) - value)).toBeLessThan(0.00005);
    const uncertainty = found?.standardUncertainty as number;
    expect(Math.abs(uncertainty - firstOrder)).toBeLessThan(0.00005);
    expect(Math.abs(value - 1.96 * uncertainty - (interval[0] as number))).toBeLessThan(0.0006);
    expect(Math.abs(value + 1.96 * uncertainty - (interval[1] as number))).toBeLessThan(0.0006);
  });

  it.each(examples)('$name, by cases', ({ model, quantities, mean, deviation, low, high }) => {
    const cases = 400_000;
    const found = propagate({ model: model as never, quantities, cases, seed: 7, shares: [0.025, 0.975] }).monteCarlo;
    // Five standard errors of the difference between these cases and the million published.
    const error = (deviation / Math.sqrt(cases)) * Math.sqrt(1 + cases / 1e6);
    expect(Math.abs((found.mean as number) - mean)).toBeLessThan(5 * error);
    expect(Math.abs((found.standardDeviation as number) - deviation)).toBeLessThan(5 * error);
    // A quantile at 2.5 % has 2.7 standard errors of the mean.
    expect(Math.abs((found.coverings[0]?.value as number) - low)).toBeLessThan(5 * 2.7 * error);
    expect(Math.abs((found.coverings[1]?.value as number) - high)).toBeLessThan(5 * 2.7 * error);
    const [lower] = found.coverings;
    expect(lower?.from).toBeLessThanOrEqual(lower?.value as number);
    expect(lower?.to).toBeGreaterThanOrEqual(lower?.value as number);
  });
});

describe('propagate', () => {
  const quantities = [
    { name: 'x', value: 4, distribution: normal(1) },
    { name: 'y', value: 10, distribution: { shape: 'rectangular', from: -3, to: 3 } },
  ] as const;
  const sum = (values: ArrayLike<number>) => 3 * (values[0] as number) - 2 * (values[1] as number);

  it('of a sum is exact to first order, the greatest contribution first', () => {
    const found = propagate({ model: sum, quantities }).firstOrder;
    expect(found?.value).toBeCloseTo(-8, 9);
    expect(found?.standardUncertainty).toBeCloseTo(Math.sqrt(9 + 12), 9);
    expect(found?.contributions.map(({ name }) => name)).toEqual(['y', 'x']);
    expect(found?.contributions.map(({ shareOfVariance }) => shareOfVariance)[0]).toBeCloseTo(12 / 21, 9);
    expect(found?.contributions.map(({ sensitivityCoefficient }) => sensitivityCoefficient)[0]).toBeCloseTo(-2, 9);
  });

  it('covers what it says: so many of the cases and no fewer', () => {
    const drawn: number[] = [];
    const model = (values: ArrayLike<number>) => {
      const result = sum(values);
      drawn.push(result);
      return result;
    };
    const { coverings } = propagate({ model, quantities, cases: 2000, shares: [0.5, 0.95, 1] }).monteCarlo;
    // The first calls are those of the first order.
    const cases = drawn.slice(-2000);
    for (const { share, value } of coverings) {
      const covered = cases.filter((each) => each <= (value as number)).length;
      expect(covered).toBe(Math.ceil(share * 2000));
    }
  });

  it('is the same for the same seed, and another for another', () => {
    const mean = (seed: number) => propagate({ model: sum, quantities, seed, cases: 500 }).monteCarlo.mean;
    expect(mean(9)).toBe(mean(9));
    expect(mean(9)).not.toBe(mean(10));
  });

  it('counts a case without a result as covered by nothing', () => {
    const model = (values: ArrayLike<number>) => ((values[0] as number) > 4 ? undefined : (values[0] as number));
    const { firstOrder, monteCarlo } = propagate({ model, quantities, cases: 4000, shares: [0.4, 0.9] });
    expect(Math.abs(monteCarlo.withoutResult - 2000)).toBeLessThan(200);
    expect(monteCarlo.coverings[0]?.value).toBeLessThan(4);
    expect(monteCarlo.coverings[1]).toEqual({ share: 0.9 });
    // From the one side that has a result.
    expect(firstOrder?.contributions[0]).toMatchObject({ name: 'x', sensitivityCoefficient: expect.closeTo(1, 9) });
    const none = propagate({ model: () => undefined, quantities, cases: 100, shares: [0.5] });
    expect(none).toEqual({ monteCarlo: { cases: 100, seed: 1, withoutResult: 100, coverings: [{ share: 0.5 }] } });
    const alone = propagate({ model: (values) => (values[0] === 4 ? 1 : undefined), quantities, cases: 100 });
    expect(alone.firstOrder).toBeUndefined();
  });

  it('takes a quantity without uncertainty', () => {
    const sure = [{ name: 'x', value: 2, distribution: normal(0) }];
    const found = propagate({ model: (values) => values[0] as number, quantities: sure, cases: 100 });
    expect(found.firstOrder).toMatchObject({ value: 2, standardUncertainty: 0 });
    expect(found.firstOrder?.contributions).toMatchObject([{ contribution: 0, shareOfVariance: 0 }]);
    expect(found.monteCarlo.standardDeviation).toBe(0);
  });

  it('refuses what is not within its range, by its name', () => {
    const refused = (changed: object) => () => propagate({ model: sum, quantities, ...changed });
    for (const share of [0, 1.1, Number.NaN, '0.5']) expect(refused({ shares: [0.5, share] })).toThrow('shares[1]: ');
    for (const reach of [0, -1, 4, Number.NaN]) expect(refused({ reach })).toThrow('reach: ');
    for (const list of [null, 'x', {}]) expect(refused({ quantities: list })).toThrow('quantities: ');
    const [x] = quantities;
    expect(refused({ quantities: [x, { ...x, value: Number.NaN }] })).toThrow('quantities[1].value: NaN units');
    expect(refused({ quantities: [null] })).toThrow('quantities[0].value: ');
    const shaped = (distribution: unknown) => refused({ quantities: [x, { ...x, distribution }] });
    expect(shaped(null)).toThrow('quantities[1].distribution.shape: "undefined" is none of "rectangular"');
    expect(shaped({ shape: 'uniform' })).toThrow('quantities[1].distribution.shape: "uniform"');
    expect(shaped({ shape: 'rectangular', from: 1, to: 0.9 })).toThrow(
      'distribution.to: 0.9 units is not within 1 to ',
    );
    expect(shaped({ shape: 'lognormal', standardDeviation: 2.1 })).toThrow('distribution.standardDeviation: 2.1');
    expect(shaped(normal(-0.1))).toThrow('distribution.standardDeviation: -0.1 units');
  });

  it('passes on no figure that is none', () => {
    for (const result of [Number.NaN, Number.POSITIVE_INFINITY, 'far', null])
      expect(() => propagate({ model: () => result as number, quantities })).toThrow('model: ');
    let calls = 0;
    const later = () => {
      calls += 1;
      return calls > 50 ? Number.NaN : 1;
    };
    expect(() => propagate({ model: later, quantities })).toThrow('model: NaN units');
  });

  it('takes the ends of its ranges', () => {
    const shares = [1e-6, 1];
    const wide = { shape: 'rectangular', from: 2, to: 2 } as const;
    const found = propagate({
      model: sum,
      quantities: [{ ...quantities[0], distribution: wide }, quantities[1]],
      shares,
    });
    expect(found.monteCarlo.coverings.map(({ share }) => share)).toEqual(shares);
  });

  it('refuses a number of cases or a seed that is none', () => {
    for (const cases of [99, 1_000_001, 100.5, Number.NaN])
      expect(() => propagate({ model: sum, quantities, cases })).toThrow('cases: ');
    for (const seed of [0.5, 2 ** 31, -(2 ** 31) - 1])
      expect(() => propagate({ model: sum, quantities, seed })).toThrow('seed: ');
  });
});

describe('combinedStandardUncertainty', () => {
  const list = fc.array(fc.tuple(evenly(-1e3, 1e3), evenly(0, 1e3)), { maxLength: 8 });
  const of = (pairs: readonly (readonly [number, number])[]) =>
    combinedStandardUncertainty({
      sensitivityCoefficients: pairs.map(([coefficient]) => coefficient),
      standardUncertainties: pairs.map(([, uncertainty]) => uncertainty),
    });

  it('is no less than any part, no more than their sum, and does not ask for the order or the sign', () => {
    fc.assert(
      fc.property(list, (pairs) => {
        const parts = pairs.map(([coefficient, uncertainty]) => Math.abs(coefficient * uncertainty));
        const combined = of(pairs);
        const sum = parts.reduce((total, part) => total + part, 0);
        expect(combined).toBeLessThanOrEqual(sum * (1 + 1e-12) + 1e-9);
        for (const part of parts) expect(combined).toBeGreaterThanOrEqual(part * (1 - 1e-12) - 1e-9);
        expect(of([...pairs].reverse())).toBeCloseTo(combined, 6);
        expect(of(pairs.map(([coefficient, uncertainty]) => [-coefficient, uncertainty]))).toBe(combined);
      }),
    );
  });

  it('refuses lists of different length and entries out of range', () => {
    expect(of([])).toBe(0);
    expect(() => combinedStandardUncertainty({ sensitivityCoefficients: [1, 2], standardUncertainties: [1] })).toThrow(
      'standardUncertainties: 1 entries is inconsistent with 2 to 2',
    );
    expect(() => of([[1, -1]])).toThrow('standardUncertainties[0]: -1');
    expect(() => of([[1, 1e13]])).toThrow('standardUncertainties[0]');
    expect(() => of([[Number.NaN, 1]])).toThrow('sensitivityCoefficients[0]: NaN');
    expect(() => of([[-1e13, 1]])).toThrow('sensitivityCoefficients[0]');
    expect(() => of([[1e13, 1]])).toThrow('sensitivityCoefficients[0]');
  });
});

describe('the distributions', () => {
  it('rectangular: as many variances as the integral says', () => {
    fc.assert(
      fc.property(evenly(1e-6, 1e6), (halfWidth) => {
        // The mean square of evenly spaced points, refined.
        const points = 2000;
        let square = 0;
        for (let i = 0; i < points; i += 1) square += (((i + 0.5) / points) * 2 - 1) ** 2 / points;
        const integral = halfWidth * Math.sqrt(square);
        expect(Math.abs(rectangularStandardUncertainty({ halfWidth }) / integral - 1)).toBeLessThan(1e-6);
      }),
      { numRuns: 20 },
    );
    expect(rectangularStandardUncertainty({ halfWidth: 0 })).toBe(0);
    expect(() => rectangularStandardUncertainty({ halfWidth: -1 })).toThrow('halfWidth: -1');
    expect(() => rectangularStandardUncertainty({ halfWidth: 2e12 })).toThrow('halfWidth');
  });

  it('lognormal: the first two moments by integration over the normal density', () => {
    for (const standardDeviation of [0.05, 0.3, 0.8]) {
      const density = (z: number) => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
      const step = 0.001;
      let [first, second] = [0, 0];
      for (let z = -12; z <= 12; z += step) {
        const factor = Math.exp(standardDeviation * z);
        first += factor * density(z) * step;
        second += factor * factor * density(z) * step;
      }
      const found = lognormalMoments({ standardDeviation });
      expect(found.mean).toBeCloseTo(first, 8);
      expect(found.standardDeviation).toBeCloseTo(Math.sqrt(second - first * first), 7);
    }
    expect(lognormalMoments({ standardDeviation: 0 })).toEqual({ mean: 1, standardDeviation: 0 });
    expect(() => lognormalMoments({ standardDeviation: -0.1 })).toThrow('standardDeviation: -0.1');
    expect(() => lognormalMoments({ standardDeviation: 2.1 })).toThrow('standardDeviation: 2.1');
  });

  it('normal: the radius and the angle of the two draws', () => {
    expect(normalDeviate({ first: 1, second: 0.3 })).toBe(0);
    expect(normalDeviate({ first: Math.exp(-2), second: 0.5 })).toBeCloseTo(-2, 12);
    for (const first of [0, -0.1, 1.1, Number.NaN])
      expect(() => normalDeviate({ first, second: 0 })).toThrow('first: ');
    for (const second of [-0.1, 1.1]) expect(() => normalDeviate({ first: 0.5, second })).toThrow('second: ');
  });

  it('normal: a share of the draws within one, two and three standard deviations', () => {
    const [next] = randomStreams(11, 1) as [() => number];
    const count = 300_000;
    const within = [0, 0, 0];
    for (let i = 0; i < count; i += 1) {
      const size = Math.abs(normalDeviate({ first: 1 - next(), second: next() }));
      for (const k of [1, 2, 3]) if (size <= k) within[k - 1] = (within[k - 1] as number) + 1;
    }
    [0.682689, 0.9545, 0.9973].forEach((share, i) => {
      const error = Math.sqrt((share * (1 - share)) / count);
      expect(Math.abs((within[i] as number) / count - share)).toBeLessThan(5 * error);
    });
  });
});
