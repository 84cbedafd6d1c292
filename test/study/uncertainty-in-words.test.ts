import { describe, expect, it } from 'vitest';
import type { AnyRequest } from '../../src/study/any-request.ts';
import { type Uncertainty, type UncertaintyOptions, uncertainty } from '../../src/study/index.ts';
import { pressureAltitude_ft, printed, takeoff as recomputed } from '../assessment/recompute.ts';
import { takeoffRequest } from '../assessment/scenario.ts';
import { none } from './nothing-uncertain.ts';

function found(inputs: UncertaintyOptions['inputs'], options: UncertaintyOptions = {}, request?: AnyRequest) {
  const result = uncertainty(request ?? takeoffRequest('takeoff-28'), {
    cases: 100,
    ...options,
    inputs: { ...none, ...inputs },
  });
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

const texts = ({ sentence, sentences }: Uncertainty) => [sentence, ...sentences].map(({ text }) => text);
const normal = (standardDeviation: number) => ({ shape: 'normal', standardDeviation }) as const;
const between = (from: number, to: number) => ({ shape: 'rectangular', from, to }) as const;
const m = (value: number) => ({ value, unit: 'm' });

// Before the safety factor on 28: the printed tables, 4.5 % for each knot of tailwind, grass 1.20; the way is downhill.
const tailwind_kt = -recomputed('28').used;
const corrected = (kg: number, degC: number) =>
  printed.takeoffDistance(kg, pressureAltitude_ft, degC) * (1 + 0.045 * tailwind_kt) * 1.2;

describe('with nothing uncertain', () => {
  it('every share is covered by the distance that is assessed', () => {
    const certain = found({}, { share: 0.9 });
    expect(certain.answer).toBe('value');
    expect(texts(certain)).toContain('To first order the standard uncertainty is 0 m.');
    expect(certain.coverings).toEqual(
      [0.9, 0.5, 0.8, 0.95, 0.99].map((share) => ({
        share,
        distance: m(617),
        between: { from: m(617), to: m(617) },
      })),
    );
    // 830 m are available.
    expect(certain).toMatchObject({ assessed: m(617), available: m(830), spare: m(213), reasons: [] });
    expect(certain.sentence.text).toBe(
      'A distance of 617 m covers 90 % of the 100 cases; the assessment has 617 m before its safety factor, and 830 m are available.',
    );
  });

  it('the factored distance says so', () => {
    const certain = found({}, { distance: 'factored' });
    // 616.x m times 1.25; 771 m are published with the scenario.
    expect(certain.sentence.text).toBe(
      'A distance of 771 m covers 95 % of the 100 cases; the assessment has 771 m with its safety factor, and 830 m are available.',
    );
    expect(certain.spare).toEqual(m(59));
  });

  it('the limits of use begin with what a share is not', () => {
    const [first, ...others] = found({}).limitsOfUse;
    expect(first).toContain('no chance of success and none of an accident');
    expect(others.length).toBeGreaterThan(0);
  });
});

describe('to first order', () => {
  const byMass = (corrected(950, 26) - corrected(930, 26)) / 2;

  it('one input alone is all of it; what does not differ is not named', () => {
    const { sentences } = found({ mass: normal(10), temperature: normal(0) });
    expect(sentences.map(({ text }) => text)).toEqual([
      `To first order the standard uncertainty is ${Math.ceil(byMass)} m; most of it comes from the mass (100 % of the variance).`,
    ]);
  });

  it('of several the two greatest are named, with their shares of the variance', () => {
    // Runway ends that are 5 m and 1 m uncertain add to the square: u² = mass² + 5².
    const squares = byMass ** 2 + 5 ** 2;
    const [mass, runway] = [byMass ** 2 / squares, 25 / squares].map((share) => Math.round(100 * share));
    const { sentences } = found({ runwayLength: normal(5), mass: normal(10), pressure: normal(0.001) });
    expect(sentences.map(({ text }) => text)).toEqual([
      `To first order the standard uncertainty is ${Math.ceil(Math.sqrt(squares))} m; most of it comes from the mass (${mass} % of the variance), then the runway length (${runway} % of the variance).`,
    ]);
  });
});

describe('where some cases are warmer than the manual prints', () => {
  const at30 = takeoffRequest('takeoff-28', { 'weather.temperature.value': 30, 'weather.dewPoint': undefined });

  it('a share near them has a distance and no upper end of its range, and a share among them has none', () => {
    // 30 to 40.24 °C beside 40 °C printed: 0.24 of 10.24 have no figure, 23 ± 5 of 1000. With 18 to 25 of them the 975th
    // case has a figure; that 10 places on (1.96 standard deviations of 4.9) has none, nor the 990th, nor that 6 before it.
    const some = found({ temperature: between(0, 10.24) }, { cases: 1000, share: 0.975 }, at30);
    const open = some.propagation?.monteCarlo.withoutResult as number;
    expect(open).toBeGreaterThan(17);
    expect(open).toBeLessThan(26);
    const [leading, ...others] = some.coverings;
    expect(Object.keys(leading ?? {})).toEqual(['share', 'distance']);
    // 97.5 % of the way to 40.24 °C, uncertain by a few centimetres.
    expect(Math.abs((leading?.distance?.value as number) - corrected(940, 30 + 0.975 * 10.24))).toBeLessThan(2);
    expect(others.at(-1)).toStrictEqual({ share: 0.99 });
    expect(texts(some).at(-1)).toBe(
      `Cases without a figure, beyond what the manual prints: ${open} of 1\u00a0000. No distance counts as covering them.`,
    );
    expect(some.sentences.map(({ code }) => code)).toEqual(['uncertainty-first-order', 'uncertainty-without-figure']);
  });

  it('a leading share among them is not covered', () => {
    const some = found({ temperature: between(0, 10.24) }, { cases: 1000, share: 0.99 }, at30);
    expect(some.answer).toBe('undetermined');
    expect(some.sentence.text).toBe(
      `No distance covers 99 % of the 1\u00a0000 cases: too many have no figure. The assessment has ${Math.ceil(corrected(940, 30))} m before its safety factor.`,
    );
    expect(some).not.toHaveProperty('spare');
  });

  it('there is no first order where the mean is among them, even if less than the mean is printed', () => {
    // 38.5 to 42.5 °C: the mean of 40.5 °C is not printed, one standard uncertainty less (39.3 °C) is.
    const hot = takeoffRequest('takeoff-28', { 'weather.temperature.value': 39.5, 'weather.dewPoint': undefined });
    const some = found({ temperature: between(-1, 3) }, {}, hot);
    expect(Object.keys(some.propagation ?? {})).toEqual(['monteCarlo']);
    expect(some.sentences.map(({ code }) => code)).toEqual(['uncertainty-without-figure']);
  });

  it('a case that no weather can be is one without a figure', () => {
    // To 1030 °C: one case in a hundred is below 40 °C.
    const some = found({ temperature: between(0, 1000) }, {}, at30);
    expect(some.propagation?.monteCarlo.withoutResult).toBeGreaterThan(90);
    expect(some.answer).toBe('undetermined');
  });
});

describe('where the distance is undetermined', () => {
  it('nothing else is said', () => {
    const gravel = takeoffRequest('takeoff-28', { 'runway.surface': { kind: 'gravel', condition: 'dry' } });
    const open = found({}, {}, gravel);
    expect(texts(open)).toEqual(['The take-off distance is undetermined, so nothing can be said of how sure it is.']);
    expect(open.coverings).toEqual([]);
    expect(open.reasons.map(({ code }) => code)).toEqual(['surface-no-factor']);
    expect(open).not.toHaveProperty('propagation');
  });
});

describe('the bounds of the options', () => {
  const faults = (options: object) => {
    const result = uncertainty(takeoffRequest('takeoff-28'), { cases: 100, ...options });
    return result.ok ? [] : result.faults.map(({ path, message }) => `${path}: ${message}`);
  };

  it('belong to them, and nothing beyond', () => {
    expect(faults({ seed: 2 ** 31 - 1, share: 0.999 })).toEqual([]);
    expect(faults({ seed: 2 ** 31, share: 0.9991 })).toEqual([
      'options.seed: 2147483648 is not a whole number within -2147483648 to 2147483647',
      'options.share: 0.9991 is not within 0.5 to 0.999',
    ]);
  });

  it('refuse what is no number as it was given', () => {
    expect(faults({ seed: '5', share: Number.NaN })).toEqual([
      'options.seed: "5" is not a whole number within -2147483648 to 2147483647',
      'options.share: NaN is not within 0.5 to 0.999',
    ]);
  });
});
