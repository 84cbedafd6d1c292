import type { FormulaRecord } from '../sources/index.ts';
import { trueAirspeedByRule, trueAirspeedByRuleDomain } from './true-airspeed-rule.ts';

export const trueAirspeedByRuleRecord = {
  id: 'rules-of-thumb.true-airspeed',
  title: 'True airspeed by so many percent for a thousand feet',
  equation: 'V \\approx V_C\\left(1 + \\frac{q}{100}\\frac{PA}{1000}\\right)',
  formula: trueAirspeedByRule,
  domain: trueAirspeedByRuleDomain,
  inputs: {
    calibratedAirspeed: { symbol: 'V_C', meaning: 'calibrated airspeed' },
    pressureAltitude: { symbol: 'PA', meaning: 'pressure altitude' },
    percentPerThousandFeet: { symbol: 'q', meaning: 'percentage for each thousand feet' },
  },
  outputs: { result: { symbol: 'V', unit: 'ktas', meaning: 'true airspeed, approximate' } },
  citations: [
    { source: 'ppl-question-bank', locator: 'true airspeed, 2 % for each 1000 ft', access: 'read' },
    { source: 'airspeed-forum-page', locator: '1.75 % for each 1000 ft up to 10 000 ft', access: 'second-hand' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof trueAirspeedByRule>;
