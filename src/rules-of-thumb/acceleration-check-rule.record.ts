import type { FormulaRecord } from '../sources/index.ts';
import { accelerationCheckByRule, accelerationCheckByRuleDomain } from './acceleration-check-rule.ts';

export const accelerationCheckByRuleRecord = {
  id: 'rules-of-thumb.acceleration-check',
  title: 'Speed by half the runway: seventy percent',
  equation: 'V \\approx 0.7\\,V_\\mathrm{LOF}',
  formula: accelerationCheckByRule,
  domain: accelerationCheckByRuleDomain,
  inputs: { liftOffSpeed: { symbol: 'V_\\mathrm{LOF}', meaning: 'lift-off speed' } },
  outputs: { result: { symbol: 'V', unit: 'kias', meaning: 'speed to have by half the runway' } },
  citations: [
    { source: 'faa-aim', locator: '7-6-8, 70 % of lift-off speed by the midpoint of the runway', access: 'read' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof accelerationCheckByRule>;
