import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type ClimbProgressData,
  climbIncrement,
  climbProgress,
  readPerformanceData,
} from '../../src/aircraft/index.ts';
import { DomainError, degCDifference, ftPA, kg } from '../../src/units/index.ts';
import { performanceDocument } from './documents.ts';

const data = (): ClimbProgressData => performanceDocument('linnet-two').climbProgress?.[0] as ClimbProgressData;
const at = (from: number, to: number, deviation = 0) =>
  climbProgress({
    data: data(),
    from: ftPA(from),
    to: ftPA(to),
    mass: kg(700),
    isaDeviation: degCDifference(deviation),
  });

describe('climbProgress', () => {
  it('is the difference of two printed rows', () => {
    expect(at(2000, 6000)).toEqual({ time: 8, fuel: { value: 3, unit: 'L' }, distance: 10 });
  });

  it('adds up: a climb in two parts takes what it takes in one', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 3000 }),
        fc.integer({ min: 1, max: 2500 }),
        fc.integer({ min: 1, max: 2400 }),
        (from, first, second) => {
          const [lower, upper, whole] = [
            at(from, from + first),
            at(from + first, from + first + second),
            at(from, from + first + second),
          ];
          expect(lower.time + upper.time).toBeCloseTo(whole.time, 9);
          expect(lower.fuel.value + upper.fuel.value).toBeCloseTo(whole.fuel.value, 9);
          expect(lower.distance + upper.distance).toBeCloseTo(whole.distance, 9);
        },
      ),
    );
  });

  it('takes more in warm air by the law of the manual, and no less in cold air', () => {
    // 10 % for each 10 °C.
    expect(at(2000, 6000, 5).time).toBeCloseTo(8 * 1.05, 12);
    expect(at(2000, 6000, -10)).toEqual(at(2000, 6000));
  });

  it.each([
    ['to', () => at(3000, 3000)],
    ['from', () => at(-100, 3000)],
    ['at.pressureAltitude', () => at(3000, 9000)],
    ['isaDeviation', () => at(1000, 3000, 31)],
    [
      'mass',
      () =>
        climbProgress({ data: data(), from: ftPA(0), to: ftPA(1000), mass: kg(751), isaDeviation: degCDifference(0) }),
    ],
  ])('refuses a bad %s and names it', (parameter, call) => {
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter.replace('.', '\\.')}: `));
  });
});

describe('climbIncrement', () => {
  it.each([
    ['atLower', { atLower: -1 }],
    ['atUpper', { atUpper: 2 }],
    ['atUpper', { atUpper: Number.NaN }],
    ['factor', { factor: 0.9 }],
    ['factor', { factor: Number.POSITIVE_INFINITY }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => climbIncrement({ atLower: 3, atUpper: 5, factor: 1, ...inputs });
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});

describe('the tables of a climb progress', () => {
  const faults = (change: (progress: Record<string, never>) => void) => {
    const document = structuredClone(performanceDocument('linnet-two')) as never as {
      climbProgress: Record<string, never>[];
    };
    change(document.climbProgress[0] as Record<string, never>);
    const read = readPerformanceData(document);
    return read.ok ? [] : read.faults.map(({ path, message }) => `${path}: ${message}`);
  };
  const put = (part: unknown, key: string, value: unknown) => {
    (part as Record<string, unknown>)[key] = value;
  };

  it.each([
    ['run along other axes', (p: Record<string, never>) => put(p['fuel'], 'axes', []), /fuel/],
    [
      'fall with altitude',
      (p: Record<string, never>) => put(p['time'], 'cells', [0, 5, 4, 12, 19]),
      /time\.cells\[2\].*4 min is less than 5/,
    ],
    ['name no mass', (p: Record<string, never>) => put(p, 'associatedConditions', {}), /associatedConditions\.mass/],
    ['have another unit', (p: Record<string, never>) => put(p['distance'], 'unit', 'm'), /distance\.unit/],
  ])('are refused when they %s', (_, change, message) => {
    expect(faults(change).join('\n')).toMatch(message);
  });
});
