import type { FormulaRecord } from '../sources/index.ts';
import { groundRollDomain } from './ground-roll.ts';
import { groundRollByIntegration } from './ground-roll-by-integration.ts';

export const groundRollByIntegrationRecord = {
  id: 'dynamics.ground-roll-by-integration',
  title: 'Ground roll from the forces, summed step by step',
  equation:
    'm\\frac{dV}{dt} = T_0 + aV^2 - \\tfrac12\\rho S C_D V|V| - \\mu\\left(mg\\cos\\theta - \\tfrac12\\rho S C_L V^2\\right) - mg\\sin\\theta, \\qquad t = \\int_{V_w}^{V_{LOF}}\\frac{dV}{dV/dt}, \\quad s = \\int_{V_w}^{V_{LOF}}\\frac{V - V_w}{dV/dt}\\,dV',
  formula: groundRollByIntegration,
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
    { source: 'mathematics', locator: 'Simpson rule', access: 'derived' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof groundRollByIntegration>;
