import type { FormulaRecord } from '../sources/index.ts';
import { largestWind, largestWindDomain } from './largest-wind.ts';

export const largestWindRecord = {
  id: 'wind.largest-wind',
  title: 'Largest wind within limits at an angle off the runway',
  equation:
    'W = \\min\\left(\\frac{X_{\\max}}{\\sin a},\\ \\frac{T_{\\max}}{\\max(0, -b\\cos a)},\\ \\frac{H_{\\max}}{\\max(0, \\cos a)}\\right)',
  formula: largestWind,
  domain: largestWindDomain,
  inputs: {
    angle: { symbol: 'a', meaning: 'angle between runway direction and the direction the wind blows from' },
    crosswindLimit: { symbol: 'X_{\\max}', meaning: 'most crosswind' },
    tailwindLimit: { symbol: 'T_{\\max}', meaning: 'most tailwind' },
    headwindLimit: { symbol: 'H_{\\max}', meaning: 'most headwind, where there is such a limit' },
    tailwindShare: { symbol: 'b', meaning: 'share of a tailwind that is reckoned with' },
    upTo: { symbol: 'W_{\\max}', meaning: 'strongest wind considered' },
  },
  outputs: {
    limitedBy: { symbol: '\\text{limit}', unit: 'text', meaning: 'the limit reached' },
    speed: { symbol: 'W', unit: 'kt', meaning: 'largest wind' },
  },
  citations: [
    { source: 'mathematics', locator: 'resolution of a vector', access: 'derived' },
    { source: 'faa-phak', locator: 'ch. 11, crosswind component chart', access: 'read' },
    { source: 'eu-965-2012', locator: 'CAT.POL.A.305(c)(6): 150 % of tailwind', access: 'read' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof largestWind>;
