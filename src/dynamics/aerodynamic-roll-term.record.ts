import type { FormulaRecord } from '../sources/index.ts';
import { aerodynamicRollTerm, aerodynamicRollTermDomain } from './aerodynamic-roll-term.ts';

export const aerodynamicRollTermRecord = {
  id: 'dynamics.aerodynamic-roll-term',
  title: 'What the air does to the acceleration of a roll',
  equation: 'K_A = -\\frac{\\rho}{2\\,(W/S)}\\left(C_D - \\mu C_L\\right)',
  formula: aerodynamicRollTerm,
  domain: aerodynamicRollTermDomain,
  inputs: {
    density: { symbol: '\\rho', meaning: 'density of the air' },
    wingLoading: { symbol: 'W/S', meaning: 'wing loading' },
    dragCoefficient: { symbol: 'C_D', meaning: 'drag coefficient' },
    liftCoefficient: { symbol: 'C_L', meaning: 'lift coefficient' },
    friction: { symbol: '\\mu', meaning: 'friction, rolling or braked' },
  },
  outputs: {
    result: { symbol: 'K_A', unit: 's2PerM2', meaning: 'aerodynamic term' },
  },
  citations: [
    {
      source: 'anderson-aircraft-performance',
      locator: 'ch. 6, the term K_A of the ground roll, and ex. 6.6',
      access: 'read',
    },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof aerodynamicRollTerm>;
