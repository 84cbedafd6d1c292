import type { FormulaRecord } from '../sources/index.ts';
import { headwindAtHeight, headwindAtHeightDomain } from './headwind-at-height.ts';

export const headwindAtHeightRecord = {
  id: 'wind.headwind-at-height',
  title: 'Approximate headwind below the sensor',
  equation: 'H = H_s\\left(\\frac{h}{h_s}\\right)^p',
  formula: headwindAtHeight,
  domain: headwindAtHeightDomain,
  inputs: {
    headwind: { symbol: 'H_s', meaning: 'headwind at the height of the sensor' },
    sensorHeight: { symbol: 'h_s', meaning: 'height of the sensor above the ground' },
    height: { symbol: 'h', meaning: 'height above the ground' },
    exponent: { symbol: 'p', meaning: 'exponent of the power law' },
  },
  outputs: { result: { symbol: 'H', unit: 'kt', meaning: 'headwind at the height' } },
  citations: [
    { source: 'flight-test-wind-note', locator: 'wind at the height of the wing, 1/7 power law', access: 'read' },
    { source: 'groundroll', locator: 'applied to a headwind only, and downwards only', access: 'policy' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof headwindAtHeight>;
