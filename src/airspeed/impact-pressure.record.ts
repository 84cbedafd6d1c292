import type { FormulaRecord } from '../sources/index.ts';
import {
  calibratedAirspeedFromImpactPressure,
  calibratedAirspeedFromImpactPressureDomain,
  impactPressure,
  impactPressureDomain,
} from './impact-pressure.ts';

export const impactPressureRecord = {
  id: 'airspeed.impact-pressure',
  title: 'Impact pressure at a calibrated airspeed',
  equation: 'q_c = P_0\\left(\\left(1 + 0.2\\left(\\frac{V_C}{a_0}\\right)^2\\right)^{3.5} - 1\\right)',
  formula: impactPressure,
  domain: impactPressureDomain,
  inputs: { calibratedAirspeed: { symbol: 'V_C', meaning: 'calibrated airspeed' } },
  outputs: { result: { symbol: 'q_c', unit: 'hPa', meaning: 'impact pressure' } },
  citations: [{ source: 'nasa-rp-1046', locator: 'impact pressure, subsonic', access: 'second-hand' }],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof impactPressure>;

export const calibratedAirspeedFromImpactPressureRecord = {
  id: 'airspeed.calibrated-airspeed-from-impact-pressure',
  title: 'Calibrated airspeed at an impact pressure',
  equation: 'V_C = a_0\\sqrt{5\\left(\\left(\\frac{q_c}{P_0} + 1\\right)^{2/7} - 1\\right)}',
  formula: calibratedAirspeedFromImpactPressure,
  domain: calibratedAirspeedFromImpactPressureDomain,
  inputs: { impactPressure: { symbol: 'q_c', meaning: 'impact pressure' } },
  outputs: { result: { symbol: 'V_C', unit: 'kcas', meaning: 'calibrated airspeed' } },
  citations: [{ source: 'nasa-rp-1046', locator: 'impact pressure, subsonic', access: 'second-hand' }],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof calibratedAirspeedFromImpactPressure>;
