import type { FormulaRecord } from '../sources/index.ts';
import { windComponentSpread, windComponentSpreadDomain } from './direction-spread.ts';

export const windComponentSpreadRecord = {
  id: 'wind.component-spread',
  title: 'Wind components over a direction known to so many degrees',
  equation:
    'H_{\\min,\\max} = \\min, \\max_{|\\psi - \\varphi| \\le \\delta} W\\cos(\\psi - \\theta), \\qquad X_{\\min,\\max} = \\min, \\max_{|\\psi - \\varphi| \\le \\delta} W\\sin(\\psi - \\theta)',
  formula: windComponentSpread,
  domain: windComponentSpreadDomain,
  inputs: {
    from: { symbol: '\\varphi', meaning: 'stated direction the wind blows from' },
    halfWidth: { symbol: '\\delta', meaning: 'how far the direction may lie to either side' },
    speed: { symbol: 'W', meaning: 'wind speed' },
    direction: { symbol: '\\theta', meaning: 'direction of the runway, against the same north' },
  },
  outputs: {
    leastHeadwind: { symbol: 'H_{\\min}', unit: 'kt', meaning: 'least headwind, negative a tailwind' },
    greatestHeadwind: { symbol: 'H_{\\max}', unit: 'kt', meaning: 'greatest headwind' },
    leastCrosswind: { symbol: 'X_{\\min}', unit: 'kt', meaning: 'end of the crosswind towards the left' },
    greatestCrosswind: { symbol: 'X_{\\max}', unit: 'kt', meaning: 'end of the crosswind towards the right' },
  },
  citations: [
    {
      source: 'mathematics',
      locator: 'resolution of a vector; extremes of sine and cosine on an arc',
      access: 'derived',
    },
    { source: 'icao-annex-3', locator: 'Attachment C, wind: direction to ten degrees', access: 'read' },
  ],
  homogeneous: true,
  checkValues: {
    nonePublished:
      'sources print components of one direction only; the tests compare with those of every direction of the interval',
  },
} satisfies FormulaRecord<typeof windComponentSpread>;
