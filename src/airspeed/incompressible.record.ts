import type { FormulaRecord } from '../sources/index.ts';
import {
  calibratedAirspeedIncompressible,
  calibratedAirspeedIncompressibleDomain,
  trueAirspeedIncompressible,
  trueAirspeedIncompressibleDomain,
} from './incompressible.ts';

export const trueAirspeedIncompressibleRecord = {
  id: 'airspeed.true-airspeed-incompressible',
  title: 'True airspeed, compressibility neglected',
  equation: 'V \\approx \\frac{V_C}{\\sqrt{\\sigma}}, \\qquad \\sigma = \\frac{p}{P_0}\\frac{T_0}{T}',
  formula: trueAirspeedIncompressible,
  domain: trueAirspeedIncompressibleDomain,
  inputs: {
    calibratedAirspeed: { symbol: 'V_C', meaning: 'calibrated airspeed' },
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
    temperature: { symbol: 'T', meaning: 'outside air temperature' },
  },
  outputs: { result: { symbol: 'V', unit: 'ktas', meaning: 'true airspeed, approximate' } },
  citations: [
    { source: 'mathematics', locator: 'equal dynamic pressure, incompressible flow', access: 'derived' },
    { source: 'iso-2533', locator: '2.3, formulas (12) and (14)', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof trueAirspeedIncompressible>;

export const calibratedAirspeedIncompressibleRecord = {
  id: 'airspeed.calibrated-airspeed-incompressible',
  title: 'Calibrated airspeed, compressibility neglected',
  equation: 'V_C \\approx V\\sqrt{\\sigma}, \\qquad \\sigma = \\frac{p}{P_0}\\frac{T_0}{T}',
  formula: calibratedAirspeedIncompressible,
  domain: calibratedAirspeedIncompressibleDomain,
  inputs: {
    trueAirspeed: { symbol: 'V', meaning: 'true airspeed' },
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
    temperature: { symbol: 'T', meaning: 'outside air temperature' },
  },
  outputs: { result: { symbol: 'V_C', unit: 'kcas', meaning: 'calibrated airspeed, approximate' } },
  citations: [
    { source: 'mathematics', locator: 'equal dynamic pressure, incompressible flow', access: 'derived' },
    { source: 'iso-2533', locator: '2.3, formulas (12) and (14)', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof calibratedAirspeedIncompressible>;
