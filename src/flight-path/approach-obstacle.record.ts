import type { FormulaRecord } from '../sources/index.ts';
import { landingDistanceLost, landingDistanceLostDomain } from './approach-obstacle.ts';

export const landingDistanceLostRecord = {
  id: 'flight-path.landing-distance-lost',
  title: 'Landing distance lost over an approach obstacle',
  equation: 'x = \\max\\left(0,\\ \\frac{h + c - h_{50} - d\\tan\\gamma}{\\tan\\gamma - s}\\right)',
  formula: landingDistanceLost,
  domain: landingDistanceLostDomain,
  inputs: {
    obstacleHeight: { symbol: 'h', meaning: 'height of the top of the obstacle over the landing threshold' },
    clearance: { symbol: 'c', meaning: 'approach clearance' },
    screenHeight: { symbol: 'h_{50}', meaning: 'screen height' },
    distance: { symbol: 'd', meaning: 'distance of the obstacle before the landing threshold' },
    pathAngle: { symbol: '\\gamma', meaning: 'path angle' },
    downslope: { symbol: 's', meaning: 'downslope of the runway' },
  },
  outputs: { result: { symbol: 'x', unit: 'm', meaning: 'landing distance lost' } },
  citations: [{ source: 'mathematics', locator: 'two straight lines', access: 'derived' }],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof landingDistanceLost>;
