import type { FormulaRecord } from '../../sources/index.ts';
import { lognormalMoments } from './lognormal-moments.ts';

export const lognormalMomentsRecord = {
  id: 'study.lognormal-moments',
  title: 'Mean and standard deviation of a lognormal factor with the median 1',
  equation: '\\mu = e^{s^2/2}, \\qquad \\sigma = \\mu\\sqrt{e^{s^2} - 1}',
  formula: lognormalMoments,
  // A logarithm has no unit.
  domain: {},
  inputs: { standardDeviation: { symbol: 's', meaning: 'standard deviation of the natural logarithm' } },
  outputs: {
    mean: { symbol: '\\mu', unit: 'ratio', meaning: 'mean of the factor' },
    standardDeviation: { symbol: '\\sigma', unit: 'ratio', meaning: 'standard deviation of the factor' },
  },
  citations: [{ source: 'mathematics', locator: 'moments of the lognormal distribution', access: 'derived' }],
  homogeneous: true,
  checkValues: { nonePublished: 'an identity of the distribution; no worked example was read' },
} satisfies FormulaRecord<typeof lognormalMoments>;
