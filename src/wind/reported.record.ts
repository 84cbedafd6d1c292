import type { FormulaRecord } from '../sources/index.ts';
import { reportedWindComponents, reportedWindDomain } from './reported.ts';

export const reportedWindRecord = {
  id: 'wind.reported',
  title: 'Components of a reported wind with gusts and a range of directions',
  equation:
    'H = W\\cos(\\varphi - \\theta), \\quad X = W\\sin(\\varphi - \\theta), \\quad H_{\\min} = \\min_{\\psi} W\\cos(\\psi - \\theta), \\quad X_{R,L} = \\max\\left(0, \\max_{\\psi} \\pm G\\sin(\\psi - \\theta)\\right)',
  formula: reportedWindComponents,
  domain: reportedWindDomain,
  inputs: {
    from: { symbol: '\\varphi', meaning: 'direction the wind blows from, or variable' },
    speed: { symbol: 'W', meaning: 'mean wind speed' },
    gust: { symbol: 'G', meaning: 'speed of the gusts' },
    range: { symbol: '\\psi', meaning: 'directions between which the wind varies, clockwise' },
    direction: { symbol: '\\theta', meaning: 'direction of the runway, against the same north' },
  },
  outputs: {
    headwind: { symbol: 'H', unit: 'kt', meaning: 'mean wind along the runway, headwind positive' },
    crosswind: { symbol: 'X', unit: 'kt', meaning: 'mean wind across the runway, from the right positive' },
    headwindAtGust: { symbol: 'H_G', unit: 'kt', meaning: 'gust along the runway, headwind positive' },
    crosswindAtGust: { symbol: 'X_G', unit: 'kt', meaning: 'gust across the runway, from the right positive' },
    leastHeadwind: { symbol: 'H_{\\min}', unit: 'kt', meaning: 'least headwind of the mean over the range' },
    leastHeadwindAtGust: { symbol: 'H_{G,\\min}', unit: 'kt', meaning: 'least headwind of the gust over the range' },
    crosswindFromLeft: { symbol: 'X_L', unit: 'kt', meaning: 'greatest gust across from the left over the range' },
    crosswindFromRight: { symbol: 'X_R', unit: 'kt', meaning: 'greatest gust across from the right over the range' },
  },
  citations: [
    {
      source: 'mathematics',
      locator: 'resolution of a vector; extremes of sine and cosine on an arc',
      access: 'derived',
    },
    { source: 'icao-annex-3', locator: 'Attachment C, wind: gusts and variations in direction', access: 'read' },
    {
      source: 'groundroll',
      locator: 'a wind without a direction counts in full as tailwind and crosswind',
      access: 'policy',
    },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof reportedWindComponents>;
