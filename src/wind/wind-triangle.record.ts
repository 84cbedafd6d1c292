import type { FormulaRecord } from '../sources/index.ts';
import { windTriangle, windTriangleDomain } from './wind-triangle.ts';

export const windTriangleRecord = {
  id: 'wind.triangle',
  title: 'Wind triangle: heading, drift and ground speed on a track',
  equation:
    '\\alpha = \\arcsin\\frac{W\\sin(\\varphi - \\theta)}{V}, \\qquad \\psi = \\theta + \\alpha, \\qquad V_G = V\\cos\\alpha - W\\cos(\\varphi - \\theta)',
  formula: windTriangle,
  domain: windTriangleDomain,
  inputs: {
    from: { symbol: '\\varphi', meaning: 'direction the wind blows from' },
    speed: { symbol: 'W', meaning: 'wind speed' },
    track: { symbol: '\\theta', meaning: 'track, against the same north' },
    trueAirspeed: { symbol: 'V', meaning: 'true airspeed' },
  },
  outputs: {
    windCorrectionAngle: { symbol: '\\alpha', unit: 'deg', meaning: 'wind correction angle, to the right positive' },
    drift: { symbol: '-\\alpha', unit: 'deg', meaning: 'drift, to the right positive' },
    heading: { symbol: '\\psi', unit: 'degTrue', meaning: 'heading, against the north of wind and track' },
    groundSpeed: { symbol: 'V_G', unit: 'ktGS', meaning: 'ground speed' },
  },
  citations: [
    { source: 'mathematics', locator: 'addition of velocities', access: 'derived' },
    { source: 'faa-phak', locator: 'ch. 16, wind triangle', access: 'recalled' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof windTriangle>;
