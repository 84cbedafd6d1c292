import type { FormulaRecord } from '../sources/index.ts';
import { latestPathStart, latestPathStartDomain } from './latest-path-start.ts';

export const latestPathStartRecord = {
  id: 'flight-path.latest-path-start',
  title: 'Farthest 50 ft point that clears an obstacle',
  equation: 'x = \\frac{\\gamma d + h_{50} - h - c}{\\gamma - s}',
  formula: latestPathStart,
  domain: latestPathStartDomain,
  inputs: {
    obstacleTop: { symbol: 'h', meaning: 'height of the top of the obstacle' },
    clearance: { symbol: 'c', meaning: 'vertical clearance asked' },
    screenHeight: { symbol: 'h_{50}', meaning: 'screen height' },
    distance: { symbol: 'd', meaning: 'distance of the obstacle from the start of the take-off' },
    gradient: { symbol: '\\gamma', meaning: 'gradient over the ground' },
    slope: { symbol: 's', meaning: 'slope of the surface, uphill positive' },
  },
  outputs: {
    result: { symbol: 'x', unit: 'm', meaning: 'distance of the 50 ft point from the start of the take-off' },
  },
  citations: [{ source: 'mathematics', locator: 'two straight lines', access: 'derived' }],
  homogeneous: true,
  checkValues: { nonePublished: 'a derivation of this library; no source prints an example' },
} satisfies FormulaRecord<typeof latestPathStart>;
