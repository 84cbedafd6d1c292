import type { FormulaRecord } from '../sources/index.ts';
import { groundSpeed, groundSpeedDomain } from './ground-speed.ts';

export const groundSpeedRecord = {
  id: 'wind.ground-speed',
  title: 'Ground speed along a runway',
  equation: 'V_G = V - H',
  formula: groundSpeed,
  domain: groundSpeedDomain,
  inputs: {
    trueAirspeed: { symbol: 'V', meaning: 'true airspeed' },
    headwind: { symbol: 'H', meaning: 'wind along the runway, headwind positive' },
  },
  outputs: {
    result: { symbol: 'V_G', unit: 'ktGS', meaning: 'ground speed' },
  },
  citations: [{ source: 'mathematics', locator: 'addition of parallel velocities', access: 'derived' }],
  homogeneous: true,
  checkValues: {
    nonePublished: 'a difference of two speeds; no source prints an example that would test more than the subtraction',
  },
} satisfies FormulaRecord<typeof groundSpeed>;
