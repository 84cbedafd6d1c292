import type { FormulaRecord } from '../sources/index.ts';
import { distanceForExcessHeight, distanceForExcessHeightDomain } from './excess-height.ts';

export const distanceForExcessHeightRecord = {
  id: 'distance.excess-height',
  title: 'Landing distance for excess height over the threshold',
  equation: 'x = \\frac{\\Delta h}{\\tan\\gamma}',
  formula: distanceForExcessHeight,
  domain: distanceForExcessHeightDomain,
  inputs: {
    excessHeight: { symbol: '\\Delta h', meaning: 'height above that of the table at the threshold' },
    pathAngle: { symbol: '\\gamma', meaning: 'angle of the approach path over the ground' },
  },
  outputs: { result: { symbol: 'x', unit: 'm', meaning: 'distance flown over before the height of the table' } },
  citations: [{ source: 'mathematics', locator: 'right-angled triangle', access: 'derived' }],
  homogeneous: true,
  checkValues: {
    nonePublished: 'the published increment for light aeroplanes could not be read; those recalled are of jet size',
  },
} satisfies FormulaRecord<typeof distanceForExcessHeight>;
