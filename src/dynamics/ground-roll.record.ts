import type { FormulaRecord } from '../sources/index.ts';
import { groundRoll, groundRollDomain } from './ground-roll.ts';

export const groundRollRecord = {
  id: 'dynamics.ground-roll',
  title: 'Ground roll from the forces, in closed form',
  equation:
    '\\frac{dV}{dt} = A - BV^2, \\quad A = g\\left[\\frac{T_0}{mg} - \\mu\\cos\\theta - \\sin\\theta\\right], \\quad B = \\frac{1}{m}\\left[\\tfrac12\\rho S(C_D - \\mu C_L) - a\\right], \\qquad t = \\frac{\\operatorname{artanh}\\left(V_{LOF}\\sqrt{B/A}\\right) - \\operatorname{artanh}\\left(V_w\\sqrt{B/A}\\right)}{\\sqrt{AB}}, \\quad s = \\frac{1}{2B}\\ln\\frac{A - BV_w^2}{A - BV_{LOF}^2} - V_w t',
  formula: groundRoll,
  domain: groundRollDomain,
  inputs: {
    mass: { symbol: 'm', meaning: 'mass of the aeroplane' },
    liftOffSpeed: { symbol: 'V_{LOF}', meaning: 'lift-off speed' },
    staticThrust: { symbol: 'T_0', meaning: 'thrust at standstill' },
    thrustChange: { symbol: 'a', meaning: 'change of the thrust for each square of the airspeed' },
    wingArea: { symbol: 'S', meaning: 'wing area' },
    density: { symbol: '\\rho', meaning: 'density of the air' },
    liftCoefficient: { symbol: 'C_L', meaning: 'lift coefficient' },
    dragCoefficient: { symbol: 'C_D', meaning: 'drag coefficient' },
    rollingFriction: { symbol: '\\mu', meaning: 'rolling friction' },
    slope: { symbol: '\\tan\\theta', meaning: 'slope of the runway, uphill positive' },
    headwind: { symbol: 'V_w', meaning: 'headwind, a tailwind negative' },
  },
  outputs: {
    distance: { symbol: 's', unit: 'm', meaning: 'ground roll' },
    time: { symbol: 't', unit: 's', meaning: 'time to lift-off' },
  },
  citations: [
    { source: 'anderson-aircraft-performance', locator: 'ch. 6, equation of motion on the ground', access: 'read' },
    {
      source: 'performance-lecture-notes',
      locator: 'thrust as a constant and a term in the square of the speed',
      access: 'read',
    },
    { source: 'mathematics', locator: 'integration with wind and slope', access: 'derived' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof groundRoll>;
