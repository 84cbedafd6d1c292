import type { FormulaRecord } from '../sources/index.ts';
import { pressureAltitudeByRule, pressureAltitudeByRuleDomain } from './pressure-altitude-rule.ts';

export const pressureAltitudeByRuleRecord = {
  id: 'rules-of-thumb.pressure-altitude',
  title: 'Pressure altitude by so many feet for a hectopascal',
  equation: 'PA \\approx H_e + k\\,(1013.25 - QNH)',
  formula: pressureAltitudeByRule,
  domain: pressureAltitudeByRuleDomain,
  inputs: {
    elevation: { symbol: 'H_e', meaning: 'elevation' },
    qnh: { symbol: 'QNH', meaning: 'altimeter setting' },
    heightPerPressure: { symbol: 'k', meaning: 'feet for each hectopascal' },
  },
  outputs: { result: { symbol: 'PA', unit: 'ftPA', meaning: 'pressure altitude, approximate' } },
  citations: [
    { source: 'altimetry-training-page', locator: '30 ft/hPa below 5000 ft', access: 'read' },
    { source: 'trade-practice', locator: '27 ft/hPa and 28 ft/hPa near mean sea level', access: 'common-practice' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof pressureAltitudeByRule>;
