import type { FormulaRecord } from '../sources/index.ts';
import {
  calibratedAirspeedFromEquivalent,
  calibratedAirspeedFromEquivalentDomain,
  calibratedAirspeedFromMach,
  calibratedAirspeedFromMachDomain,
  calibratedAirspeedFromTrue,
  calibratedAirspeedFromTrueDomain,
} from './calibrated-airspeed.ts';

export const calibratedAirspeedFromMachRecord = {
  id: 'airspeed.calibrated-airspeed-from-mach',
  title: 'Calibrated airspeed from Mach number',
  equation:
    '\\frac{q_c}{p} = \\left(1 + 0.2 M^2\\right)^{3.5} - 1, \\qquad V_C = a_0\\sqrt{5\\left(\\left(\\frac{q_c}{P_0} + 1\\right)^{2/7} - 1\\right)}',
  formula: calibratedAirspeedFromMach,
  domain: calibratedAirspeedFromMachDomain,
  inputs: {
    machNumber: { symbol: 'M', meaning: 'Mach number' },
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
  },
  outputs: { result: { symbol: 'V_C', unit: 'kcas', meaning: 'calibrated airspeed' } },
  citations: [
    { source: 'nasa-rp-1046', locator: 'impact pressure and Mach number, subsonic', access: 'second-hand' },
    { source: 'iso-2533', locator: '2.3, formula (12)', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof calibratedAirspeedFromMach>;

export const calibratedAirspeedFromEquivalentRecord = {
  id: 'airspeed.calibrated-airspeed-from-equivalent',
  title: 'Calibrated airspeed from equivalent airspeed',
  equation:
    'M = \\frac{V_E}{a_0\\sqrt{\\delta}}, \\qquad \\frac{q_c}{p} = \\left(1 + 0.2 M^2\\right)^{3.5} - 1, \\qquad V_C = a_0\\sqrt{5\\left(\\left(\\frac{q_c}{P_0} + 1\\right)^{2/7} - 1\\right)}',
  formula: calibratedAirspeedFromEquivalent,
  domain: calibratedAirspeedFromEquivalentDomain,
  inputs: {
    equivalentAirspeed: { symbol: 'V_E', meaning: 'equivalent airspeed' },
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
  },
  outputs: { result: { symbol: 'V_C', unit: 'kcas', meaning: 'calibrated airspeed' } },
  citations: [
    { source: 'nasa-rp-1046', locator: 'impact pressure and Mach number, subsonic', access: 'second-hand' },
    { source: 'iso-2533', locator: '2.3, formula (12)', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof calibratedAirspeedFromEquivalent>;

export const calibratedAirspeedFromTrueRecord = {
  id: 'airspeed.calibrated-airspeed-from-true',
  title: 'Calibrated airspeed from true airspeed',
  equation:
    'M = \\frac{V}{a}, \\qquad \\frac{q_c}{p} = \\left(1 + 0.2 M^2\\right)^{3.5} - 1, \\qquad V_C = a_0\\sqrt{5\\left(\\left(\\frac{q_c}{P_0} + 1\\right)^{2/7} - 1\\right)}',
  formula: calibratedAirspeedFromTrue,
  domain: calibratedAirspeedFromTrueDomain,
  inputs: {
    trueAirspeed: { symbol: 'V', meaning: 'true airspeed' },
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
    temperature: { symbol: 'T', meaning: 'outside air temperature' },
  },
  outputs: { result: { symbol: 'V_C', unit: 'kcas', meaning: 'calibrated airspeed' } },
  citations: [
    { source: 'nasa-rp-1046', locator: 'impact pressure and Mach number, subsonic', access: 'second-hand' },
    { source: 'iso-2533', locator: '2.3, formulas (12) and (21)', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof calibratedAirspeedFromTrue>;
