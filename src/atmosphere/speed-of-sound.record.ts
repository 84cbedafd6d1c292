import type { FormulaRecord } from '../sources/index.ts';
import { speedOfSound, speedOfSoundDomain } from './speed-of-sound.ts';

export const speedOfSoundRecord = {
  id: 'atmosphere.speed-of-sound',
  title: 'Speed of sound',
  equation: 'a = \\sqrt{\\kappa R T}',
  formula: speedOfSound,
  domain: speedOfSoundDomain,
  inputs: {
    temperature: { symbol: 'T', meaning: 'air temperature' },
  },
  outputs: { result: { symbol: 'a', unit: 'kt', meaning: 'speed of sound' } },
  citations: [
    { source: 'iso-2533', locator: '2.3, formula (21)', access: 'read' },
    { source: 'icao-7488', locator: 'constants of the standard atmosphere', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof speedOfSound>;
