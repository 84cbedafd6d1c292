import type { FormulaRecord } from '../sources/index.ts';
import { rollFromForceTerms, rollFromForceTermsDomain } from './roll-from-force-terms.ts';

export const rollFromForceTermsRecord = {
  id: 'dynamics.roll-from-force-terms',
  title: 'Roll from a constant force and one that grows with the square of the speed',
  equation: 's = \\frac{1}{2gK_A}\\ln\\left(1 + \\frac{K_A}{K_T}V^2\\right)',
  formula: rollFromForceTerms,
  domain: rollFromForceTermsDomain,
  inputs: {
    constantTerm: { symbol: 'K_T', meaning: 'net force at standstill over weight' },
    speedTerm: { symbol: 'K_A', meaning: 'its change for each square of the speed' },
    speed: { symbol: 'V', meaning: 'speed gained or lost' },
    gravity: { symbol: 'g', meaning: 'acceleration of free fall' },
  },
  outputs: {
    result: { symbol: 's', unit: 'm', meaning: 'distance' },
  },
  citations: [{ source: 'anderson-aircraft-performance', locator: 'equations 6.90 and 6.119', access: 'read' }],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof rollFromForceTerms>;
