import { gustRules } from '../airspeed/index.ts';
import { speedFactor } from '../distance/index.ts';
import {
  type CalibratedAirspeed,
  type Domain,
  demand,
  type Knots,
  kcas,
  type Numbers,
  type Ratio,
} from '../units/index.ts';

/** Inputs of {@link gustRuleCosts}. */
export interface GustRuleCostsInputs {
  /** Approach speed without gusts, the one for which the landing distance is printed; calibrated. */
  readonly approachSpeed: CalibratedAirspeed;
  /** Mean speed of the wind. */
  readonly meanSpeed: Knots;
  /** Speed of the gusts, at least the mean. */
  readonly gust: Knots;
}

/** What one rule for the approach speed in gusts adds, and what that costs. */
export interface GustRuleCost {
  /** The id of the rule in `gustRules`. */
  readonly rule: string;
  readonly title: string;
  /** What the rule adds to the approach speed, unrounded. */
  readonly addition: Knots;
  readonly speed: CalibratedAirspeed;
  /** Landing distance from 50 ft over that at the speed without gusts. */
  readonly landingDistanceFactor: Ratio;
}

const domain = {
  approachSpeed: { unit: 'kcas', min: 20, max: 150, source: 'library range' },
  meanSpeed: { unit: 'kt', min: 0, max: 100, source: 'library range' },
  gust: { unit: 'kt', min: 0, max: 100, source: 'library range' },
} satisfies Domain<GustRuleCostsInputs>;

/**
 * What the rules for the approach speed in gusts add, and what each addition costs in landing distance: the factor is
 * (V/V₀)², with V₀ the speed without gusts. The addition is taken as calibrated; an assessment adds to the indicated
 * speed of the manual and rounds it up first, so that its factor may differ a little.
 *
 * @param x - `approachSpeed` 20 KCAS to 150 KCAS, `meanSpeed` 0 kt to 100 kt, `gust` from the mean speed to 100 kt.
 * @returns One row for each of `gustRules`, in their order.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the gust is
 * below the mean speed.
 *
 * @example
 * gustRuleCosts({ approachSpeed: kcas(60), meanSpeed: kt(12), gust: kt(24) }).map(({ speed }) => speed as number) // => [60, 60, 66, 72]
 * gustRuleCosts({ approachSpeed: kcas(60), meanSpeed: kt(12), gust: kt(24) })[2]?.landingDistanceFactor.toFixed(2) // => '1.21'
 */
export function gustRuleCosts(x: GustRuleCostsInputs): readonly GustRuleCost[] {
  demand('approachSpeed', x.approachSpeed, domain.approachSpeed);
  demand('meanSpeed', x.meanSpeed, domain.meanSpeed);
  demand('gust', x.gust, domain.gust);
  const { approachSpeed: v0_kt }: Numbers<GustRuleCostsInputs> = x;
  return gustRules.map(({ id, title, addition: additionOf }) => {
    const addition = additionOf({ meanSpeed: x.meanSpeed, gust: x.gust });
    const addition_kt: number = addition;
    const speed = kcas(v0_kt + addition_kt);
    return {
      rule: id,
      title,
      addition,
      speed,
      landingDistanceFactor: speedFactor({ speed, tableSpeed: x.approachSpeed }),
    };
  });
}
