import { trueAirspeed, trueAirspeedIncompressible } from '../airspeed/index.ts';
import { standardTemperature } from '../atmosphere/index.ts';
import {
  type CalibratedAirspeed,
  type Domain,
  demand,
  type Numbers,
  type Percent,
  type PressureAltitude,
  percent,
  type TrueAirspeed,
} from '../units/index.ts';
import type { RuleOfThumb } from './rule-of-thumb.ts';

/** Inputs of {@link trueAirspeedByRule}. */
export interface TrueAirspeedByRuleInputs {
  readonly calibratedAirspeed: CalibratedAirspeed;
  readonly pressureAltitude: PressureAltitude;
  /** What the rule adds for each thousand feet: 2 % or 1.75 %. */
  readonly percentPerThousandFeet: Percent;
}

/** Inputs of the comparison, which fixes the percentage and takes standard temperature. */
export interface TrueAirspeedInStandardAirInputs {
  readonly calibratedAirspeed: CalibratedAirspeed;
  readonly pressureAltitude: PressureAltitude;
}

export const trueAirspeedByRuleDomain = {
  calibratedAirspeed: { unit: 'kcas', min: 0, max: 350, source: 'library range' },
  pressureAltitude: { unit: 'ftPA', min: -5000, max: 36089, source: 'troposphere of the ICAO standard atmosphere' },
  percentPerThousandFeet: { unit: 'percent', min: 1, max: 3, source: 'library range' },
} satisfies Domain<TrueAirspeedByRuleInputs>;

/**
 * True airspeed by the rule of so many percent for each thousand feet; the temperature is not asked for.
 *
 * V ≈ V_C (1 + q/100 · PA/1000): V_C the calibrated airspeed in kt, PA the pressure altitude in ft, q the percentage.
 *
 * @param x - `calibratedAirspeed` 0 kt to 350 kt, `pressureAltitude` −5000 ft to 36 089 ft, `percentPerThousandFeet` 1 %
 * to 3 %.
 * @returns True airspeed in kt.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record rules-of-thumb.true-airspeed
 *
 * @example
 * trueAirspeedByRule({ calibratedAirspeed: kcas(90), pressureAltitude: ftPA(5000), percentPerThousandFeet: percent(2) }) // ≈ 99 ± 1e-9
 */
export function trueAirspeedByRule(x: TrueAirspeedByRuleInputs): TrueAirspeed {
  demand('calibratedAirspeed', x.calibratedAirspeed, trueAirspeedByRuleDomain.calibratedAirspeed);
  demand('pressureAltitude', x.pressureAltitude, trueAirspeedByRuleDomain.pressureAltitude);
  demand('percentPerThousandFeet', x.percentPerThousandFeet, trueAirspeedByRuleDomain.percentPerThousandFeet);
  const {
    calibratedAirspeed: vc_kt,
    pressureAltitude: altitude_ft,
    percentPerThousandFeet: q_percent,
  }: Numbers<TrueAirspeedByRuleInputs> = x;
  return (vc_kt * (1 + ((q_percent / 100) * altitude_ft) / 1000)) as TrueAirspeed;
}

const comparison = {
  exact: (x: TrueAirspeedInStandardAirInputs) => trueAirspeed(inStandardAir(x)),
  unit: 'ktas',
  errorIn: 'percent',
  domain: {
    calibratedAirspeed: { words: 'a calibrated airspeed', unit: 'kcas', min: 60, max: 150, step: 10 },
    pressureAltitude: { words: 'a pressure altitude, in standard air,', unit: 'ftPA', min: 0, max: 15000, step: 500 },
  },
  unsafeSide: 'reads high',
  because: 'a leg takes longer and burns more fuel than it says',
} as const satisfies Partial<RuleOfThumb<TrueAirspeedInStandardAirInputs>>;

function inStandardAir(x: TrueAirspeedInStandardAirInputs) {
  return { ...x, temperature: standardTemperature({ pressureAltitude: x.pressureAltitude }) };
}

/**
 * Two percent for a thousand feet beside the true airspeed in standard air.
 *
 * @example
 * ruleOfThumbError(twoPercentRule, { calibratedAirspeed: kcas(100), pressureAltitude: ftPA(10000) }).percent?.toFixed(1) // => '3.3'
 */
export const twoPercentRule: RuleOfThumb<TrueAirspeedInStandardAirInputs> = {
  ...comparison,
  id: 'two-percent',
  title: 'Two percent for a thousand feet',
  words: 'True airspeed is the airspeed shown and 2 % of it for each 1000 ft.',
  rule: (x) => trueAirspeedByRule({ ...x, percentPerThousandFeet: percent(2) }),
  unsafeWhere: 'It reads high at every altitude above mean sea level.',
  citation: { source: 'ppl-question-bank', locator: 'true airspeed, 2 % for each 1000 ft', access: 'read' },
};

/**
 * One and three quarters of a percent for a thousand feet beside the true airspeed in standard air.
 *
 * @example
 * ruleOfThumbError(lessThanTwoPercentRule, { calibratedAirspeed: kcas(100), pressureAltitude: ftPA(10000) }).percent?.toFixed(1) // => '1.1'
 */
export const lessThanTwoPercentRule: RuleOfThumb<TrueAirspeedInStandardAirInputs> = {
  ...comparison,
  id: 'one-and-three-quarters-percent',
  title: 'One and three quarters of a percent for a thousand feet',
  words: 'True airspeed is the airspeed shown and 1.75 % of it for each 1000 ft.',
  rule: (x) => trueAirspeedByRule({ ...x, percentPerThousandFeet: percent(1.75) }),
  unsafeWhere: 'It reads high at every altitude up to 15 000 ft, by less than two percent do.',
  citation: {
    source: 'airspeed-forum-page',
    locator: '1.75 % for each 1000 ft up to 10 000 ft',
    access: 'second-hand',
  },
};

/**
 * The square root of the density ratio alone, beside the true airspeed in standard air.
 *
 * @example
 * ruleOfThumbError(incompressibleRule, { calibratedAirspeed: kcas(150), pressureAltitude: ftPA(10000) }).difference // ≈ 0.50 ± 0.01
 */
export const incompressibleRule: RuleOfThumb<TrueAirspeedInStandardAirInputs> = {
  ...comparison,
  id: 'incompressible-true-airspeed',
  title: 'True airspeed without compressibility',
  words: 'Divide the calibrated airspeed by the square root of the density ratio.',
  rule: (x) => trueAirspeedIncompressible(inStandardAir(x)),
  unsafeWhere: 'It reads high at every altitude above mean sea level.',
  citation: { source: 'trade-practice', locator: 'true airspeed by density alone', access: 'common-practice' },
};
