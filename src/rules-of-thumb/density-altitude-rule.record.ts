import type { FormulaRecord } from '../sources/index.ts';
import { densityAltitudeByRule, densityAltitudeByRuleDomain } from './density-altitude-rule.ts';

export const densityAltitudeByRuleRecord = {
  id: 'rules-of-thumb.density-altitude',
  title: 'Density altitude by 120 ft for a degree',
  equation: 'DA \\approx PA + 120\\,\\Delta T',
  formula: densityAltitudeByRule,
  domain: densityAltitudeByRuleDomain,
  inputs: {
    pressureAltitude: { symbol: 'PA', meaning: 'pressure altitude' },
    isaDeviation: { symbol: '\\Delta T', meaning: 'deviation from standard temperature' },
  },
  outputs: { result: { symbol: 'DA', unit: 'ftDA', meaning: 'density altitude, approximate' } },
  citations: [
    { source: 'density-altitude-article', locator: 'rule of thumb', access: 'read' },
    { source: 'flight-theory-2025', locator: 'p. 241', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof densityAltitudeByRule>;
