import type { FormulaRecord } from '../sources/index.ts';
import { flightPathRadius, flightPathRadiusDomain } from './flight-path-radius.ts';

export const flightPathRadiusRecord = {
  id: 'dynamics.flight-path-radius',
  title: 'Radius of the arc after lift-off or in the flare',
  equation: 'R = \\frac{V^2}{g(n - 1)}',
  formula: flightPathRadius,
  domain: flightPathRadiusDomain,
  inputs: {
    speed: { symbol: 'V', meaning: 'mean speed along the arc' },
    loadFactor: { symbol: 'n', meaning: 'load factor' },
    gravity: { symbol: 'g', meaning: 'acceleration of free fall' },
  },
  outputs: {
    result: { symbol: 'R', unit: 'm', meaning: 'radius' },
  },
  citations: [
    { source: 'anderson-aircraft-performance', locator: 'equation 6.98, and ex. 6.6 and 6.7', access: 'read' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof flightPathRadius>;
