import type { FormulaRecord } from '../sources/index.ts';
import { descentDistanceByRule, descentDistanceByRuleDomain } from './descent-distance-rule.ts';

export const descentDistanceByRuleRecord = {
  id: 'rules-of-thumb.descent-distance',
  title: 'Distance of a descent by three hundred feet for a mile',
  equation: 's \\approx \\frac{h}{300}',
  formula: descentDistanceByRule,
  domain: descentDistanceByRuleDomain,
  inputs: { heightToLose: { symbol: 'h', meaning: 'height to lose' } },
  outputs: { result: { symbol: 's', unit: 'NM', meaning: 'distance, approximate' } },
  citations: [{ source: 'faa-iph', locator: 'ch. 3, altitude to lose divided by 300', access: 'read' }],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof descentDistanceByRule>;
