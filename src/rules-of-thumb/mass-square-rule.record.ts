import type { FormulaRecord } from '../sources/index.ts';
import { rollFactorByMassSquare, rollFactorByMassSquareDomain } from './mass-square-rule.ts';

export const rollFactorByMassSquareRecord = {
  id: 'rules-of-thumb.roll-factor-by-mass-square',
  title: 'Factor of the ground roll by the square of the mass',
  equation: 'k \\approx \\left(\\frac{m}{m_0}\\right)^2',
  formula: rollFactorByMassSquare,
  domain: rollFactorByMassSquareDomain,
  inputs: {
    mass: { symbol: 'm', meaning: 'mass' },
    referenceMass: { symbol: 'm_0', meaning: 'mass of the known roll' },
  },
  outputs: { result: { symbol: 'k', unit: 'ratio', meaning: 'factor of the ground roll' } },
  citations: [
    { source: 'faa-phak', locator: 'ch. 11, weight and take-off distance', access: 'read' },
    { source: 'mathematics', locator: 'uniform acceleration by a constant force', access: 'derived' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof rollFactorByMassSquare>;
