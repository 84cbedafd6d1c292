import type { FormulaRecord } from '../sources/index.ts';
import { crossoverWind, crossoverWindDomain } from './crossover-wind.ts';

export const crossoverWindRecord = {
  id: 'flight-path.crossover-wind',
  title: 'Wind in which V_X and V_Y climb equally steeply',
  equation: 'w^* = \\frac{R_Y V_X - R_X V_Y}{R_Y - R_X}',
  formula: crossoverWind,
  domain: crossoverWindDomain,
  inputs: {
    speedX: { symbol: 'V_X', meaning: 'speed of the best angle' },
    rateX: { symbol: 'R_X', meaning: 'rate of climb at the speed of the best angle' },
    speedY: { symbol: 'V_Y', meaning: 'speed of the best rate' },
    rateY: { symbol: 'R_Y', meaning: 'rate of climb at the speed of the best rate' },
  },
  outputs: { result: { symbol: 'w^*', unit: 'kt', meaning: 'wind component, headwind positive' } },
  citations: [
    { source: 'mathematics', locator: 'two gradients over the ground set equal', access: 'derived' },
    { source: 'faa-afh', locator: 'ch. 13: the wind changes the gradient, not the rate of climb', access: 'read' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof crossoverWind>;
