import type { FormulaRecord } from '../sources/index.ts';
import { runwayOrder, runwayOrderDomain } from './runway-order.ts';

export const runwayOrderRecord = {
  id: 'wind.runway-order',
  title: 'Runway ends in the order of their wind',
  equation: '\\text{along: } U_1 \\ge U_2 \\ge \\dots \\qquad \\text{across: } X_1 \\le X_2 \\le \\dots',
  formula: runwayOrder,
  domain: runwayOrderDomain,
  inputs: {
    wind: { symbol: 'W', meaning: 'wind as reported' },
    runways: { symbol: '\\theta_i', meaning: 'directions of the runway ends' },
    by: { symbol: '\\text{by}', meaning: 'along the wind used U, across the greatest crosswind X' },
    headwindShare: { symbol: 'a', meaning: 'share of a headwind that is counted on' },
    tailwindShare: { symbol: 'b', meaning: 'share of a tailwind that is reckoned with' },
  },
  outputs: {},
  citations: [
    {
      source: 'groundroll',
      locator: 'order by the worst of the reported wind, and by the wind alone',
      access: 'policy',
    },
    { source: 'faa-test-figures', locator: 'Figure 36, runways 24, 14 and 10 in a south wind', access: 'second-hand' },
  ],
  homogeneous: true,
  checkValues: {
    nonePublished:
      'an order, not a figure; the one published choice among several runways is a test of the order, and the components have check values of their own',
  },
} satisfies FormulaRecord<typeof runwayOrder>;
