import type { FormulaRecord } from '../sources/index.ts';
import { rateForGradient, rateForGradientDomain } from './rate-for-gradient.ts';

export const rateForGradientRecord = {
  id: 'flight-path.rate-for-gradient',
  title: 'Rate of climb for a gradient',
  equation: 'ROC = \\gamma\\,GS',
  formula: rateForGradient,
  domain: rateForGradientDomain,
  inputs: {
    gradient: { symbol: '\\gamma', meaning: 'gradient over the ground' },
    groundSpeed: { symbol: 'GS', meaning: 'ground speed' },
  },
  outputs: { result: { symbol: 'ROC', unit: 'ftPerMin', meaning: 'rate of climb' } },
  citations: [
    { source: 'mathematics', locator: 'height gained and ground covered in the same time', access: 'derived' },
    { source: 'faa-aim', locator: '5-2-9, climb gradients are flown by ground speed', access: 'read' },
    {
      source: 'trade-practice',
      locator: 'published tables of rate of climb by gradient and ground speed',
      access: 'second-hand',
    },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof rateForGradient>;
