import { rateOfDescent } from '../flight-path/index.ts';
import { type Domain, degrees, demand, type FeetPerMinute, type GroundSpeed, type Numbers } from '../units/index.ts';
import type { RuleOfThumb } from './rule-of-thumb.ts';

/** Inputs of {@link rateOfDescentByRule}. */
export interface RateOfDescentByRuleInputs {
  /** Speed over the ground, the wind in it. */
  readonly groundSpeed: GroundSpeed;
}

export const rateOfDescentByRuleDomain = {
  groundSpeed: { unit: 'ktGS', min: 1, max: 300, source: 'library range' },
} satisfies Domain<RateOfDescentByRuleInputs>;

/**
 * Rate of descent on a path of 3° by the rule of five times the ground speed; it holds a path of 2.83°.
 *
 * ROD ≈ 5 GS: GS the ground speed in kt, ROD in ft/min.
 *
 * @param x - `groundSpeed` 1 kt to 300 kt.
 * @returns The rate of descent in ft/min, counted downwards.
 * @throws {@link DomainError} when the ground speed is not within its range.
 * @record rules-of-thumb.rate-of-descent
 *
 * @example
 * rateOfDescentByRule({ groundSpeed: ktGS(70) }) // => 350
 */
export function rateOfDescentByRule(x: RateOfDescentByRuleInputs): FeetPerMinute {
  demand('groundSpeed', x.groundSpeed, rateOfDescentByRuleDomain.groundSpeed);
  const { groundSpeed: gs_kt }: Numbers<RateOfDescentByRuleInputs> = x;
  return (5 * gs_kt) as FeetPerMinute;
}

/**
 * Five times the ground speed beside the rate of descent on a path of 3°.
 *
 * @example
 * ruleOfThumbError(fiveTimesGroundSpeedRule, { groundSpeed: ktGS(90) }).difference // ≈ -27.7 ± 0.1
 */
export const fiveTimesGroundSpeedRule: RuleOfThumb<RateOfDescentByRuleInputs> = {
  id: 'five-times-ground-speed',
  title: 'Five times the ground speed',
  words: 'A path of 3° is held by a rate of descent of five times the ground speed, in feet per minute.',
  rule: rateOfDescentByRule,
  exact: (x) => rateOfDescent({ groundSpeed: x.groundSpeed, pathAngle: degrees(3) }),
  unit: 'ftPerMin',
  errorIn: 'percent',
  domain: {
    groundSpeed: { words: 'a ground speed', unit: 'ktGS', min: 40, max: 120, step: 5 },
  },
  unsafeSide: 'reads low',
  because: 'the aeroplane stays above the path and lands long',
  unsafeWhere: 'It reads low at every ground speed.',
  citation: { source: 'trade-practice', locator: '5 times ground speed for 3°', access: 'common-practice' },
};
