import type { FormulaRecord } from '../../sources/index.ts';
import { rectangularStandardUncertainty } from './rectangular-standard-uncertainty.ts';

export const rectangularStandardUncertaintyRecord = {
  id: 'study.rectangular-standard-uncertainty',
  title: 'Standard uncertainty of a rectangular distribution',
  equation: 'u = \\frac{a}{\\sqrt{3}}',
  formula: rectangularStandardUncertainty,
  // In the unit of the quantity, whatever that is.
  domain: {},
  inputs: { halfWidth: { symbol: 'a', meaning: 'half the width of the range' } },
  outputs: { result: { symbol: 'u', unit: 'data', meaning: 'standard uncertainty, in the unit of the half-width' } },
  citations: [
    { source: 'mathematics', locator: 'variance of a rectangular distribution', access: 'derived' },
    { source: 'jcgm-100', locator: '4.3.7', access: 'recalled' },
  ],
  homogeneous: true,
  checkValues: { nonePublished: 'an identity of the distribution; no worked example was read' },
} satisfies FormulaRecord<typeof rectangularStandardUncertainty>;
