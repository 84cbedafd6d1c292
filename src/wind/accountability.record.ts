import type { FormulaRecord } from '../sources/index.ts';
import { windUsed, windUsedDomain } from './accountability.ts';

export const windUsedRecord = {
  id: 'wind.used',
  title: 'Wind used for distances',
  equation:
    'U = \\begin{cases} a H & H \\ge 0,\\ G \\ge 0 \\\\ -\\max\\left(b \\max(0, -H), \\max(0, -G)\\right) & \\text{otherwise} \\end{cases}',
  formula: windUsed,
  domain: windUsedDomain,
  inputs: {
    leastHeadwind: { symbol: 'H', meaning: 'least headwind of the mean over the reported directions' },
    leastHeadwindAtGust: { symbol: 'G', meaning: 'least headwind of the gust over the reported directions' },
    headwindShare: { symbol: 'a', meaning: 'share of a headwind that is counted on' },
    tailwindShare: { symbol: 'b', meaning: 'share of a tailwind that is reckoned with' },
  },
  outputs: {
    result: { symbol: 'U', unit: 'kt', meaning: 'wind used, headwind positive' },
  },
  citations: [
    { source: 'eu-965-2012', locator: 'CAT.POL.A.305(c)(6): 50 % of headwind, 150 % of tailwind', access: 'read' },
    { source: 'eu-965-2012', locator: 'CAT.POL.A.330(c)(2): 50 % of headwind, 150 % of tailwind', access: 'read' },
    { source: 'groundroll', locator: 'a tailwind in a gust counts in full', access: 'policy' },
  ],
  homogeneous: true,
  checkValues: {
    nonePublished:
      'the regulation states the two shares without a worked example; the gust rule is a policy of this library',
  },
} satisfies FormulaRecord<typeof windUsed>;
