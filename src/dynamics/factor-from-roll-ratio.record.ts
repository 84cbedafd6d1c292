import type { FormulaRecord } from '../sources/index.ts';
import { factorFromRollRatio, factorFromRollRatioDomain } from './factor-from-roll-ratio.ts';

export const factorFromRollRatioRecord = {
  id: 'dynamics.factor-from-roll-ratio',
  title: 'Factor on the distance from a ratio of ground rolls',
  equation: 'k = 1 + (r - 1)\\,\\frac{s}{d}',
  formula: factorFromRollRatio,
  domain: factorFromRollRatioDomain,
  inputs: {
    ratio: { symbol: 'r', meaning: 'ratio of the ground rolls' },
    groundRoll: { symbol: 's', meaning: 'known ground roll' },
    distance: { symbol: 'd', meaning: 'known distance to 50 ft' },
  },
  outputs: { result: { symbol: 'k', unit: 'ratio', meaning: 'correction factor on the total distance' } },
  citations: [{ source: 'mathematics', locator: 'the airborne distance stays', access: 'derived' }],
  homogeneous: true,
  checkValues: { nonePublished: 'a rearrangement of sums' },
} satisfies FormulaRecord<typeof factorFromRollRatio>;
