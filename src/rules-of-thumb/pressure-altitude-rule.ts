import { pressureAltitude } from '../atmosphere/index.ts';
import {
  type Domain,
  demand,
  type Elevation,
  type FeetPerHectopascal,
  ftPerHPa,
  type Hectopascals,
  type Numbers,
  type PressureAltitude,
} from '../units/index.ts';
import type { RuleOfThumb } from './rule-of-thumb.ts';

/** Inputs of {@link pressureAltitudeByRule}. */
export interface PressureAltitudeByRuleInputs {
  readonly elevation: Elevation;
  readonly qnh: Hectopascals;
  /** How many feet the rule gives a hectopascal: 30, 28 or 27. */
  readonly heightPerPressure: FeetPerHectopascal;
}

/** Inputs of the comparison, which fixes the feet for a hectopascal. */
export interface PressureAltitudeOfRuleInputs {
  readonly elevation: Elevation;
  readonly qnh: Hectopascals;
}

export const pressureAltitudeByRuleDomain = {
  elevation: { unit: 'ftElevation', min: -2000, max: 15000, source: 'library range' },
  qnh: { unit: 'hPa', min: 850, max: 1085, source: 'library range' },
  heightPerPressure: { unit: 'ftPerHPa', min: 25, max: 32, source: 'library range' },
} satisfies Domain<PressureAltitudeByRuleInputs>;

/**
 * Pressure altitude by so many feet for each hectopascal of QNH below standard. The exact slope is 27.3 ft/hPa at mean
 * sea level, 29.0 at 2000 ft, 31.7 at 5000 ft.
 *
 * PA ≈ He + k (1013.25 − QNH): He the elevation in ft, QNH in hPa, k the feet for each hectopascal.
 *
 * @param x - `elevation` −2000 ft to 15 000 ft, `qnh` 850 hPa to 1085 hPa, `heightPerPressure` 25 ft/hPa to 32 ft/hPa.
 * @returns Pressure altitude in ft.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record rules-of-thumb.pressure-altitude
 *
 * @example
 * pressureAltitudeByRule({ elevation: ftElevation(1200), qnh: hPa(1003.25), heightPerPressure: ftPerHPa(30) }) // => 1500
 */
export function pressureAltitudeByRule(x: PressureAltitudeByRuleInputs): PressureAltitude {
  demand('elevation', x.elevation, pressureAltitudeByRuleDomain.elevation);
  demand('qnh', x.qnh, pressureAltitudeByRuleDomain.qnh);
  demand('heightPerPressure', x.heightPerPressure, pressureAltitudeByRuleDomain.heightPerPressure);
  const {
    elevation: elevation_ft,
    qnh: qnh_hPa,
    heightPerPressure: k_ftPerHPa,
  }: Numbers<PressureAltitudeByRuleInputs> = x;
  return (elevation_ft + k_ftPerHPa * (1013.25 - qnh_hPa)) as PressureAltitude;
}

const comparison = {
  exact: pressureAltitude,
  unit: 'ftPA',
  errorIn: 'difference',
  domain: {
    elevation: { words: 'an elevation', unit: 'ftElevation', min: 0, max: 5000, step: 5000 },
    qnh: { words: 'a QNH', unit: 'hPa', min: 950, max: 1050, step: 1 },
  },
  unsafeSide: 'reads low',
  because: 'the air is thinner than it says',
} as const satisfies Partial<RuleOfThumb<PressureAltitudeOfRuleInputs>>;

/**
 * Thirty feet for a hectopascal beside the pressure altitude.
 *
 * @example
 * ruleOfThumbError(thirtyFeetRule, { elevation: ftElevation(0), qnh: hPa(1030) }).difference // ≈ -48.1 ± 0.1
 */
export const thirtyFeetRule: RuleOfThumb<PressureAltitudeOfRuleInputs> = {
  ...comparison,
  id: 'thirty-feet-per-hectopascal',
  title: 'Thirty feet for a hectopascal',
  words: 'Pressure altitude is elevation and 30 ft for each hectopascal that the QNH is below 1013.25 hPa.',
  rule: (x) => pressureAltitudeByRule({ ...x, heightPerPressure: ftPerHPa(30) }),
  unsafeWhere: 'It reads low when the QNH is above standard.',
  citation: { source: 'altimetry-training-page', locator: '30 ft/hPa below 5000 ft', access: 'read' },
};

/**
 * Twenty-eight feet for a hectopascal beside the pressure altitude.
 *
 * @example
 * ruleOfThumbError(twentyEightFeetRule, { elevation: ftElevation(0), qnh: hPa(980) }).difference // ≈ 10.6 ± 0.1
 */
export const twentyEightFeetRule: RuleOfThumb<PressureAltitudeOfRuleInputs> = {
  ...comparison,
  id: 'twenty-eight-feet-per-hectopascal',
  title: 'Twenty-eight feet for a hectopascal',
  words: 'Pressure altitude is elevation and 28 ft for each hectopascal that the QNH is below 1013.25 hPa.',
  rule: (x) => pressureAltitudeByRule({ ...x, heightPerPressure: ftPerHPa(28) }),
  unsafeWhere: 'It reads low when the QNH is above standard, and below 953 hPa.',
  citation: { source: 'trade-practice', locator: '28 ft/hPa near mean sea level', access: 'common-practice' },
};

/**
 * Twenty-seven feet for a hectopascal beside the pressure altitude.
 *
 * @example
 * ruleOfThumbError(twentySevenFeetRule, { elevation: ftElevation(0), qnh: hPa(980) }).difference // ≈ -22.6 ± 0.1
 */
export const twentySevenFeetRule: RuleOfThumb<PressureAltitudeOfRuleInputs> = {
  ...comparison,
  id: 'twenty-seven-feet-per-hectopascal',
  title: 'Twenty-seven feet for a hectopascal',
  words: 'Pressure altitude is elevation and 27 ft for each hectopascal that the QNH is below 1013.25 hPa.',
  rule: (x) => pressureAltitudeByRule({ ...x, heightPerPressure: ftPerHPa(27) }),
  unsafeWhere: 'It reads low when the QNH is below standard, and above 1042 hPa.',
  citation: { source: 'trade-practice', locator: '27 ft/hPa near mean sea level', access: 'common-practice' },
};
