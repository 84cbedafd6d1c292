import { describe, expect, it } from 'vitest';
import { type Changes, landing, takeoff } from './scenario.ts';

type Assessment = ReturnType<typeof takeoff> | ReturnType<typeof landing>;

/** What was chosen on the way, in its order, with the figures that are shown. */
const decisions = ({ trace }: Assessment) =>
  trace.flatMap((entry) => (entry.kind === 'decision' ? [[entry.code, entry.parameters]] : []));
const figure = (value: number) => expect.closeTo(value, 3);
const codesOf = (assessment: Assessment) => decisions(assessment).map(([code]) => code);
const onTakeoff = (changes: Changes, name = 'takeoff-28') => decisions(takeoff(name, changes));
const onLanding = (changes: Changes, name = 'landing-10') => decisions(landing(name, changes));

// By hand: 7 kt from 190° on 292° are 7 x cos 102° = -1.4554 kt; 150 % of that are 2.183 kt, less than at the gust of
// 17 kt: 3.5345 kt. On 112° half of the 1.4554 kt ahead. The runway rises by 51 ft, 15.5448 m, in 830 m: 1.8729 %.
const tailwind = ['tailwind-used', { wind_kt: figure(3.5345), share: 1.5 }];
const headwind = ['headwind-used', { wind_kt: figure(0.7277), share: 0.5 }];
const dryGrass = 'dry grass up to 20 cm on firm ground';
const takeoffGrass = [
  'surface-of-set',
  { surface: dryGrass, factor: 1.2, condition: 'dry grass up to 20 cm on firm soil' },
];
const landingGrass = [
  'surface-of-set',
  { surface: dryGrass, factor: 1.15, condition: 'grass up to 20 cm on firm soil' },
];
const downhill = { slope_percent: figure(-1.8729) };
const uphill = { slope_percent: figure(1.8729) };
// 57 KIAS and half the gust increment of 10 kt; the calibration of flap 35 makes 59.1 and 63.3 KCAS of 57 and 62 KIAS.
const gustPaid = [
  'speed-addition-paid',
  { speed_kias: 62, table_kias: 57, speed_kcas: figure(63.3), table_kcas: figure(59.1) },
];

describe('the working says what was chosen', () => {
  it('on the four ways to use the runway', () => {
    expect(onTakeoff({})).toEqual([tailwind, takeoffGrass, ['slope-no-credit', downhill]]);
    expect(onTakeoff({}, 'takeoff-10')).toEqual([
      headwind,
      takeoffGrass,
      ['slope-of-set', { ...uphill, percentPerPercent: 5 }],
    ]);
    expect(onLanding({})).toEqual([headwind, landingGrass, ['slope-no-credit', uphill], gustPaid]);
    expect(onLanding({}, 'landing-28')).toEqual([
      tailwind,
      landingGrass,
      ['slope-of-set', { ...downhill, percentPerPercent: 5 }],
      gustPaid,
    ]);
  });

  it('of speeds and heights that the pilot adds', () => {
    const faster = { liftOffSpeedAddition: { value: 2, unit: 'kt' } };
    // At 940 kg 47.7 KIAS are printed, 48 + 2.7 x 0.8 = 50.16 KCAS; flown are 50 KIAS, 52 KCAS.
    expect(onTakeoff(faster).at(-1)).toEqual([
      'speed-addition-paid',
      { speed_kias: 50, table_kias: figure(47.7), speed_kcas: 52, table_kcas: figure(50.16) },
    ]);
    const ignored = { 'policies.speedAdditionInDistance': 'ignored' };
    expect(onTakeoff({ ...faster, ...ignored }).at(-1)).toEqual(['speed-addition-ignored', {}]);
    expect(onLanding(ignored).at(-1)).toEqual(['speed-addition-ignored', {}]);
    const slow = { approachSpeedAddition: { value: 3, unit: 'kt' }, excessHeight: { value: 10, unit: 'ftHeight' } };
    const [, below, , , , high] = onLanding(slow);
    expect(below).toEqual(['addition-below-half-gust', { addition_kt: 3, half_kt: 5 }]);
    expect(high).toEqual(['excess-height-paid', { height_ft: figure(10), angle_deg: 3 }]);
    const half = { approachSpeedAddition: { value: 5, unit: 'kt' } };
    expect(codesOf(landing('landing-10', half))).not.toContain('addition-below-half-gust');
  });

  it('of a safety factor that is not applied', () => {
    expect(onLanding({ safetyFactor: 'none' }).at(-1)).toEqual(['safety-factor-none', {}]);
    const included = { 'performanceData.landing.0.includes.safetyFactor': true };
    expect(onLanding(included).at(-1)).toEqual(['safety-factor-included', {}]);
    expect(codesOf(landing('landing-10'))).not.toContain('safety-factor-included');
  });

  it('of the shares of the wind, where the table contains them or does not say', () => {
    const includes = 'performanceData.takeoff.0.includes.windAccountability';
    expect(onTakeoff({ [includes]: 'not stated' }).slice(0, 2)).toEqual([['accountability-not-stated', {}], tailwind]);
    expect(onTakeoff({ [includes]: true }).slice(0, 2)).toEqual([tailwind, ['accountability-included', {}]]);
  });

  it('of air read in as a virtual temperature', () => {
    // At 16 °C of dew point 18.17 hPa of vapour in 990.2 hPa: 299.15 K / (1 - 0.378 x 18.17 / 990.2) = 301.24 K.
    expect(onTakeoff({ 'policies.humidity': 'virtual temperature' })[0]).toEqual([
      'virtual-temperature-used',
      { temperature_degC: expect.closeTo(28.09, 2) },
    ]);
    expect(codesOf(takeoff('takeoff-28'))).not.toContain('virtual-temperature-used');
  });
});

describe('of a headwind', () => {
  const along = (knots: number, changes: Changes = {}) =>
    takeoff('takeoff-10', {
      'weather.wind': { source: 'METAR', from: { value: 112, unit: 'degTrue' }, speed: { value: knots, unit: 'kt' } },
      ...changes,
    });

  it('no more is used than the manual prints, 15 kt', () => {
    expect(decisions(along(30)).slice(0, 2)).toEqual([
      ['headwind-used', { wind_kt: figure(15), share: 0.5 }],
      takeoffGrass,
    ]);
    expect(decisions(along(32)).slice(0, 2)).toEqual([
      ['headwind-capped', { cap_kt: 15 }],
      ['headwind-used', { wind_kt: figure(15), share: 0.5 }],
    ]);
  });

  it('none is used where the manual prints none', () => {
    const [first, second] = decisions(along(10, { 'performanceData.takeoff.0.corrections.headwind': undefined }));
    expect([first, second]).toEqual([['no-headwind-law', {}], takeoffGrass]);
  });

  it('half is used where there is no table at all', () => {
    expect(decisions(along(40, { configuration: 'flap-0' }))).toEqual([
      ['headwind-used', { wind_kt: figure(20), share: 0.5 }],
    ]);
  });

  it('nothing is said in calm air', () => {
    expect(decisions(along(0))[0]).toEqual(takeoffGrass);
  });
});
