import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError, degMagnetic, degTrue, kt } from '../../src/units/index.ts';
import { type ReportedWindComponents, reportedWindComponents, windComponents } from '../../src/wind/index.ts';

const direction = fc.integer({ min: 0, max: 360 });
const speed = fc.integer({ min: 0, max: 100 });

/** A wind of 10 kt gusting 20 kt on runway 36, veering and backing between two directions. */
function onNorth(from: number, rangeFrom: number, rangeTo: number): ReportedWindComponents {
  const range = { from: degTrue(rangeFrom), to: degTrue(rangeTo) };
  return reportedWindComponents({ from: degTrue(from), speed: kt(10), gust: kt(20), range, direction: degTrue(360) });
}

describe('reportedWindComponents', () => {
  it('without a range is the wind at the reported direction, at the mean and at the gust', () => {
    fc.assert(
      fc.property(direction, speed, speed, direction, (from, mean, increment, runway) => {
        const wind = { from: degTrue(from), direction: degTrue(runway) };
        const reported = reportedWindComponents({ ...wind, speed: kt(mean), gust: kt(mean + increment) });
        const atMean = windComponents({ ...wind, speed: kt(mean) });
        const atGust = windComponents({ ...wind, speed: kt(mean + increment) });
        expect(reported.headwind).toBeCloseTo(atMean.headwind, 12);
        expect(reported.crosswind).toBeCloseTo(atMean.crosswind, 12);
        expect(reported.headwindAtGust).toBeCloseTo(atGust.headwind, 12);
        expect(reported.crosswindAtGust).toBeCloseTo(atGust.crosswind, 12);
        expect(reported.leastHeadwind).toBe(reported.headwind);
        expect(reported.leastHeadwindAtGust).toBe(reported.headwindAtGust);
        expect(reported.crosswindFromRight - reported.crosswindFromLeft).toBe(reported.crosswindAtGust);
        expect(Math.min(reported.crosswindFromRight, reported.crosswindFromLeft)).toBe(0);
      }),
    );
  });

  it('is never better than any direction of the range, and as bad as one of them', () => {
    fc.assert(
      fc.property(direction, direction, direction, speed, direction, (from, first, last, gust, runway) => {
        const range = { from: degTrue(first), to: degTrue(last) };
        const wind = { speed: kt(gust), direction: degTrue(runway) };
        const reported = reportedWindComponents({ ...wind, from: degTrue(from), gust: kt(gust), range });
        // Whole degrees hit every extreme exactly, because the runway and the ends stand at whole degrees too.
        const turned = Array.from({ length: ((last - first + 360) % 360) + 1 }, (_, step) => (first + step) % 360);
        const winds = [from, ...turned].map((each) => windComponents({ ...wind, from: degTrue(each) }));
        const across = winds.map((each) => each.crosswind);
        expect(reported.leastHeadwind).toBeCloseTo(Math.min(...winds.map((each) => each.headwind)), 9);
        expect(reported.leastHeadwindAtGust).toBeCloseTo(reported.leastHeadwind, 12);
        expect(reported.crosswindFromRight).toBeCloseTo(Math.max(0, ...across), 9);
        expect(reported.crosswindFromLeft).toBeCloseTo(Math.max(0, ...across.map((each) => -each)), 9);
      }),
    );
  });

  it('finds the straight tailwind between the ends of the range', () => {
    const wind = onNorth(170, 139.5, 200.25);
    expect(wind.leastHeadwind).toBe(-10);
    expect(wind.leastHeadwindAtGust).toBe(-20);
    expect(wind.crosswindFromRight).toBeCloseTo(20 * Math.sin((139.5 * Math.PI) / 180), 12);
    expect(wind.crosswindFromLeft).toBeCloseTo(-20 * Math.sin((200.25 * Math.PI) / 180), 12);
  });

  it('finds the straight crosswind from each side between the ends of the range', () => {
    expect(onNorth(80, 60.5, 100.5).crosswindFromRight).toBe(20);
    expect(onNorth(80, 60.5, 100.5).crosswindFromLeft).toBe(0);
    expect(onNorth(280, 250.5, 290.5).crosswindFromLeft).toBe(20);
    expect(onNorth(280, 250.5, 290.5).crosswindFromRight).toBe(0);
  });

  it('turns the range clockwise, through north if need be', () => {
    expect(onNorth(360, 330, 30).leastHeadwind).toBeCloseTo(10 * Math.cos(Math.PI / 6), 12);
    expect(onNorth(180, 30, 330).leastHeadwind).toBe(-10);
  });

  it('reads a range of two equal directions as one direction', () => {
    expect(onNorth(40, 50, 50).leastHeadwind).toBeCloseTo(10 * Math.cos((50 * Math.PI) / 180), 12);
    expect(onNorth(40, 360, 0).leastHeadwind).toBeCloseTo(10 * Math.cos((40 * Math.PI) / 180), 12);
  });

  it('includes the reported direction where it lies outside the range', () => {
    expect(onNorth(120, 30, 60).leastHeadwind).toBeCloseTo(-5, 12);
  });

  it('takes a variable wind in full as tailwind and as crosswind from either side, whatever range comes with it', () => {
    const variable = { from: 'variable', speed: kt(3), gust: kt(14), direction: degTrue(112) } as const;
    const expected = {
      headwind: -3,
      crosswind: 3,
      headwindAtGust: -14,
      crosswindAtGust: 14,
      leastHeadwind: -3,
      leastHeadwindAtGust: -14,
      crosswindFromLeft: 14,
      crosswindFromRight: 14,
    };
    expect(reportedWindComponents(variable)).toEqual(expected);
    expect(reportedWindComponents({ ...variable, range: { from: degTrue(100), to: degTrue(120) } })).toEqual(expected);
  });

  it.each([degTrue(0), 'variable'] as const)('gives zeros, none of them negative, in a calm (from %s)', (from) => {
    const calm = reportedWindComponents({ from, speed: kt(0), gust: kt(0), direction: degTrue(120) });
    expect(Object.keys(calm)).toHaveLength(8);
    for (const component of Object.values(calm)) expect(component).toBe(0);
  });

  it('refuses a gust below the mean speed', () => {
    const call = () =>
      reportedWindComponents({ from: degMagnetic(90), speed: kt(20), gust: kt(15), direction: degMagnetic(80) });
    expect(call).toThrow(/^gust: 15 kt is inconsistent with 20 to 200 kt/);
    expect(call).toThrow(expect.objectContaining({ detail: expect.objectContaining({ code: 'inconsistent' }) }));
  });

  const good = { from: 90, speed: 10, gust: 15, range: { from: 60, to: 120 }, direction: 90 };
  it.each([
    ['from', { ...good, from: -1 }],
    ['from', { ...good, from: 'VRB' }],
    ['from', { ...good, from: undefined }],
    ['speed', { ...good, speed: -0.1 }],
    ['speed', { ...good, speed: Number.NaN }],
    ['speed', { ...good, from: 'variable', speed: Number.NaN }],
    ['gust', { ...good, gust: 201 }],
    ['gust', { ...good, gust: undefined }],
    ['direction', { ...good, direction: 361 }],
    ['direction', { ...good, from: 'variable', direction: Number.NaN }],
    ['range.from', { ...good, range: { from: 361, to: 120 } }],
    ['range.to', { ...good, range: { from: 60, to: Number.NaN } }],
    ['range.to', { ...good, range: { from: 60 } }],
  ])('refuses a bad %s and names it', (parameter, inputs) => {
    const call = () => reportedWindComponents(inputs as never);
    expect(call).toThrow(DomainError);
    expect(call).toThrow(new RegExp(`^${parameter}: `));
  });
});
