import type { FormulaRecord } from '../sources/index.ts';
import {
  aimingPointDistance,
  aimingPointDistanceDomain,
  aimingPointPastThreshold,
  aimingPointPastThresholdDomain,
} from './aiming-point.ts';

export const aimingPointDistanceRecord = {
  id: 'flight-path.aiming-point-distance',
  title: 'Distance to the aiming point',
  equation: 'x = \\frac{h}{\\tan\\gamma}',
  formula: aimingPointDistance,
  domain: aimingPointDistanceDomain,
  inputs: {
    height: { symbol: 'h', meaning: 'height over the aiming point' },
    pathAngle: { symbol: '\\gamma', meaning: 'path angle' },
  },
  outputs: { result: { symbol: 'x', unit: 'm', meaning: 'distance to the aiming point' } },
  citations: [
    { source: 'mathematics', locator: 'straight line', access: 'derived' },
    { source: 'faa-afh', locator: 'ch. 9: the touchdown lies beyond the aiming point', access: 'read' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof aimingPointDistance>;

export const aimingPointPastThresholdRecord = {
  id: 'flight-path.aiming-point-past-threshold',
  title: 'Aiming point of an approach over an obstacle',
  equation: 'x = \\frac{h + c}{\\tan\\gamma} - d',
  formula: aimingPointPastThreshold,
  domain: aimingPointPastThresholdDomain,
  inputs: {
    obstacleHeight: { symbol: 'h', meaning: 'height of the top of the obstacle over the landing threshold' },
    clearance: { symbol: 'c', meaning: 'approach clearance' },
    distance: { symbol: 'd', meaning: 'distance of the obstacle before the landing threshold' },
    pathAngle: { symbol: '\\gamma', meaning: 'path angle' },
  },
  outputs: { result: { symbol: 'x', unit: 'm', meaning: 'distance of the aiming point past the threshold' } },
  citations: [{ source: 'mathematics', locator: 'straight line', access: 'derived' }],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof aimingPointPastThreshold>;
