import type { FormulaRecord } from '../sources/index.ts';
import { brakedRoll, brakedRollDomain } from './braked-roll.ts';

export const brakedRollRecord = {
  id: 'dynamics.braked-roll',
  title: 'Braked roll from the forces, in closed form',
  equation:
    '-\\frac{dV}{dt} = A + BV^2, \\quad A = g\\left[\\mu\\cos\\theta + \\sin\\theta - \\frac{T}{mg}\\right], \\quad B = \\frac{\\rho S}{2m}(C_D - \\mu C_L), \\qquad t = N + \\int_{V_w}^{V}\\frac{dV}{A + BV^2}, \\quad s = \\int_{V_w}^{V}\\frac{V\\,dV}{A + BV^2} + NV - V_w t',
  formula: brakedRoll,
  domain: brakedRollDomain,
  inputs: {
    mass: { symbol: 'm', meaning: 'mass of the aeroplane' },
    speed: { symbol: 'V', meaning: 'speed at touchdown' },
    thrust: { symbol: 'T', meaning: 'thrust left, reversed negative' },
    wingArea: { symbol: 'S', meaning: 'wing area' },
    density: { symbol: '\\rho', meaning: 'density of the air' },
    liftCoefficient: { symbol: 'C_L', meaning: 'lift coefficient' },
    dragCoefficient: { symbol: 'C_D', meaning: 'drag coefficient' },
    brakingFriction: { symbol: '\\mu', meaning: 'braking friction' },
    freeRollTime: { symbol: 'N', meaning: 'time before the brakes are on' },
    slope: { symbol: '\\tan\\theta', meaning: 'slope of the runway, uphill positive' },
    headwind: { symbol: 'V_w', meaning: 'headwind, a tailwind negative' },
  },
  outputs: {
    distance: { symbol: 's', unit: 'm', meaning: 'distance to standstill' },
    time: { symbol: 't', unit: 's', meaning: 'time to standstill' },
  },
  citations: [
    { source: 'anderson-aircraft-performance', locator: 'equation 6.119, landing ground roll', access: 'read' },
    { source: 'mathematics', locator: 'integration with wind and slope', access: 'derived' },
  ],
  homogeneous: false,
  checkValues: {
    nonePublished:
      'the worked landing roll of the source was not seen; the terms that it shares with a take-off are checked there',
  },
} satisfies FormulaRecord<typeof brakedRoll>;
