import type { FormulaRecord } from '../sources/index.ts';
import { correctedDistance, correctedDistanceDomain } from './corrected-distance.ts';

export const correctedDistanceRecord = {
  id: 'distance.corrected-distance',
  title: 'Distance with its factors',
  equation: 'D = D_0 \\prod_{i=1}^{n} k_i',
  formula: correctedDistance,
  domain: correctedDistanceDomain,
  inputs: {
    distance: { symbol: 'D_0', meaning: 'distance to be corrected' },
    factors: { symbol: 'k_i', meaning: 'correction and safety factors' },
  },
  outputs: { result: { symbol: 'D', unit: 'm', meaning: 'corrected distance' } },
  citations: [
    { source: 'uk-leaflet', locator: 'factors are multiplied; worked example', access: 'recalled' },
    { source: 'faa-test-figures', locator: 'Figure 38, notes and published answers', access: 'read' },
    { source: 'trade-practice', locator: 'factors multiply and are never added', access: 'common-practice' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof correctedDistance>;
