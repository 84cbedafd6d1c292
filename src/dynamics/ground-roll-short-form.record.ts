import type { FormulaRecord } from '../sources/index.ts';
import { groundRollShortForm, groundRollShortFormDomain } from './ground-roll-short-form.ts';

export const groundRollShortFormRecord = {
  id: 'dynamics.ground-roll-short-form',
  title: 'Ground roll from the forces at 0.7 of the lift-off speed',
  equation:
    's = \\frac{m\\,V_{LOF}^2}{2\\left\\{T - \\left[D + \\mu(W - L)\\right]\\right\\}_{0.7\\,V_{LOF}}}, \\qquad W = mg',
  formula: groundRollShortForm,
  domain: groundRollShortFormDomain,
  inputs: {
    mass: { symbol: 'm', meaning: 'mass of the aeroplane' },
    liftOffSpeed: { symbol: 'V_{LOF}', meaning: 'lift-off speed' },
    thrust: { symbol: 'T', meaning: 'thrust at 0.7 of the lift-off speed' },
    drag: { symbol: 'D', meaning: 'drag at 0.7 of the lift-off speed' },
    lift: { symbol: 'L', meaning: 'lift at 0.7 of the lift-off speed' },
    rollingFriction: { symbol: '\\mu', meaning: 'rolling friction' },
    gravity: { symbol: 'g', meaning: 'acceleration of free fall' },
  },
  outputs: {
    result: { symbol: 's', unit: 'm', meaning: 'ground roll' },
  },
  citations: [
    { source: 'anderson-introduction', locator: 'ch. 6, take-off performance', access: 'read' },
    { source: 'takeoff-tutorial', locator: 'take-off run', access: 'read' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof groundRollShortForm>;
