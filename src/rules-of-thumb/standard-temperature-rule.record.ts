import type { FormulaRecord } from '../sources/index.ts';
import { standardTemperatureByRule, standardTemperatureByRuleDomain } from './standard-temperature-rule.ts';

export const standardTemperatureByRuleRecord = {
  id: 'rules-of-thumb.standard-temperature',
  title: 'Standard temperature by two degrees for a thousand feet',
  equation: 'T \\approx 15 - \\frac{2\\,PA}{1000}',
  formula: standardTemperatureByRule,
  domain: standardTemperatureByRuleDomain,
  inputs: { pressureAltitude: { symbol: 'PA', meaning: 'pressure altitude' } },
  outputs: { result: { symbol: 'T', unit: 'degC', meaning: 'standard temperature, approximate' } },
  citations: [
    { source: 'density-altitude-article', locator: 'standard temperature within the rule of thumb', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof standardTemperatureByRule>;
