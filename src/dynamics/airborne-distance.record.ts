import type { FormulaRecord } from '../sources/index.ts';
import {
  airborneDistance,
  airborneDistanceDomain,
  airborneDistanceInArc,
  airborneDistanceInArcDomain,
} from './airborne-distance.ts';

export const airborneDistanceInArcRecord = {
  id: 'dynamics.airborne-distance-in-arc',
  title: 'Airborne distance of a take-off, screen height reached in the arc',
  equation: '\\theta = \\arccos\\left(1 - \\frac{h}{R}\\right), \\qquad s = R\\sin\\theta',
  formula: airborneDistanceInArc,
  domain: airborneDistanceInArcDomain,
  inputs: {
    radius: { symbol: 'R', meaning: 'radius of the arc' },
    screenHeight: { symbol: 'h', meaning: 'screen height' },
  },
  outputs: {
    distance: { symbol: 's', unit: 'm', meaning: 'airborne distance' },
    pathAngle: { symbol: '\\theta', unit: 'deg', meaning: 'angle of the path at the screen height' },
  },
  citations: [
    {
      source: 'anderson-aircraft-performance',
      locator: 'ch. 6, distance to clear an obstacle, and ex. 6.6',
      access: 'read',
    },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof airborneDistanceInArc>;

export const airborneDistanceRecord = {
  id: 'dynamics.airborne-distance',
  title: 'Airborne distance of a take-off, arc and straight climb',
  equation:
    's = R\\sin\\gamma + \\frac{h - R(1 - \\cos\\gamma)}{\\tan\\gamma}, \\qquad s = \\sqrt{R^2 - (R - h)^2}\\ \\text{where}\\ R(1 - \\cos\\gamma) \\ge h',
  formula: airborneDistance,
  domain: airborneDistanceDomain,
  inputs: {
    radius: { symbol: 'R', meaning: 'radius of the arc' },
    screenHeight: { symbol: 'h', meaning: 'screen height' },
    climbAngle: { symbol: '\\gamma', meaning: 'angle of the climb' },
  },
  outputs: {
    result: { symbol: 's', unit: 'm', meaning: 'airborne distance' },
  },
  citations: [
    { source: 'anderson-aircraft-performance', locator: 'ch. 6, distance to clear an obstacle', access: 'read' },
    { source: 'mathematics', locator: 'an arc and its tangent', access: 'derived' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof airborneDistance>;
