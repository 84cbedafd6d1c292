import type { FormulaRecord } from '../sources/index.ts';
import { accelerationCheckSpeed, accelerationCheckSpeedDomain } from './acceleration-check.ts';

export const accelerationCheckSpeedRecord = {
  id: 'distance.acceleration-check-speed',
  title: 'Speed due at the acceleration check',
  equation: 'V = \\max\\left(0.70\\,V_{LOF},\\ w + (V_{LOF} - w)\\sqrt{\\frac{x}{R}}\\right)',
  formula: accelerationCheckSpeed,
  domain: accelerationCheckSpeedDomain,
  inputs: {
    liftOffSpeed: { symbol: 'V_{LOF}', meaning: 'lift-off speed' },
    headwind: { symbol: 'w', meaning: 'headwind, a tailwind negative' },
    distance: { symbol: 'x', meaning: 'distance rolled to the mark' },
    roll: { symbol: 'R', meaning: 'longest acceptable ground roll' },
  },
  outputs: { result: { symbol: 'V', unit: 'kias', meaning: 'speed due at the mark' } },
  citations: [
    { source: 'faa-aim', locator: '7-6-8, 70 % of the lift-off speed by the midpoint of the runway', access: 'read' },
    { source: 'mathematics', locator: 'uniform acceleration over the ground', access: 'derived' },
    { source: 'groundroll', locator: 'never below 0.70 of the lift-off speed', access: 'policy' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof accelerationCheckSpeed>;
