import type { FormulaRecord } from '../sources/index.ts';
import { rateOfDescentByRule, rateOfDescentByRuleDomain } from './rate-of-descent-rule.ts';

export const rateOfDescentByRuleRecord = {
  id: 'rules-of-thumb.rate-of-descent',
  title: 'Rate of descent by five times the ground speed',
  equation: 'ROD \\approx 5\\,GS',
  formula: rateOfDescentByRule,
  domain: rateOfDescentByRuleDomain,
  inputs: { groundSpeed: { symbol: 'GS', meaning: 'ground speed' } },
  outputs: { result: { symbol: 'ROD', unit: 'ftPerMin', meaning: 'rate of descent, downwards positive, approximate' } },
  citations: [{ source: 'trade-practice', locator: '5 times ground speed for 3°', access: 'common-practice' }],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof rateOfDescentByRule>;
