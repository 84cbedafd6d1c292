import type { FormulaRecord } from '../sources/index.ts';
import { loadFactorInTurn, loadFactorInTurnDomain } from './load-factor.ts';

export const loadFactorInTurnRecord = {
  id: 'airspeed.load-factor-in-turn',
  title: 'Load factor in a level turn',
  equation: 'n = \\frac{1}{\\cos\\varphi}',
  formula: loadFactorInTurn,
  domain: loadFactorInTurnDomain,
  inputs: {
    bank: { symbol: '\\varphi', meaning: 'angle of bank' },
  },
  outputs: { result: { symbol: 'n', unit: 'ratio', meaning: 'load factor' } },
  citations: [
    { source: 'faa-afh', locator: 'ch. 10, steep turns', access: 'read' },
    { source: 'mathematics', locator: 'equilibrium in a level, coordinated turn', access: 'derived' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof loadFactorInTurn>;
