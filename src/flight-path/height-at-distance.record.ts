import type { FormulaRecord } from '../sources/index.ts';
import { heightAtDistance, heightAtDistanceDomain } from './height-at-distance.ts';

export const heightAtDistanceRecord = {
  id: 'flight-path.height-at-distance',
  title: 'Height gained over a distance',
  equation: 'h = \\frac{ROC}{GS}\\,d',
  formula: heightAtDistance,
  domain: heightAtDistanceDomain,
  inputs: {
    rateOfClimb: { symbol: 'ROC', meaning: 'rate of climb' },
    groundSpeed: { symbol: 'GS', meaning: 'ground speed' },
    distance: { symbol: 'd', meaning: 'distance along the ground' },
  },
  outputs: { result: { symbol: 'h', unit: 'mHeight', meaning: 'height gained' } },
  citations: [
    { source: 'mathematics', locator: 'height gained and ground covered in the same time', access: 'derived' },
    {
      source: 'faa-phak',
      locator: 'ch. 11, climb performance: best angle and best rate to an obstacle',
      access: 'read',
    },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof heightAtDistance>;
