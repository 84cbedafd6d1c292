import type { FormulaRecord } from '../sources/index.ts';
import { climbGradient, climbGradientDomain } from './climb-gradient.ts';

export const climbGradientRecord = {
  id: 'flight-path.climb-gradient',
  title: 'Gradient over the ground',
  equation: '\\gamma = \\frac{ROC \\cdot 0.3048 / 60}{GS \\cdot 1852 / 3600}',
  formula: climbGradient,
  domain: climbGradientDomain,
  inputs: {
    rateOfClimb: { symbol: 'ROC', meaning: 'rate of climb' },
    groundSpeed: { symbol: 'GS', meaning: 'ground speed' },
  },
  outputs: { result: { symbol: '\\gamma', unit: 'ratio', meaning: 'gradient over the ground' } },
  citations: [
    { source: 'mathematics', locator: 'height gained and ground covered in the same time', access: 'derived' },
    { source: 'faa-phak', locator: 'ch. 11, climb performance', access: 'read' },
    {
      source: 'trade-practice',
      locator: 'published tables of rate of climb by gradient and ground speed',
      access: 'second-hand',
    },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof climbGradient>;
