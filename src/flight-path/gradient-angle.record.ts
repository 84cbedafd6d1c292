import type { FormulaRecord } from '../sources/index.ts';
import { gradientAngle, gradientAngleDomain, gradientFromAngle, gradientFromAngleDomain } from './gradient-angle.ts';

export const gradientAngleRecord = {
  id: 'flight-path.gradient-angle',
  title: 'Angle of a gradient',
  equation: '\\theta = \\arctan\\gamma',
  formula: gradientAngle,
  domain: gradientAngleDomain,
  inputs: { gradient: { symbol: '\\gamma', meaning: 'gradient' } },
  outputs: { result: { symbol: '\\theta', unit: 'deg', meaning: 'angle to the horizontal' } },
  citations: [{ source: 'mathematics', locator: 'tangent of an angle', access: 'derived' }],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof gradientAngle>;

export const gradientFromAngleRecord = {
  id: 'flight-path.gradient-from-angle',
  title: 'Gradient of a path at an angle',
  equation: '\\gamma = \\tan\\theta',
  formula: gradientFromAngle,
  domain: gradientFromAngleDomain,
  inputs: { angle: { symbol: '\\theta', meaning: 'angle to the horizontal' } },
  outputs: { result: { symbol: '\\gamma', unit: 'ratio', meaning: 'gradient' } },
  citations: [
    { source: 'mathematics', locator: 'tangent of an angle', access: 'derived' },
    { source: 'faa-iph', locator: 'ch. 3, a path of 3 degrees in ft/NM', access: 'read' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof gradientFromAngle>;
