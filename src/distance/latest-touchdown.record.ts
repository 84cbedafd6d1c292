import type { FormulaRecord } from '../sources/index.ts';
import { latestTouchdownPoint, latestTouchdownPointDomain } from './latest-touchdown.ts';

export const latestTouchdownPointRecord = {
  id: 'distance.latest-touchdown-point',
  title: 'Latest touchdown point',
  equation: 'x = L - (R + \\Delta R)',
  formula: latestTouchdownPoint,
  domain: latestTouchdownPointDomain,
  inputs: {
    distanceAvailable: { symbol: 'L', meaning: 'landing distance available' },
    groundRoll: { symbol: 'R', meaning: 'ground roll corrected for wind' },
    increments: { symbol: '\\Delta R', meaning: 'increments of surface, slope and speed' },
  },
  outputs: { result: { symbol: 'x', unit: 'm', meaning: 'distance of the point from the landing threshold' } },
  citations: [
    { source: 'groundroll', locator: 'increments of surface, slope and speed lie on the ground', access: 'derived' },
  ],
  homogeneous: true,
  checkValues: { nonePublished: 'a difference; no source prints one' },
} satisfies FormulaRecord<typeof latestTouchdownPoint>;
