import { pressureAltitude } from '../atmosphere/index.ts';
import {
  type Domain,
  demand,
  type Elevation,
  hectopascalsFromInchesOfMercury,
  type InchesOfMercury,
  type Numbers,
  type PressureAltitude,
} from '../units/index.ts';
import type { RuleOfThumb } from './rule-of-thumb.ts';

/** Inputs of {@link pressureAltitudeByInchRule}. */
export interface PressureAltitudeByInchRuleInputs {
  readonly elevation: Elevation;
  readonly altimeterSetting: InchesOfMercury;
}

export const pressureAltitudeByInchRuleDomain = {
  elevation: { unit: 'ftElevation', min: -2000, max: 15000, source: 'library range' },
  altimeterSetting: { unit: 'inHg', min: 25.2, max: 32, source: 'library range' },
} satisfies Domain<PressureAltitudeByInchRuleInputs>;

/**
 * Pressure altitude by a thousand feet for each inch of mercury. The exact slope is 925 ft/inHg at mean sea level, 981 at
 * 2000 ft, 1073 at 5000 ft.
 *
 * PA ≈ He + 1000 (29.92 − A): He the elevation in ft, A the altimeter setting in inHg.
 *
 * @param x - `elevation` −2000 ft to 15 000 ft, `altimeterSetting` 25.2 inHg to 32 inHg.
 * @returns Pressure altitude in ft.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record rules-of-thumb.pressure-altitude-by-inch
 *
 * @example
 * pressureAltitudeByInchRule({ elevation: ftElevation(640), altimeterSetting: inHg(29.42) }) // ≈ 1140 ± 1e-9
 */
export function pressureAltitudeByInchRule(x: PressureAltitudeByInchRuleInputs): PressureAltitude {
  demand('elevation', x.elevation, pressureAltitudeByInchRuleDomain.elevation);
  demand('altimeterSetting', x.altimeterSetting, pressureAltitudeByInchRuleDomain.altimeterSetting);
  const { elevation: elevation_ft, altimeterSetting: a_inHg }: Numbers<PressureAltitudeByInchRuleInputs> = x;
  return (elevation_ft + 1000 * (29.92 - a_inHg)) as PressureAltitude;
}

/**
 * A thousand feet for an inch beside the pressure altitude.
 *
 * @example
 * ruleOfThumbError(thousandFeetRule, { elevation: ftElevation(0), altimeterSetting: inHg(28) }).difference // ≈ 95.1 ± 0.1
 */
export const thousandFeetRule: RuleOfThumb<PressureAltitudeByInchRuleInputs> = {
  id: 'thousand-feet-per-inch',
  title: 'A thousand feet for an inch of mercury',
  words: 'Pressure altitude is elevation and 1000 ft for each inch of mercury that the setting is below 29.92.',
  rule: pressureAltitudeByInchRule,
  exact: (x) => pressureAltitude({ elevation: x.elevation, qnh: hectopascalsFromInchesOfMercury(x.altimeterSetting) }),
  unit: 'ftPA',
  errorIn: 'difference',
  domain: {
    elevation: { words: 'an elevation', unit: 'ftElevation', min: 0, max: 5000, step: 5000 },
    altimeterSetting: { words: 'an altimeter setting', unit: 'inHg', min: 28, max: 31, step: 0.05 },
  },
  unsafeSide: 'reads low',
  because: 'the air is thinner than it says',
  unsafeWhere: 'It reads low at settings from 29.91 inHg.',
  citation: { source: 'trade-practice', locator: '1000 ft/inHg', access: 'common-practice' },
};
