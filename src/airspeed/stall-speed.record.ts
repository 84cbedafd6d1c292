import type { FormulaRecord } from '../sources/index.ts';
import { stallSpeed, stallSpeedDomain, stallSpeedMultiple, stallSpeedMultipleDomain } from './stall-speed.ts';

export const stallSpeedRecord = {
  id: 'airspeed.stall-speed',
  title: 'Stall speed at another mass and in a level turn',
  equation: 'V_S = V_{S,\\mathrm{ref}}\\sqrt{\\frac{m}{m_\\mathrm{ref}}}\\sqrt{\\frac{1}{\\cos\\varphi}}',
  formula: stallSpeed,
  domain: stallSpeedDomain,
  inputs: {
    referenceStallSpeed: { symbol: 'V_{S,\\mathrm{ref}}', meaning: 'stall speed at the reference mass, wings level' },
    referenceMass: { symbol: 'm_\\mathrm{ref}', meaning: 'mass for which that speed is given' },
    mass: { symbol: 'm', meaning: 'mass' },
    bank: { symbol: '\\varphi', meaning: 'angle of bank' },
  },
  outputs: { result: { symbol: 'V_S', unit: 'kcas', meaning: 'stall speed' } },
  citations: [
    { source: 'faa-phak', locator: 'ch. 5, load factors and stall speed', access: 'read' },
    { source: 'faa-glider', locator: 'ch. 5, mass and stall speed', access: 'read' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof stallSpeed>;

export const stallSpeedMultipleRecord = {
  id: 'airspeed.stall-speed-multiple',
  title: 'Multiple of a stall speed',
  equation: 'V = k V_S',
  formula: stallSpeedMultiple,
  domain: stallSpeedMultipleDomain,
  inputs: {
    stallSpeed: { symbol: 'V_S', meaning: 'stall speed' },
    multiple: { symbol: 'k', meaning: 'multiple' },
  },
  outputs: { result: { symbol: 'V', unit: 'kcas', meaning: 'speed' } },
  citations: [
    { source: 'faa-afh', locator: 'ch. 9, approach speed of 1.3 V_S0', access: 'read' },
    { source: 'faa-phak', locator: 'ch. 11, crosswind of 0.2 V_S0', access: 'read' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof stallSpeedMultiple>;
