import type { FormulaRecord } from '../sources/index.ts';
import { obstacleClearance, obstacleClearanceDomain } from './obstacle-clearance.ts';

export const obstacleClearanceRecord = {
  id: 'flight-path.obstacle-clearance',
  title: 'Height above an obstacle',
  equation: 'c = h_0 + \\gamma d - h',
  formula: obstacleClearance,
  domain: obstacleClearanceDomain,
  inputs: {
    obstacleTop: { symbol: 'h', meaning: 'height of the top of the obstacle' },
    startHeight: { symbol: 'h_0', meaning: 'height at which the climb starts' },
    distance: { symbol: 'd', meaning: 'distance from the start of the climb to the obstacle' },
    gradient: { symbol: '\\gamma', meaning: 'gradient over the ground' },
  },
  outputs: { result: { symbol: 'c', unit: 'mHeight', meaning: 'height of the path above the top' } },
  citations: [
    { source: 'mathematics', locator: 'straight line', access: 'derived' },
    { source: 'faa-phak', locator: 'ch. 11, climb performance', access: 'read' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof obstacleClearance>;
