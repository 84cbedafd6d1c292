import type { FormulaRecord } from '../../sources/index.ts';
import { combinedStandardUncertainty } from './combined-standard-uncertainty.ts';

export const combinedStandardUncertaintyRecord = {
  id: 'study.combined-standard-uncertainty',
  title: 'Combined standard uncertainty, to first order',
  equation: 'u_c = \\sqrt{\\textstyle\\sum_i (c_i u_i)^2}',
  formula: combinedStandardUncertainty,
  // Each entry is in the unit of its own input quantity.
  domain: {},
  inputs: {
    sensitivityCoefficients: { symbol: 'c_i', meaning: 'change of the result for one unit of an input quantity' },
    standardUncertainties: { symbol: 'u_i', meaning: 'standard uncertainty of that input quantity' },
  },
  outputs: {
    result: { symbol: 'u_c', unit: 'data', meaning: 'combined standard uncertainty, in the unit of the result' },
  },
  citations: [{ source: 'jcgm-100', locator: 'equation (10), independent input quantities', access: 'recalled' }],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof combinedStandardUncertainty>;
