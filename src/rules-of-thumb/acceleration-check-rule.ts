import { type Domain, demand, type IndicatedAirspeed, inconsistent, type Knots, type Numbers } from '../units/index.ts';
import type { RuleOfThumb } from './rule-of-thumb.ts';

/** Inputs of {@link accelerationCheckByRule}. */
export interface AccelerationCheckByRuleInputs {
  /** Speed at which the aeroplane lifts off. */
  readonly liftOffSpeed: IndicatedAirspeed;
}

/** Inputs of the comparison, into which the wind enters. */
export interface AccelerationCheckInWindInputs {
  /** Speed at which the aeroplane lifts off. */
  readonly liftOffSpeed: IndicatedAirspeed;
  /** Wind component along the runway: positive a headwind, negative a tailwind. */
  readonly headwind: Knots;
}

export const accelerationCheckByRuleDomain = {
  liftOffSpeed: { unit: 'kias', min: 20, max: 200, source: 'library range' },
} satisfies Domain<AccelerationCheckByRuleInputs>;

/**
 * Speed to have reached by half the runway: seventy percent of the lift-off speed. Less means stop; as much proves
 * nothing, because the rule assumes that the whole runway is needed and no more.
 *
 * V ≈ 0.7 V_LOF: V_LOF the lift-off speed in KIAS.
 *
 * @param x - `liftOffSpeed` 20 KIAS to 200 KIAS.
 * @returns The speed in KIAS.
 * @throws {@link DomainError} when the lift-off speed is not within its range.
 * @record rules-of-thumb.acceleration-check
 *
 * @example
 * accelerationCheckByRule({ liftOffSpeed: kias(50) }) // => 35
 */
export function accelerationCheckByRule(x: AccelerationCheckByRuleInputs): IndicatedAirspeed {
  demand('liftOffSpeed', x.liftOffSpeed, accelerationCheckByRuleDomain.liftOffSpeed);
  const { liftOffSpeed: vlof_kt }: Numbers<AccelerationCheckByRuleInputs> = x;
  return (0.7 * vlof_kt) as IndicatedAirspeed;
}

/**
 * Seventy percent by half the runway beside uniform acceleration in wind, w + (V_LOF − w) √½. The formula of the same
 * name in `distance` is never less than the rule; here it may be, in a tailwind.
 *
 * @example
 * ruleOfThumbError(seventyPercentRule, { liftOffSpeed: kias(50), headwind: kt(10) }).percent?.toFixed(1) // => '-8.6'
 * ruleOfThumbError(seventyPercentRule, { liftOffSpeed: kias(50), headwind: kt(-5) }).side // => 'reads high'
 */
export const seventyPercentRule: RuleOfThumb<AccelerationCheckInWindInputs> = {
  id: 'seventy-percent',
  title: 'Seventy percent by half the runway',
  words: 'Stop if the aeroplane has not 70 % of its lift-off speed by half the runway.',
  rule: accelerationCheckByRule,
  exact: (x) => {
    const { liftOffSpeed: vlof_kt, headwind: w_kt }: Numbers<AccelerationCheckInWindInputs> = x;
    if (!(w_kt < vlof_kt)) refuseWindAboveLiftOff(w_kt, vlof_kt);
    return w_kt + (vlof_kt - w_kt) * Math.sqrt(0.5);
  },
  unit: 'kias',
  errorIn: 'percent',
  domain: {
    liftOffSpeed: { words: 'a lift-off speed', unit: 'kias', min: 40, max: 70, step: 5 },
    headwind: { words: 'a wind', unit: 'kt', min: -10, max: 20, step: 1 },
  },
  unsafeSide: 'reads low',
  because: 'an aeroplane that is too slow to lift off in time is allowed to go on',
  unsafeWhere: 'It reads low in still air, by 1 %, and the more the stronger the headwind.',
  citation: {
    source: 'faa-aim',
    locator: '7-6-8, 70 % of lift-off speed by the midpoint of the runway',
    access: 'read',
  },
};

function refuseWindAboveLiftOff(received: number, max: number): never {
  const source = 'the headwind is less than the lift-off speed';
  throw inconsistent('headwind', received, 'kt', -200, max, source);
}
