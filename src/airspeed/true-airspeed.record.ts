import type { FormulaRecord } from '../sources/index.ts';
import {
  trueAirspeed,
  trueAirspeedDomain,
  trueAirspeedFromEquivalent,
  trueAirspeedFromEquivalentDomain,
  trueAirspeedFromMach,
  trueAirspeedFromMachDomain,
} from './true-airspeed.ts';

export const trueAirspeedRecord = {
  id: 'airspeed.true-airspeed',
  title: 'True airspeed from calibrated airspeed',
  equation:
    '\\frac{q_c}{P_0} = \\left(1 + 0.2\\left(\\frac{V_C}{a_0}\\right)^2\\right)^{3.5} - 1, \\qquad M = \\sqrt{5\\left(\\left(\\frac{q_c}{p} + 1\\right)^{2/7} - 1\\right)}, \\qquad V = M a',
  formula: trueAirspeed,
  domain: trueAirspeedDomain,
  inputs: {
    calibratedAirspeed: { symbol: 'V_C', meaning: 'calibrated airspeed' },
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
    temperature: { symbol: 'T', meaning: 'outside air temperature' },
  },
  outputs: { result: { symbol: 'V', unit: 'ktas', meaning: 'true airspeed' } },
  citations: [
    { source: 'nasa-rp-1046', locator: 'impact pressure and Mach number, subsonic', access: 'second-hand' },
    { source: 'iso-2533', locator: '2.3, formulas (12) and (21)', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof trueAirspeed>;

export const trueAirspeedFromEquivalentRecord = {
  id: 'airspeed.true-airspeed-from-equivalent',
  title: 'True airspeed from equivalent airspeed',
  equation: 'V = \\frac{V_E}{\\sqrt{\\sigma}}, \\qquad \\sigma = \\frac{p}{P_0}\\frac{T_0}{T}',
  formula: trueAirspeedFromEquivalent,
  domain: trueAirspeedFromEquivalentDomain,
  inputs: {
    equivalentAirspeed: { symbol: 'V_E', meaning: 'equivalent airspeed' },
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
    temperature: { symbol: 'T', meaning: 'outside air temperature' },
  },
  outputs: { result: { symbol: 'V', unit: 'ktas', meaning: 'true airspeed' } },
  citations: [
    { source: 'mathematics', locator: 'equal dynamic pressure at sea level and at altitude', access: 'derived' },
    { source: 'iso-2533', locator: '2.3, formulas (12) and (14)', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof trueAirspeedFromEquivalent>;

export const trueAirspeedFromMachRecord = {
  id: 'airspeed.true-airspeed-from-mach',
  title: 'True airspeed from Mach number',
  equation: 'V = M a',
  formula: trueAirspeedFromMach,
  domain: trueAirspeedFromMachDomain,
  inputs: {
    machNumber: { symbol: 'M', meaning: 'Mach number' },
    temperature: { symbol: 'T', meaning: 'outside air temperature' },
  },
  outputs: { result: { symbol: 'V', unit: 'ktas', meaning: 'true airspeed' } },
  citations: [
    { source: 'mathematics', locator: 'definition of the Mach number', access: 'derived' },
    { source: 'iso-2533', locator: '2.3, formula (21)', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof trueAirspeedFromMach>;
