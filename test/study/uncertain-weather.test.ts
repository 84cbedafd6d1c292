import { describe, expect, it } from 'vitest';
import type { AnyRequest } from '../../src/study/any-request.ts';
import { type UncertainInputId, type UncertaintyOptions, uncertainty } from '../../src/study/index.ts';
import { pressureAltitude_ft, printed, takeoff as recomputed } from '../assessment/recompute.ts';
import { takeoffRequest } from '../assessment/scenario.ts';
import { none } from './nothing-uncertain.ts';

/** Every case has the input off by the same: the mean of the distances is the distance there. */
function distanceWith(id: UncertainInputId, off: number, request: AnyRequest): number {
  const always = { shape: 'rectangular', from: off, to: off } as const;
  const options: UncertaintyOptions = { cases: 100, inputs: { ...none, [id]: always } };
  const result = uncertainty(request, options);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value.propagation?.monteCarlo.mean as number;
}

// Before the safety factor on 28, downhill: the printed tables, 4.5 % for each knot of tailwind, grass 1.20.
const corrected = (tailwind_kt: number, degC = 26) =>
  printed.takeoffDistance(940, pressureAltitude_ft, degC) * (1 + 0.045 * tailwind_kt) * 1.2;
const today = -recomputed('28').used;

const wind = (from: unknown, speed: number, gust?: number) => ({
  'weather.wind': {
    source: 'METAR',
    from,
    speed: { value: speed, unit: 'kt' },
    ...(gust === undefined ? {} : { gust: { value: gust, unit: 'kt' } }),
  },
});

describe('one input off by the same in every case', () => {
  it('a runway that is shorter than stated counts as distance needed', () => {
    const request = takeoffRequest('takeoff-28');
    expect(distanceWith('runwayLength', -5, request)).toBeCloseTo(corrected(today) + 5, 6);
    expect(distanceWith('runwayLength', 5, request)).toBeCloseTo(corrected(today) - 5, 6);
  });

  it('needs no policies in the request', () => {
    const request = takeoffRequest('takeoff-28', { policies: undefined });
    expect(distanceWith('temperature', 2, request)).toBeCloseTo(corrected(today, 28), 6);
  });

  it('a wind without a direction stays one, its mean counted without sign', () => {
    // VRB 1 kt less 3 kt: 2 kt from anywhere, 150 % of it as tailwind.
    const variable = takeoffRequest('takeoff-28', wind('variable', 1));
    expect(distanceWith('windSpeed', -3, variable)).toBeCloseTo(corrected(3), 6);
  });

  it('a mean of nothing leaves the gust where it came from', () => {
    // From straight behind, 112° on 28: 2 kt gusting 7, less 2 kt, is a gust of 5 kt from there, used in full.
    const behind = takeoffRequest('takeoff-28', wind({ value: 112, unit: 'degTrue' }, 2, 7));
    expect(distanceWith('windSpeed', -2, behind)).toBeCloseTo(corrected(5), 6);
  });

  it('a mean below nothing is a wind from the other side, on either half of the compass', () => {
    // From ahead, 292°: 1 kt less 3 kt is 2 kt from behind; 150 % of it, and what gusts are above it does not count.
    const ahead = takeoffRequest('takeoff-28', wind({ value: 292, unit: 'degTrue' }, 1));
    expect(distanceWith('windSpeed', -3, ahead)).toBeCloseTo(corrected(3), 6);
    // From behind: 1 kt less 5 kt is 4 kt from ahead; half of it, 1 % for each knot.
    const behind = takeoffRequest('takeoff-28', wind({ value: 112, unit: 'degTrue' }, 1));
    expect(distanceWith('windSpeed', -5, behind)).toBeCloseTo(corrected(0) * (1 - 0.01 * 2), 6);
  });

  it('moist air stays as far below saturation as reported', () => {
    const humid = takeoffRequest('takeoff-28', { 'policies.humidity': 'virtual temperature' });
    // 28 °C with a dew point of 18 °C at the pressure of the field; vapour pressure by Bolton, T / (1 - 0.378 e / p).
    const p_hPa = 1013.25 * (1 - pressureAltitude_ft / 145442.156) ** 5.25588;
    const e_hPa = 6.112 * Math.exp((17.67 * 18) / (18 + 243.5));
    const virtual_degC = (28 + 273.15) / (1 - (0.378 * e_hPa) / p_hPa) - 273.15;
    // Another form of the saturation pressure moves it by centimetres; dry air would move it by metres.
    expect(Math.abs(distanceWith('temperature', 2, humid) - corrected(today, virtual_degC))).toBeLessThan(0.2);
  });
});
