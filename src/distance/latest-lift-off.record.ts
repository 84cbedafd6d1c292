import type { FormulaRecord } from '../sources/index.ts';
import { latestLiftOff, latestLiftOffDomain } from './latest-lift-off.ts';

export const latestLiftOffRecord = {
  id: 'distance.latest-lift-off',
  title: 'Latest point of lift-off',
  equation: 'x = D - A',
  formula: latestLiftOff,
  domain: latestLiftOffDomain,
  inputs: {
    distanceAvailable: { symbol: 'D', meaning: 'take-off distance available' },
    airborneDistance: { symbol: 'A', meaning: 'airborne distance, lift-off to 50 ft' },
  },
  outputs: { result: { symbol: 'x', unit: 'm', meaning: 'distance of the point from the start of the roll' } },
  citations: [{ source: 'mathematics', locator: 'difference of two distances', access: 'derived' }],
  homogeneous: true,
  checkValues: { nonePublished: 'a difference; no source prints one' },
} satisfies FormulaRecord<typeof latestLiftOff>;
