import type { FormulaRecord } from '../sources/index.ts';
import { latestRejectPoint, latestRejectPointDomain } from './reject-point.ts';

export const latestRejectPointRecord = {
  id: 'distance.latest-reject-point',
  title: 'Latest reject point',
  equation:
    'x = \\max\\left\\{x \\in [0, R] : x + t\\,v + \\frac{v^2}{2\\mu g} \\le S\\right\\}, \\qquad v = V\\sqrt{\\frac{x}{R}}',
  formula: latestRejectPoint,
  domain: latestRejectPointDomain,
  inputs: {
    longestRoll: { symbol: 'R', meaning: 'longest acceptable ground roll' },
    liftOffGroundSpeed: { symbol: 'V', meaning: 'ground speed at lift-off' },
    reactionTime: { symbol: 't', meaning: 'reaction time' },
    brakingCoefficient: { symbol: '\\mu', meaning: 'braking coefficient' },
    stopDistanceAvailable: { symbol: 'S', meaning: 'accelerate-stop distance available' },
  },
  outputs: { result: { symbol: 'x', unit: 'm', meaning: 'distance of the point from the start of the roll' } },
  citations: [
    { source: 'mathematics', locator: 'uniform acceleration and uniform braking', access: 'derived' },
    { source: 'groundroll', locator: 'reject point before lift-off on the longest acceptable roll', access: 'policy' },
  ],
  homogeneous: false,
  checkValues: {
    nonePublished: 'a derivation of this library; light-aircraft handbooks print no accelerate-stop example',
  },
} satisfies FormulaRecord<typeof latestRejectPoint>;
