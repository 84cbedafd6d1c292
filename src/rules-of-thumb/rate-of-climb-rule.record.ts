import type { FormulaRecord } from '../sources/index.ts';
import { rateOfClimbByRule, rateOfClimbByRuleDomain } from './rate-of-climb-rule.ts';

export const rateOfClimbByRuleRecord = {
  id: 'rules-of-thumb.rate-of-climb',
  title: 'Rate of climb by percent times knots',
  equation: 'ROC \\approx \\gamma\\,GS',
  formula: rateOfClimbByRule,
  domain: rateOfClimbByRuleDomain,
  inputs: {
    gradient: { symbol: '\\gamma', meaning: 'gradient in percent' },
    groundSpeed: { symbol: 'GS', meaning: 'ground speed' },
  },
  outputs: { result: { symbol: 'ROC', unit: 'ftPerMin', meaning: 'rate of climb, approximate' } },
  citations: [{ source: 'gradient-forum', locator: 'percent times knots', access: 'second-hand' }],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof rateOfClimbByRule>;
