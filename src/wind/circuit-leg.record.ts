import type { FormulaRecord } from '../sources/index.ts';
import { circuitLeg, circuitLegDomain } from './circuit-leg.ts';

export const circuitLegRecord = {
  id: 'wind.circuit-leg',
  title: 'Leg of a circuit in the wind',
  equation:
    '\\psi = \\theta + \\arcsin\\frac{W\\sin(\\varphi - \\theta)}{V}, \\qquad V_G = V\\cos(\\psi - \\theta) - W\\cos(\\varphi - \\theta), \\qquad t = \\frac{d}{V_G}',
  formula: circuitLeg,
  domain: circuitLegDomain,
  inputs: {
    leg: { symbol: '\\text{leg}', meaning: 'leg, which decides by how much the track is turned from the runway' },
    circuit: { symbol: '\\text{circuit}', meaning: 'side of the turns' },
    direction: { symbol: '\\theta_R', meaning: 'direction of the runway in use, against the same north' },
    from: { symbol: '\\varphi', meaning: 'direction the wind blows from' },
    speed: { symbol: 'W', meaning: 'wind speed' },
    trueAirspeed: { symbol: 'V', meaning: 'true airspeed' },
    length: { symbol: 'd', meaning: 'length of the leg over the ground' },
  },
  outputs: {
    track: { symbol: '\\theta', unit: 'degTrue', meaning: 'track, against the north of wind and runway' },
    heading: { symbol: '\\psi', unit: 'degTrue', meaning: 'heading, against the north of wind and runway' },
    windCorrectionAngle: {
      symbol: '\\psi - \\theta',
      unit: 'deg',
      meaning: 'wind correction angle, to the right positive',
    },
    drift: { symbol: '\\theta - \\psi', unit: 'deg', meaning: 'drift, to the right positive' },
    groundSpeed: { symbol: 'V_G', unit: 'ktGS', meaning: 'ground speed' },
    time: { symbol: 't', unit: 's', meaning: 'time on the leg' },
  },
  citations: [
    { source: 'mathematics', locator: 'addition of velocities', access: 'derived' },
    { source: 'trade-practice', locator: 'the legs of a circuit', access: 'common-practice' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof circuitLeg>;
