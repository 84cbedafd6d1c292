import type { FormulaRecord } from '../sources/index.ts';
import { effectiveThrust, effectiveThrustDomain } from './effective-thrust.ts';

export const effectiveThrustRecord = {
  id: 'dynamics.effective-thrust',
  title: 'Constant thrust that gives a known ground roll',
  equation: 'T = m\\left[\\frac{(V_{LOF} - V_w)^2}{2s} + g(\\mu\\cos\\theta + \\sin\\theta)\\right]',
  formula: effectiveThrust,
  domain: effectiveThrustDomain,
  inputs: {
    groundRoll: { symbol: 's', meaning: 'known ground roll' },
    mass: { symbol: 'm', meaning: 'mass' },
    liftOffSpeed: { symbol: 'V_{LOF}', meaning: 'lift-off speed' },
    rollingFriction: { symbol: '\\mu', meaning: 'rolling friction' },
    slope: { symbol: '\\tan\\theta', meaning: 'slope, uphill positive' },
    headwind: { symbol: 'V_w', meaning: 'headwind, a tailwind negative' },
  },
  outputs: {
    result: { symbol: 'T', unit: 'N', meaning: 'effective thrust' },
  },
  citations: [{ source: 'groundroll', locator: 'calibration of an estimate to a known roll', access: 'derived' }],
  homogeneous: false,
  checkValues: { nonePublished: 'a derivation of this library; no example of it is published' },
} satisfies FormulaRecord<typeof effectiveThrust>;
