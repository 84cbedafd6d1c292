import { describe, expect, it } from 'vitest';
import { greatestWithin, type Verdict } from '../../src/assessment/index.ts';
import { breakEven } from '../../src/assessment/kernel/break-even.ts';
import { type Changes, landing, takeoff } from './scenario.ts';

const range = { from: 0, to: 8, step: 0.1 };
const upTo =
  (last: number, beyond: Verdict = 'outside') =>
  (value: number): Verdict =>
    value <= last ? 'within' : beyond;

describe('the greatest value within', () => {
  it('is rounded down to the step', () => {
    expect(greatestWithin(range, upTo(3.27))).toEqual({ value: 3.2, answer: 'value' });
    expect(greatestWithin({ from: 850, to: 1050, step: 1 }, upTo(969.99))).toEqual({ value: 969, answer: 'value' });
  });

  it('counts what is undetermined as not within', () => {
    expect(greatestWithin(range, upTo(3.27, 'undetermined'))).toEqual({ value: 3.2, answer: 'value' });
  });

  it('is none where the range holds no turn', () => {
    expect(greatestWithin(range, upTo(8))).toEqual({ value: undefined, answer: 'withinThroughoutRange' });
    expect(greatestWithin(range, upTo(-1))).toEqual({ value: undefined, answer: 'outsideThroughoutRange' });
    expect(greatestWithin(range, upTo(-1, 'undetermined'))).toEqual({ value: undefined, answer: 'undetermined' });
  });

  it('is outside throughout only where both ends are, and costs no more than they do', () => {
    const tried: number[] = [];
    const turnsAt = (last: number, upToThere: Verdict, beyond: Verdict) => (value: number) => {
      tried.push(value);
      return value <= last ? upToThere : beyond;
    };
    const none = { value: undefined, answer: 'undetermined' };
    expect(greatestWithin(range, turnsAt(2, 'undetermined', 'outside'))).toEqual(none);
    expect(greatestWithin(range, turnsAt(2, 'outside', 'undetermined'))).toEqual(none);
    expect(greatestWithin(range, turnsAt(2, 'outside', 'outside')).answer).toBe('outsideThroughoutRange');
    expect(tried).toEqual([0, 0, 8, 0, 8]);
  });

  it('is never below the range: 16.4 is its start where nothing above is within', () => {
    expect(greatestWithin({ from: 16.4, to: 40, step: 1 }, upTo(16.4))).toEqual({ value: 16.4, answer: 'value' });
  });

  it('is found to a thousandth of the step', () => {
    // A turn a hundredth of a step above a round figure is above it, one a hundredth below is below.
    expect(greatestWithin(range, upTo(5.001)).value).toBe(5);
    expect(greatestWithin(range, upTo(4.999)).value).toBe(4.9);
  });

  it('names what was varied, and between which ends', () => {
    expect(breakEven({ quantity: 'tailwind', unit: 'kt', ...range }, upTo(3.27))).toEqual({
      quantity: 'tailwind',
      unit: 'kt',
      value: 3.2,
      answer: 'value',
      range: { from: 0, to: 8 },
    });
  });
});

const ranges = (assessment: ReturnType<typeof takeoff> | ReturnType<typeof landing>) =>
  Object.fromEntries(
    assessment.breakEvens.map(({ quantity, range: { from, to } }) => [
      quantity,
      [from.value, to.value, from.unit, to.unit],
    ]),
  );
const table = 'performanceData.takeoff.0';
const range28 = (changes: Changes) => ranges(takeoff('takeoff-28', changes));

describe('the range of a break-even', () => {
  it('is what the table prints, and 1 to 3 for the surface', () => {
    expect(ranges(takeoff('takeoff-28'))).toEqual({
      tailwind: [0, 8, 'kt', 'kt'],
      'surface factor': [1, 3, 'ratio', 'ratio'],
      mass: [850, 1050, 'kg', 'kg'],
      temperature: [0, 40, 'degC', 'degC'],
    });
    // The landing table has no axis of mass.
    expect(Object.keys(ranges(landing('landing-10')))).toEqual(['tailwind', 'surface factor', 'temperature']);
  });

  it('ends at the maximum mass, and counts in kilograms whatever the table does', () => {
    const masses = { maximumTakeoff: { value: 1000, unit: 'kg' }, maximumLanding: { value: 1000, unit: 'kg' } };
    expect(range28({ 'performanceData.masses': masses })['mass']).toEqual([850, 1000, 'kg', 'kg']);
    const inPounds = { quantity: 'mass', unit: 'lb', values: [1900, 2100, 2300] };
    const changes = { [`${table}.distance.axes.0`]: inPounds, [`${table}.groundRoll.axes.0`]: inPounds };
    // 1 lb is 0.45359237 kg: 1900 lb are 861.83 kg and 2300 lb 1043.26 kg.
    const [from, to] = range28(changes)['mass'] as number[];
    expect([from, to]).toEqual([expect.closeTo(861.825503, 6), expect.closeTo(1043.262451, 6)]);
  });

  it('starts at the dew point where the air is read in as a virtual temperature', () => {
    const humid = { 'policies.humidity': 'virtual temperature' };
    expect(range28(humid)['temperature']).toEqual([16, 40, 'degC', 'degC']);
    expect(range28({ ...humid, 'weather.dewPoint.value': -5 })['temperature']).toEqual([0, 40, 'degC', 'degC']);
  });

  it('of the tailwind is left out where the manual prints none', () => {
    expect(range28({ [`${table}.corrections.tailwind`]: undefined })['tailwind']).toBeUndefined();
  });

  it('is none without a table', () => {
    expect(takeoff('takeoff-28', { configuration: 'flap-0' }).breakEvens).toEqual([]);
  });
});
