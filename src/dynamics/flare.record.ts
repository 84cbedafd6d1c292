import type { FormulaRecord } from '../sources/index.ts';
import { flareDistance, flareDomain, flareHeight } from './flare.ts';

export const flareHeightRecord = {
  id: 'dynamics.flare-height',
  title: 'Height at which the flare begins',
  equation: 'h_f = R(1 - \\cos\\theta)',
  formula: flareHeight,
  domain: flareDomain,
  inputs: {
    radius: { symbol: 'R', meaning: 'radius of the flare' },
    pathAngle: { symbol: '\\theta', meaning: 'angle of the approach path' },
  },
  outputs: {
    result: { symbol: 'h_f', unit: 'mHeight', meaning: 'height of the flare' },
  },
  citations: [{ source: 'anderson-aircraft-performance', locator: 'ch. 6, flare, and ex. 6.7', access: 'read' }],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof flareHeight>;

export const flareDistanceRecord = {
  id: 'dynamics.flare-distance',
  title: 'Distance of the flare',
  equation: 's_f = R\\sin\\theta',
  formula: flareDistance,
  domain: flareDomain,
  inputs: {
    radius: { symbol: 'R', meaning: 'radius of the flare' },
    pathAngle: { symbol: '\\theta', meaning: 'angle of the approach path' },
  },
  outputs: {
    result: { symbol: 's_f', unit: 'm', meaning: 'distance of the flare' },
  },
  citations: [{ source: 'anderson-aircraft-performance', locator: 'ch. 6, flare, and ex. 6.7', access: 'read' }],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof flareDistance>;
