import type { FormulaRecord } from '../sources/index.ts';
import { powerLapse, powerLapseDomain } from './power-lapse.ts';

export const powerLapseRecord = {
  id: 'dynamics.power-lapse',
  title: 'Power of an unsupercharged engine in thinner air',
  equation: '\\varphi = \\sigma - \\frac{1 - \\sigma}{7.55}',
  formula: powerLapse,
  domain: powerLapseDomain,
  inputs: {
    densityRatio: { symbol: '\\sigma', meaning: 'density ratio' },
  },
  outputs: {
    result: { symbol: '\\varphi', unit: 'ratio', meaning: 'share of the power at sea level' },
  },
  citations: [{ source: 'gagg-farrar-1934', locator: 'power at altitude', access: 'recalled' }],
  homogeneous: true,
  checkValues: { nonePublished: 'the formula is recalled; neither its source nor an example of it was seen' },
} satisfies FormulaRecord<typeof powerLapse>;
