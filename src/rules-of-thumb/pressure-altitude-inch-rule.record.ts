import type { FormulaRecord } from '../sources/index.ts';
import { pressureAltitudeByInchRule, pressureAltitudeByInchRuleDomain } from './pressure-altitude-inch-rule.ts';

export const pressureAltitudeByInchRuleRecord = {
  id: 'rules-of-thumb.pressure-altitude-by-inch',
  title: 'Pressure altitude by a thousand feet for an inch of mercury',
  equation: 'PA \\approx H_e + 1000\\,(29.92 - A)',
  formula: pressureAltitudeByInchRule,
  domain: pressureAltitudeByInchRuleDomain,
  inputs: {
    elevation: { symbol: 'H_e', meaning: 'elevation' },
    altimeterSetting: { symbol: 'A', meaning: 'altimeter setting' },
  },
  outputs: { result: { symbol: 'PA', unit: 'ftPA', meaning: 'pressure altitude, approximate' } },
  citations: [{ source: 'trade-practice', locator: '1000 ft/inHg', access: 'common-practice' }],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof pressureAltitudeByInchRule>;
