import { describe, expect, it } from 'vitest';
import type { AnyRequest } from '../../src/study/any-request.ts';
import {
  inputUncertainties,
  type UncertainInputId,
  type Uncertainty,
  type UncertaintyOptions,
  uncertainty,
} from '../../src/study/index.ts';
import { pressureAltitude_ft, printed } from '../assessment/recompute.ts';
import { landingRequest, takeoff, takeoffRequest, totals } from '../assessment/scenario.ts';
import { landingOf, lightWind, takeoffOf } from './aeroplanes.ts';
import { none } from './nothing-uncertain.ts';

function found(request: AnyRequest, options?: UncertaintyOptions): Uncertainty {
  const result = uncertainty(request, options);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

const only = (id: UncertainInputId, distribution: object) =>
  ({ inputs: { ...none, [id]: distribution } }) as UncertaintyOptions;
const normal = (standardDeviation: number) => ({ shape: 'normal', standardDeviation });
const quick = { cases: 2000 };

// Corrected distance on 28 before the safety factor, worked again from the printed tables.
const corrected = (kg: number, degC: number, from = 190, mean = 7, gust = 17) => {
  const angle = ((from - 292) * Math.PI) / 180;
  const used = Math.min(1.5 * mean * Math.cos(angle), gust * Math.cos(angle));
  return printed.takeoffDistance(kg, pressureAltitude_ft, degC) * (1 - 0.045 * used) * 1.2;
};

describe('take-off 28 of the demo', () => {
  const sure = found(takeoffRequest('takeoff-28'));

  it('leads with the distance that covers the share, before the safety factor', () => {
    expect(sure.sentence.text).toMatch(
      /^A distance of \d+ m covers 95 % of the 10\u00a0000 cases; the assessment has 617 m before its safety factor, and 830 m are available\.$/,
    );
    expect(sure.assessed).toEqual({ value: Math.ceil(corrected(940, 26)), unit: 'm' });
    expect(totals(takeoff('takeoff-28'))['surface']).toBeCloseTo(corrected(940, 26), 1);
    const [leading] = sure.coverings;
    expect(leading?.share).toBe(0.95);
    expect(sure.spare?.value).toBe(830 - (leading?.distance?.value as number));
    // Of the order of the normal quantile above the mean, a little more for the skew.
    const { monteCarlo } = sure.propagation as NonNullable<Uncertainty['propagation']>;
    const { mean, standardDeviation } = monteCarlo as { mean: number; standardDeviation: number };
    expect(leading?.distance?.value).toBeGreaterThan(mean + 1.645 * standardDeviation);
    expect(leading?.distance?.value).toBeLessThan(mean + 2 * standardDeviation);
    const { between } = leading as { between: { from: { value: number }; to: { value: number } } };
    expect(between.from.value).toBeLessThanOrEqual(leading?.distance?.value as number);
    expect(between.to.value).toBeGreaterThanOrEqual(leading?.distance?.value as number);
  });

  it('says what contributes most, and both ways agree', () => {
    const { firstOrder, monteCarlo } = sure.propagation as NonNullable<Uncertainty['propagation']>;
    const names = firstOrder?.contributions.map(({ name }) => name);
    expect(names?.slice(0, 3)).toEqual(['surfaceIncrease', 'technique', 'windDirection']);
    const shares = firstOrder?.contributions.reduce((sum, { shareOfVariance }) => sum + shareOfVariance, 0);
    expect(shares).toBeCloseTo(1, 9);
    expect(
      Math.abs((firstOrder?.standardUncertainty as number) / (monteCarlo.standardDeviation as number) - 1),
    ).toBeLessThan(0.05);
    expect(sure.sentences[0]?.text).toContain('what the surface adds (39 % of the variance)');
  });

  it('is no chance of anything', () => {
    expect(sure.limitsOfUse[0]).toContain('no chance of success');
    const said = [sure.sentence, ...sure.sentences].map(({ text }) => text).join(' ');
    expect(said).not.toMatch(/chance|probab|\bsafe\b|risk|likely/i);
  });

  it('is the same for one seed, and nearly so for another', () => {
    const distance = (seed: number) =>
      found(takeoffRequest('takeoff-28'), { seed, ...quick }).coverings[0]?.distance?.value as number;
    expect(distance(3)).toBe(distance(3));
    const others = [4, 5, 6, 7].map(distance);
    expect(new Set(others).size).toBeGreaterThan(1);
    for (const other of others) expect(Math.abs(other - distance(3))).toBeLessThan(25);
  });

  it('holds with the safety factor where that is asked', () => {
    const factored = found(takeoffRequest('takeoff-28'), { distance: 'factored' });
    expect(factored.assessed).toEqual({ value: 771, unit: 'm' });
    expect(factored.sentence.text).toContain('771 m with its safety factor');
    // The same cases times 1.25, but for the runway.
    const ratio = (factored.propagation?.monteCarlo.mean as number) / (sure.propagation?.monteCarlo.mean as number);
    expect(ratio).toBeCloseTo(1.25, 3);
  });

  it('takes another share', () => {
    const half = found(takeoffRequest('takeoff-28'), { share: 0.5, ...quick });
    expect(half.sentence.text).toContain('covers 50 % of the 2\u00a0000 cases');
    expect(half.coverings.map(({ share }) => share)).toEqual([0.5, 0.8, 0.9, 0.95, 0.99]);
    const distances = half.coverings.map(({ distance }) => distance?.value as number);
    expect(distances).toEqual([...distances].sort((a, b) => a - b));
    expect(found(takeoffRequest('takeoff-28'), { share: 0.975, ...quick }).sentence.text).toContain('covers 97.5 %');
  });
});

describe('one input alone', () => {
  const standardUncertainty = (options: UncertaintyOptions, request: AnyRequest = takeoffRequest('takeoff-28')) =>
    found(request, { ...quick, ...options }).propagation?.firstOrder?.standardUncertainty as number;

  it('gives the difference quotient of the printed tables', () => {
    expect(standardUncertainty(only('mass', normal(10)))).toBeCloseTo((corrected(950, 26) - corrected(930, 26)) / 2, 6);
    expect(standardUncertainty(only('temperature', normal(2)))).toBeCloseTo(
      (corrected(940, 28) - corrected(940, 24)) / 2,
      6,
    );
    expect(standardUncertainty(only('windDirection', normal(4)))).toBeCloseTo(
      (corrected(940, 26, 186) - corrected(940, 26, 194)) / 2,
      6,
    );
    // The gust is counted from the mean: both rise together.
    expect(standardUncertainty(only('windSpeed', normal(1)))).toBeCloseTo(
      (corrected(940, 26, 190, 8, 18) - corrected(940, 26, 190, 6, 16)) / 2,
      6,
    );
    expect(standardUncertainty(only('gust', normal(2)))).toBeCloseTo(
      (corrected(940, 26, 190, 7, 19) - corrected(940, 26, 190, 7, 15)) / 2,
      6,
    );
    expect(standardUncertainty(only('runwayLength', normal(7)))).toBeCloseTo(7, 6);
  });

  it('as a factor multiplies the distance, or what the surface adds', () => {
    const spread = { shape: 'lognormal', standardDeviation: 0.1 };
    const relative = Math.sqrt(Math.exp(0.01) - 1) * Math.exp(0.005);
    expect(standardUncertainty(only('technique', spread))).toBeCloseTo(corrected(940, 26) * relative, 6);
    expect(standardUncertainty(only('surfaceIncrease', spread))).toBeCloseTo(
      (corrected(940, 26) / 1.2) * 0.2 * relative,
      6,
    );
  });

  it('leaves nothing uncertain where all are left out', () => {
    const certain = found(takeoffRequest('takeoff-28'), { inputs: none, cases: 100 });
    expect(certain.inputs).toEqual([]);
    expect(certain.propagation?.monteCarlo.standardDeviation).toBeCloseTo(0, 6);
    expect(certain.coverings[0]?.distance?.value).toBe(617);
  });

  it('takes a mean below nothing as a wind from the other side', () => {
    const light = takeoffRequest('takeoff-28', {
      'weather.wind': { source: 'METAR', from: { value: 292, unit: 'degTrue' }, speed: { value: 1, unit: 'kt' } },
    });
    const { propagation } = found(light, { ...only('windSpeed', normal(1.2)), cases: 4000 });
    expect(propagation?.monteCarlo.withoutResult).toBe(0);
    // A tailwind of so many knots costs more than a headwind gives: the mean lies above the calm distance.
    const calm = printed.takeoffDistance(940, pressureAltitude_ft, 26) * 1.2;
    expect(propagation?.monteCarlo.mean).toBeGreaterThan(calm);
  });

  it('draws unreported gusts between the mean and 10 kt above it', () => {
    const unreported = landingRequest('landing-10', { 'weather.wind.gust': undefined });
    const ids = (request: AnyRequest) => found(request, quick).inputs.map(({ name }) => name);
    expect(ids(unreported)).toContain('unreportedGust');
    expect(ids(unreported)).not.toContain('gust');
    expect(ids(landingRequest('landing-10'))).not.toContain('unreportedGust');
    // Whatever the policy puts in place of the gust: the draws are the same.
    const mean = (policy: string) =>
      found({ ...unreported, policies: { ...unreported.policies, unreportedGust: policy as never } }, quick).propagation
        ?.monteCarlo.mean;
    expect(mean('mean plus 10 kt')).toBeCloseTo(mean('mean') as number, 6);
  });
});

describe('what a request does not have', () => {
  const ids = (request: AnyRequest) => found(request, { cases: 200 }).inputs.map(({ name }) => name);

  it('is not uncertain: no wind in a calm, no direction of a variable wind, no surface on pavement', () => {
    const calm = takeoffRequest('takeoff-28', { 'weather.wind.speed.value': 0, 'weather.wind.gust': undefined });
    expect(ids(calm)).toEqual(['temperature', 'pressure', 'mass', 'technique', 'surfaceIncrease', 'runwayLength']);
    const variable = takeoffRequest('takeoff-28', {
      'weather.wind.from': 'variable',
      'weather.wind.speed.value': 2,
      'weather.wind.gust': undefined,
    });
    expect(ids(variable)).not.toContain('windDirection');
    const paved = takeoffRequest('takeoff-28', { 'runway.surface': { kind: 'paved', condition: 'dry' } });
    expect(ids(paved)).not.toContain('surfaceIncrease');
  });

  it('names every input with its reason', () => {
    for (const { name, why, unit } of found(takeoffRequest('takeoff-28'), { cases: 200 }).inputs)
      expect({ why, unit }).toEqual({ why: inputUncertainties[name].why, unit: inputUncertainties[name].unit });
  });

  it('is of the distance alone: obstacles and the climb change what is available, not what is needed', () => {
    const mean = (request: AnyRequest) => found(request, quick).propagation?.monteCarlo.mean;
    const level = { 'runway.ends.0.elevation.value': 438, 'runway.surface': { kind: 'paved', condition: 'dry' } };
    const [over, free] = [
      landingRequest('landing-28', level),
      landingRequest('landing-28', { ...level, 'runway.obstacles': [] }),
    ];
    expect(mean(over)).toBe(mean(free));
    expect(found(over, quick).available?.value).toBeLessThan(found(free, quick).available?.value as number);
  });

  it('serves landings, other aeroplanes, QFE, moist air and a range of directions', () => {
    const byQfe = takeoffRequest('takeoff-28', {
      'weather.qnh': undefined,
      'weather.qfe': { value: 990, unit: 'hPa' },
      'policies.humidity': 'virtual temperature',
      'weather.wind.range': { from: { value: 185, unit: 'degTrue' }, to: { value: 200, unit: 'degTrue' } },
    });
    const requests = [byQfe, landingRequest('landing-28'), takeoffOf('plover-two', lightWind), landingOf('linnet-two')];
    expect(requests.map((request) => found(request, { cases: 500 }).answer)).toEqual(requests.map(() => 'value'));
  });
});

describe('no figure', () => {
  it('is undetermined where the assessment is, with its reasons', () => {
    const gravel = takeoffRequest('takeoff-28', { 'runway.surface': { kind: 'gravel', condition: 'dry' } });
    const open = found(gravel, quick);
    expect(open).toMatchObject({ answer: 'undetermined', coverings: [], reasons: [{ code: 'surface-no-factor' }] });
    expect(open.sentence.text).toBe('The take-off distance is undetermined, so nothing can be said of how sure it is.');
    // "At least 1.25" is no figure to draw around.
    const soft = { kind: 'grass', condition: 'dry', length: 'up to 20 cm', ground: 'soft' };
    expect(found(landingRequest('landing-10', { 'runway.surface': soft }), quick).answer).toBe('undetermined');
  });

  it('covers no case that leaves the tables', () => {
    const edge = takeoffRequest('takeoff-28', { 'weather.temperature.value': 39.9, 'weather.dewPoint': undefined });
    const open = found(edge, { ...only('temperature', normal(3)), cases: 1000 });
    expect(open.propagation?.monteCarlo.withoutResult).toBeGreaterThan(300);
    expect(open.answer).toBe('undetermined');
    expect(open.coverings[0]).toEqual({ share: 0.95 });
    expect(open.sentence.text).toContain('No distance covers 95 % of the 1\u00a0000 cases');
    expect(open.sentences.at(-1)?.text).toContain('Cases without a figure');
    expect(open.spare).toBeUndefined();
  });
});

describe('the options', () => {
  it('are refused with their paths, together with the faults of the request', () => {
    const result = uncertainty(takeoffRequest('takeoff-28', { 'mass.value': -1 }), {
      cases: 10,
      seed: 0.5,
      casess: 10,
      share: 1,
      distance: 'both',
      inputs: {
        mass: { shape: 'triangular' },
        gust: { shape: 'normal', standardDeviation: -1 },
        technique: { shape: 'lognormal', standardDeviation: 3 },
        temperature: { shape: 'rectangular', from: 1, to: -1 },
        pressure: { shape: 'rectangular', from: Number.NaN, to: 1 },
        windSpeed: null,
        colour: normal(1),
      },
    } as never);
    expect(!result.ok && result.faults.map(({ path, message }) => `${path}: ${message}`)).toEqual([
      expect.stringContaining('mass.value: '),
      'options.casess: is none of inputs, cases, seed, share, distance',
      'options.cases: 10 is not a whole number within 100 to 1000000',
      'options.seed: 0.5 is not a whole number within -2147483648 to 2147483647',
      'options.share: 1 is not within 0.5 to 0.999',
      'options.distance: "both" is not unfactored or factored',
      'options.inputs.mass.shape: "triangular" is none of "rectangular", "normal", "lognormal" (how a quantity may differ)',
      'options.inputs.gust.standardDeviation: -1 units is not within 0 to 1000000 units (library range)',
      'options.inputs.technique.standardDeviation: 3 of the logarithm is not within 0 to 2 of the logarithm (library range)',
      'options.inputs.temperature.to: -1 units is not within 1 to 1000000 units (not below where it begins)',
      'options.inputs.pressure.from: NaN units is not within -1000000 to 1000000 units (library range)',
      'options.inputs.windSpeed.shape: "undefined" is none of "rectangular", "normal", "lognormal" (how a quantity may differ)',
      'options.inputs.colour: is not an uncertain input',
    ]);
  });
});
