import type { FormulaRecord } from '../sources/index.ts';
import { proRatedFactor, proRatedFactorDomain } from './pro-rated-factor.ts';

export const proRatedFactorRecord = {
  id: 'distance.pro-rated-factor',
  title: 'Factor for part of a step or for several',
  equation:
    'k = \\begin{cases} 1 + (k_1 - 1)\\,n & n \\le 1 \\\\ \\max\\left(1 + (k_1 - 1)\\,n,\\ k_1^{\\,n}\\right) & n > 1 \\end{cases}',
  formula: proRatedFactor,
  domain: proRatedFactorDomain,
  inputs: {
    factorPerStep: { symbol: 'k_1', meaning: 'factor of one step' },
    steps: { symbol: 'n', meaning: 'number of steps' },
  },
  outputs: { result: { symbol: 'k', unit: 'ratio', meaning: 'correction factor' } },
  citations: [
    { source: 'uk-leaflet', locator: 'worked example: 500 ft at 10 % for each 1000 ft', access: 'recalled' },
    { source: 'groundroll', locator: 'beyond one step the larger of linear and compound', access: 'policy' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof proRatedFactor>;
