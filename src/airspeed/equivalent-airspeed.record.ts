import type { FormulaRecord } from '../sources/index.ts';
import {
  compressibilityFactor,
  compressibilityFactorDomain,
  equivalentAirspeedFromCalibrated,
  equivalentAirspeedFromCalibratedDomain,
  equivalentAirspeedFromMach,
  equivalentAirspeedFromMachDomain,
  equivalentAirspeedFromTrue,
  equivalentAirspeedFromTrueDomain,
} from './equivalent-airspeed.ts';

export const equivalentAirspeedFromCalibratedRecord = {
  id: 'airspeed.equivalent-airspeed-from-calibrated',
  title: 'Equivalent airspeed from calibrated airspeed',
  equation:
    '\\frac{q_c}{P_0} = \\left(1 + 0.2\\left(\\frac{V_C}{a_0}\\right)^2\\right)^{3.5} - 1, \\qquad M = \\sqrt{5\\left(\\left(\\frac{q_c}{p} + 1\\right)^{2/7} - 1\\right)}, \\qquad V_E = M a_0\\sqrt{\\delta}',
  formula: equivalentAirspeedFromCalibrated,
  domain: equivalentAirspeedFromCalibratedDomain,
  inputs: {
    calibratedAirspeed: { symbol: 'V_C', meaning: 'calibrated airspeed' },
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
  },
  outputs: { result: { symbol: 'V_E', unit: 'keas', meaning: 'equivalent airspeed' } },
  citations: [
    { source: 'nasa-rp-1046', locator: 'impact pressure and Mach number, subsonic', access: 'second-hand' },
    { source: 'iso-2533', locator: '2.3, formula (12)', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof equivalentAirspeedFromCalibrated>;

export const equivalentAirspeedFromMachRecord = {
  id: 'airspeed.equivalent-airspeed-from-mach',
  title: 'Equivalent airspeed from Mach number',
  equation: 'V_E = M a_0\\sqrt{\\delta}, \\qquad \\delta = \\frac{p}{P_0}',
  formula: equivalentAirspeedFromMach,
  domain: equivalentAirspeedFromMachDomain,
  inputs: {
    machNumber: { symbol: 'M', meaning: 'Mach number' },
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
  },
  outputs: { result: { symbol: 'V_E', unit: 'keas', meaning: 'equivalent airspeed' } },
  citations: [
    { source: 'mathematics', locator: 'equal dynamic pressure at sea level and at altitude', access: 'derived' },
    { source: 'iso-2533', locator: '2.3, formula (12)', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof equivalentAirspeedFromMach>;

export const equivalentAirspeedFromTrueRecord = {
  id: 'airspeed.equivalent-airspeed-from-true',
  title: 'Equivalent airspeed from true airspeed',
  equation: 'V_E = V\\sqrt{\\sigma}, \\qquad \\sigma = \\frac{p}{P_0}\\frac{T_0}{T}',
  formula: equivalentAirspeedFromTrue,
  domain: equivalentAirspeedFromTrueDomain,
  inputs: {
    trueAirspeed: { symbol: 'V', meaning: 'true airspeed' },
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
    temperature: { symbol: 'T', meaning: 'outside air temperature' },
  },
  outputs: { result: { symbol: 'V_E', unit: 'keas', meaning: 'equivalent airspeed' } },
  citations: [
    { source: 'mathematics', locator: 'equal dynamic pressure at sea level and at altitude', access: 'derived' },
    { source: 'iso-2533', locator: '2.3, formulas (12) and (14)', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof equivalentAirspeedFromTrue>;

export const compressibilityFactorRecord = {
  id: 'airspeed.compressibility-factor',
  title: 'Compressibility factor',
  equation:
    'f = \\frac{V_E}{V_C}, \\qquad \\frac{q_c}{P_0} = \\left(1 + 0.2\\left(\\frac{V_C}{a_0}\\right)^2\\right)^{3.5} - 1, \\qquad M = \\sqrt{5\\left(\\left(\\frac{q_c}{p} + 1\\right)^{2/7} - 1\\right)}, \\qquad V_E = M a_0\\sqrt{\\delta}',
  formula: compressibilityFactor,
  domain: compressibilityFactorDomain,
  inputs: {
    calibratedAirspeed: { symbol: 'V_C', meaning: 'calibrated airspeed' },
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
  },
  outputs: { result: { symbol: 'f', unit: 'ratio', meaning: 'compressibility factor' } },
  citations: [
    { source: 'nasa-rp-1046', locator: 'impact pressure and Mach number, subsonic', access: 'second-hand' },
    {
      source: 'compressibility-factor-table',
      locator: '5000 ft to 50 000 ft, 100 kt to 300 kt',
      access: 'second-hand',
    },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof compressibilityFactor>;
