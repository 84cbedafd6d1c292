import { gradientFromAngle } from '../flight-path/index.ts';
import { type Domain, degrees, demand, type Feet, type NauticalMiles, type Numbers } from '../units/index.ts';
import type { RuleOfThumb } from './rule-of-thumb.ts';

/** Inputs of {@link descentDistanceByRule}. */
export interface DescentDistanceByRuleInputs {
  /** Height to lose. */
  readonly heightToLose: Feet;
}

export const descentDistanceByRuleDomain = {
  heightToLose: { unit: 'ft', min: 0, max: 40000, source: 'library range' },
} satisfies Domain<DescentDistanceByRuleInputs>;

/**
 * Distance to lose a height on a path of 3° by the rule of three hundred feet for a mile; exactly 318.4 ft/NM.
 *
 * s ≈ h/300: h the height to lose in ft, s in NM.
 *
 * @param x - `heightToLose` 0 ft to 40 000 ft.
 * @returns Distance in NM.
 * @throws {@link DomainError} when the height is not within its range.
 * @record rules-of-thumb.descent-distance
 *
 * @example
 * descentDistanceByRule({ heightToLose: ft(2400) }) // => 8
 */
export function descentDistanceByRule(x: DescentDistanceByRuleInputs): NauticalMiles {
  demand('heightToLose', x.heightToLose, descentDistanceByRuleDomain.heightToLose);
  const { heightToLose: height_ft }: Numbers<DescentDistanceByRuleInputs> = x;
  return (height_ft / 300) as NauticalMiles;
}

/**
 * Three hundred feet for a mile beside a path of 3°.
 *
 * @example
 * ruleOfThumbError(threeHundredFeetRule, { heightToLose: ft(6000) }).difference // ≈ 1.16 ± 0.01
 */
export const threeHundredFeetRule: RuleOfThumb<DescentDistanceByRuleInputs> = {
  id: 'three-hundred-feet',
  title: 'Three hundred feet for a mile',
  words: 'A descent of 3° needs a nautical mile for each 300 ft.',
  rule: descentDistanceByRule,
  exact: (x) => {
    const gradient: number = gradientFromAngle({ angle: degrees(3) });
    const { heightToLose: height_ft }: Numbers<DescentDistanceByRuleInputs> = x;
    return (height_ft * 0.3048) / 1852 / gradient;
  },
  unit: 'NM',
  errorIn: 'percent',
  domain: {
    heightToLose: { words: 'a height to lose', unit: 'ft', min: 300, max: 10000, step: 100 },
  },
  unsafeSide: 'reads low',
  because: 'begun too late, the descent ends too steep',
  unsafeWhere: 'It never reads low: the descent always begins early.',
  citation: { source: 'faa-iph', locator: 'ch. 3, altitude to lose divided by 300', access: 'read' },
};
