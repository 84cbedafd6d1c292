import type { FormulaRecord } from '../sources/index.ts';
import {
  rateOfDescent,
  rateOfDescentAlongPath,
  rateOfDescentAlongPathDomain,
  rateOfDescentDomain,
} from './rate-of-descent.ts';

export const rateOfDescentRecord = {
  id: 'flight-path.rate-of-descent',
  title: 'Rate of descent on a path over the ground',
  equation: 'ROD = GS\\,\\tan\\gamma',
  formula: rateOfDescent,
  domain: rateOfDescentDomain,
  inputs: {
    groundSpeed: { symbol: 'GS', meaning: 'ground speed' },
    pathAngle: { symbol: '\\gamma', meaning: 'path angle over the ground' },
  },
  outputs: { result: { symbol: 'ROD', unit: 'ftPerMin', meaning: 'rate of descent, downwards positive' } },
  citations: [{ source: 'mathematics', locator: 'height lost and ground covered in the same time', access: 'derived' }],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof rateOfDescent>;

export const rateOfDescentAlongPathRecord = {
  id: 'flight-path.rate-of-descent-along-path',
  title: 'Rate of descent of a speed along a path',
  equation: 'ROD = V\\sin\\gamma',
  formula: rateOfDescentAlongPath,
  domain: rateOfDescentAlongPathDomain,
  inputs: {
    speedAlongPath: { symbol: 'V', meaning: 'speed along the path' },
    pathAngle: { symbol: '\\gamma', meaning: 'path angle' },
  },
  outputs: { result: { symbol: 'ROD', unit: 'ftPerMin', meaning: 'rate of descent, downwards positive' } },
  citations: [
    { source: 'mathematics', locator: 'vertical component of a speed', access: 'derived' },
    { source: 'faa-descent-table', locator: '2° to 12°, 30 kt to 180 kt', access: 'read' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof rateOfDescentAlongPath>;
