import type { FormulaRecord } from '../sources/index.ts';
import { pathAngleForClearance, pathAngleForClearanceDomain, steepestPath, steepestPathDomain } from './path-angle.ts';

export const pathAngleForClearanceRecord = {
  id: 'flight-path.path-angle-for-clearance',
  title: 'Path angle over an approach obstacle',
  equation: '\\gamma = \\arctan\\frac{h + c}{d}',
  formula: pathAngleForClearance,
  domain: pathAngleForClearanceDomain,
  inputs: {
    obstacleHeight: { symbol: 'h', meaning: 'height of the top of the obstacle over the aiming point' },
    clearance: { symbol: 'c', meaning: 'approach clearance' },
    distance: { symbol: 'd', meaning: 'distance from the obstacle to the aiming point' },
  },
  outputs: { result: { symbol: '\\gamma', unit: 'deg', meaning: 'least path angle' } },
  citations: [{ source: 'mathematics', locator: 'straight line', access: 'derived' }],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof pathAngleForClearance>;

export const steepestPathRecord = {
  id: 'flight-path.steepest-path',
  title: 'Steepest path within a rate of descent',
  equation: '\\gamma = \\arctan\\frac{ROD}{GS}',
  formula: steepestPath,
  domain: steepestPathDomain,
  inputs: {
    groundSpeed: { symbol: 'GS', meaning: 'ground speed' },
    greatestRateOfDescent: { symbol: 'ROD', meaning: 'greatest rate of descent, downwards positive' },
  },
  outputs: { result: { symbol: '\\gamma', unit: 'deg', meaning: 'steepest path angle over the ground' } },
  citations: [
    { source: 'mathematics', locator: 'height lost and ground covered in the same time', access: 'derived' },
    { source: 'faa-iph', locator: 'ch. 4, rate of descent on the approach', access: 'read' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof steepestPath>;
