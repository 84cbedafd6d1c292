import type { FormulaRecord } from '../sources/index.ts';
import { rotationDistance, rotationDistanceDomain } from './rotation-distance.ts';

export const rotationDistanceRecord = {
  id: 'dynamics.rotation-distance',
  title: 'Distance rolled during the rotation or before the brakes are on',
  equation: 's = NV',
  formula: rotationDistance,
  domain: rotationDistanceDomain,
  inputs: {
    speed: { symbol: 'V', meaning: 'speed held meanwhile' },
    time: { symbol: 'N', meaning: 'time' },
  },
  outputs: {
    result: { symbol: 's', unit: 'm', meaning: 'distance' },
  },
  citations: [
    { source: 'anderson-aircraft-performance', locator: 'equations 6.90 and 6.119, last term', access: 'read' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof rotationDistance>;
