import type { FormulaRecord } from '../sources/index.ts';
import { rollFactorByWindSquare, rollFactorByWindSquareDomain } from './wind-square-rule.ts';

export const rollFactorByWindSquareRecord = {
  id: 'rules-of-thumb.roll-factor-by-wind-square',
  title: 'Factor of the ground roll by the square of the wind',
  equation: 'k \\approx \\left(1 - \\frac{w}{V}\\right)^2',
  formula: rollFactorByWindSquare,
  domain: rollFactorByWindSquareDomain,
  inputs: {
    headwind: { symbol: 'w', meaning: 'headwind, tailwind negative' },
    liftOffSpeed: { symbol: 'V', meaning: 'lift-off speed' },
  },
  outputs: { result: { symbol: 'k', unit: 'ratio', meaning: 'factor of the ground roll' } },
  citations: [
    { source: 'faa-phak', locator: 'ch. 11, headwind and take-off distance', access: 'read' },
    { source: 'mathematics', locator: 'uniform acceleration', access: 'derived' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof rollFactorByWindSquare>;
