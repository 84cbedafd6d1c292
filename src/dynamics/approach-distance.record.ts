import type { FormulaRecord } from '../sources/index.ts';
import { approachDistance, approachDistanceDomain } from './approach-distance.ts';

export const approachDistanceRecord = {
  id: 'dynamics.approach-distance',
  title: 'Distance from the screen height to the flare',
  equation: 's_a = \\frac{h - h_f}{\\tan\\theta}',
  formula: approachDistance,
  domain: approachDistanceDomain,
  inputs: {
    screenHeight: { symbol: 'h', meaning: 'screen height' },
    flareHeight: { symbol: 'h_f', meaning: 'height at which the flare begins' },
    pathAngle: { symbol: '\\theta', meaning: 'angle of the approach path' },
  },
  outputs: {
    result: { symbol: 's_a', unit: 'm', meaning: 'distance' },
  },
  citations: [{ source: 'anderson-aircraft-performance', locator: 'ch. 6, approach, and ex. 6.7', access: 'read' }],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof approachDistance>;
