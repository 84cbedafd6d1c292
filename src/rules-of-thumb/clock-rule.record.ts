import type { FormulaRecord } from '../sources/index.ts';
import { crosswindByClockRule, crosswindByClockRuleDomain } from './clock-rule.ts';

export const crosswindByClockRuleRecord = {
  id: 'rules-of-thumb.crosswind-by-clock-rule',
  title: 'Crosswind by the clock rule',
  equation: 'X \\approx W\\min\\left(\\frac{\\varphi}{60}, 1\\right)',
  formula: crosswindByClockRule,
  domain: crosswindByClockRuleDomain,
  inputs: {
    windSpeed: { symbol: 'W', meaning: 'wind speed' },
    angle: { symbol: '\\varphi', meaning: 'angle between wind and runway' },
  },
  outputs: { result: { symbol: 'X', unit: 'kt', meaning: 'crosswind without its side, approximate' } },
  citations: [{ source: 'crosswind-rules-forum', locator: 'clock rule and rule of sixths', access: 'read' }],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof crosswindByClockRule>;
