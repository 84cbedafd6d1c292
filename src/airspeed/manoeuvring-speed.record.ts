import type { FormulaRecord } from '../sources/index.ts';
import { manoeuvringSpeed, manoeuvringSpeedDomain } from './manoeuvring-speed.ts';

export const manoeuvringSpeedRecord = {
  id: 'airspeed.manoeuvring-speed',
  title: 'Manoeuvring speed at another mass',
  equation: 'V_A = V_{A,\\mathrm{ref}}\\sqrt{\\frac{m}{m_\\mathrm{ref}}}',
  formula: manoeuvringSpeed,
  domain: manoeuvringSpeedDomain,
  inputs: {
    referenceManoeuvringSpeed: { symbol: 'V_{A,\\mathrm{ref}}', meaning: 'manoeuvring speed at the reference mass' },
    referenceMass: { symbol: 'm_\\mathrm{ref}', meaning: 'mass for which that speed is given' },
    mass: { symbol: 'm', meaning: 'mass' },
  },
  outputs: { result: { symbol: 'V_A', unit: 'kcas', meaning: 'manoeuvring speed' } },
  citations: [{ source: 'faa-phak', locator: 'ch. 8, manoeuvring speed and weight', access: 'read' }],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof manoeuvringSpeed>;
