import type { FormulaRecord } from '../sources/index.ts';
import { requiredGradient, requiredGradientDomain } from './required-gradient.ts';

export const requiredGradientRecord = {
  id: 'flight-path.required-gradient',
  title: 'Gradient required over an obstacle',
  equation: '\\gamma = \\frac{h + c - h_0}{d}',
  formula: requiredGradient,
  domain: requiredGradientDomain,
  inputs: {
    obstacleTop: { symbol: 'h', meaning: 'height of the top of the obstacle' },
    clearance: { symbol: 'c', meaning: 'vertical clearance asked' },
    startHeight: { symbol: 'h_0', meaning: 'height at which the climb starts' },
    distance: { symbol: 'd', meaning: 'distance from the start of the climb to the obstacle' },
  },
  outputs: { result: { symbol: '\\gamma', unit: 'ratio', meaning: 'gradient required over the ground' } },
  citations: [
    { source: 'mathematics', locator: 'slope of a straight line', access: 'derived' },
    { source: 'faa-iph', locator: 'ch. 1, design criteria: climb gradients', access: 'read' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof requiredGradient>;
