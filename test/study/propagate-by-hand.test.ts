import { describe, expect, it } from 'vitest';
import { normalDeviate, propagate } from '../../src/study/index.ts';
import { draw } from '../../src/study/uncertainty/distribution.ts';

const aboutTwo = [{ name: 'x', value: 2, distribution: { shape: 'normal', standardDeviation: 0.5 } }] as const;

/** What the model gave back for the cases that were drawn: the last ones of all. */
function recorded(cases: number, shares: readonly number[] = []) {
  const given: number[] = [];
  const model = ([x = 0]: ArrayLike<number> & Iterable<number>) => {
    given.push(3 * x);
    return 3 * x;
  };
  const { monteCarlo } = propagate({ model: model as never, quantities: aboutTwo, cases, shares });
  return { monteCarlo, results: given.slice(-cases).sort((a, b) => a - b) };
}

describe('the cases drawn', () => {
  it('have the standard deviation of a sample', () => {
    const { monteCarlo, results } = recorded(100);
    const mean = results.reduce((sum, each) => sum + each, 0) / 100;
    const squares = results.reduce((sum, each) => sum + (each - mean) ** 2, 0);
    expect(monteCarlo.standardDeviation).toBeCloseTo(Math.sqrt(squares / 99), 9);
  });

  it('bound a share by the places that 95 % of repetitions keep to', () => {
    const { monteCarlo, results } = recorded(100, [0.9]);
    // The place of the 90 % is binomial, with a standard deviation of √(100 × 0.9 × 0.1) = 3: 1.96 × 3 = 5.88 about the
    // 90th, outwards to whole places.
    const [value, from, to] = [90, 84, 96].map((place) => results[place - 1]);
    expect(monteCarlo.coverings).toEqual([{ share: 0.9, value, from, to }]);
  });
});

describe('to first order', () => {
  it('takes the one side that has a result, whichever it is', () => {
    const standardUncertainty = (has: (x: number) => boolean) =>
      propagate({
        model: (x) => (has(x[0] as number) ? 3 * (x[0] as number) : undefined),
        quantities: aboutTwo,
        cases: 100,
      }).firstOrder?.standardUncertainty;
    expect(standardUncertainty((x) => x >= 2)).toBeCloseTo(3 * 0.5, 9);
    expect(standardUncertainty((x) => x <= 2)).toBeCloseTo(3 * 0.5, 9);
  });

  it('has none where the means have no result, though there is one beside them', () => {
    const model = (x: ArrayLike<number>) => (x[0] === 2 ? undefined : 1);
    expect(Object.keys(propagate({ model, quantities: aboutTwo, cases: 100 }))).toEqual(['monteCarlo']);
  });
});

describe('a normal deviate, by the transformation of Box and Muller', () => {
  // √(-2 ln 0.5) = 1.1774 along the cosine of nothing: to the greater side.
  const halves = () => {
    const numbers = [0.5, 0];
    return () => numbers.shift() as number;
  };
  const deviate = Math.sqrt(2 * Math.LN2);

  it('is added to a value, and its exponential is a factor', () => {
    expect(draw(10, { shape: 'normal', standardDeviation: 2 }, halves())).toBeCloseTo(10 + 2 * deviate, 12);
    expect(draw(10, { shape: 'lognormal', standardDeviation: 0.2 }, halves())).toBeCloseTo(
      10 * Math.exp(0.2 * deviate),
      12,
    );
  });

  it('of nothing has no sign', () => {
    expect(Object.is(normalDeviate({ first: 1, second: 0 }), 0)).toBe(true);
    expect(Object.is(normalDeviate({ first: 1, second: 0.5 }), 0)).toBe(true);
  });
});
