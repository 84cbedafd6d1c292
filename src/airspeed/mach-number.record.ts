import type { FormulaRecord } from '../sources/index.ts';
import {
  machNumberFromCalibrated,
  machNumberFromCalibratedDomain,
  machNumberFromEquivalent,
  machNumberFromEquivalentDomain,
  machNumberFromTrue,
  machNumberFromTrueDomain,
} from './mach-number.ts';

export const machNumberFromCalibratedRecord = {
  id: 'airspeed.mach-number-from-calibrated',
  title: 'Mach number from calibrated airspeed',
  equation:
    '\\frac{q_c}{P_0} = \\left(1 + 0.2\\left(\\frac{V_C}{a_0}\\right)^2\\right)^{3.5} - 1, \\qquad M = \\sqrt{5\\left(\\left(\\frac{q_c}{p} + 1\\right)^{2/7} - 1\\right)}',
  formula: machNumberFromCalibrated,
  domain: machNumberFromCalibratedDomain,
  inputs: {
    calibratedAirspeed: { symbol: 'V_C', meaning: 'calibrated airspeed' },
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
  },
  outputs: { result: { symbol: 'M', unit: 'ratio', meaning: 'Mach number' } },
  citations: [
    { source: 'nasa-rp-1046', locator: 'impact pressure and Mach number, subsonic', access: 'second-hand' },
    { source: 'iso-2533', locator: '2.3, formula (12)', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof machNumberFromCalibrated>;

export const machNumberFromEquivalentRecord = {
  id: 'airspeed.mach-number-from-equivalent',
  title: 'Mach number from equivalent airspeed',
  equation: 'M = \\frac{V_E}{a_0\\sqrt{\\delta}}, \\qquad \\delta = \\frac{p}{P_0}',
  formula: machNumberFromEquivalent,
  domain: machNumberFromEquivalentDomain,
  inputs: {
    equivalentAirspeed: { symbol: 'V_E', meaning: 'equivalent airspeed' },
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
  },
  outputs: { result: { symbol: 'M', unit: 'ratio', meaning: 'Mach number' } },
  citations: [
    { source: 'mathematics', locator: 'equal dynamic pressure at sea level and at altitude', access: 'derived' },
    { source: 'iso-2533', locator: '2.3, formula (12)', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof machNumberFromEquivalent>;

export const machNumberFromTrueRecord = {
  id: 'airspeed.mach-number-from-true',
  title: 'Mach number from true airspeed',
  equation: 'M = \\frac{V}{a}',
  formula: machNumberFromTrue,
  domain: machNumberFromTrueDomain,
  inputs: {
    trueAirspeed: { symbol: 'V', meaning: 'true airspeed' },
    temperature: { symbol: 'T', meaning: 'outside air temperature' },
  },
  outputs: { result: { symbol: 'M', unit: 'ratio', meaning: 'Mach number' } },
  citations: [
    { source: 'mathematics', locator: 'definition of the Mach number', access: 'derived' },
    { source: 'iso-2533', locator: '2.3, formula (21)', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof machNumberFromTrue>;
