import type { FormulaRecord } from '../sources/index.ts';
import { speedFactor, speedFactorDomain } from './speed-factor.ts';

export const speedFactorRecord = {
  id: 'distance.speed-factor',
  title: 'Factor of a speed other than that of the table',
  equation: 'k = \\left(\\frac{V}{V_t}\\right)^2',
  formula: speedFactor,
  domain: speedFactorDomain,
  inputs: {
    speed: { symbol: 'V', meaning: 'speed flown' },
    tableSpeed: { symbol: 'V_t', meaning: 'speed of the table' },
  },
  outputs: { result: { symbol: 'k', unit: 'ratio', meaning: 'correction factor' } },
  citations: [
    { source: 'mathematics', locator: 'kinetic energy', access: 'derived' },
    { source: 'faa-phak', locator: 'ch. 11, landing distance goes with the square of the speed', access: 'read' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof speedFactor>;
