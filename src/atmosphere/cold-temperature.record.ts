import type { FormulaRecord } from '../sources/index.ts';
import {
  coldTemperatureCorrection,
  coldTemperatureCorrectionDomain,
  coldTemperatureCorrectionHydrostatic,
  tabulatedColdTemperatureCorrection,
  tabulatedColdTemperatureCorrectionDomain,
} from './cold-temperature.ts';

export const coldTemperatureCorrectionRecord = {
  id: 'atmosphere.cold-temperature-correction',
  title: 'Cold temperature correction of the altimeter',
  equation: 'C = \\frac{H\\,(15 - t_0)}{273 + t_0 - \\tfrac12 L_0 (H + H_{ss})},\\quad t_0 = t + L_0 H_{ss}',
  formula: coldTemperatureCorrection,
  domain: coldTemperatureCorrectionDomain,
  inputs: {
    height: { symbol: 'H', meaning: 'height above the source of the altimeter setting' },
    aerodromeTemperature: { symbol: 't', meaning: 'temperature at the source of the altimeter setting' },
    aerodromeElevation: { symbol: 'H_{ss}', meaning: 'elevation of the source of the altimeter setting' },
  },
  outputs: { result: { symbol: 'C', unit: 'ftHeight', meaning: 'feet to add' } },
  citations: [
    { source: 'icao-8168', locator: 'Volume I, simple form of the temperature correction', access: 'second-hand' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof coldTemperatureCorrection>;

export const tabulatedColdTemperatureCorrectionRecord = {
  id: 'atmosphere.tabulated-cold-temperature-correction',
  title: 'Cold temperature correction as tabulated',
  equation: 'C = 10\\left\\lceil\\frac{1}{10}\\cdot\\frac{H\\,(15 - t)}{273 + t - \\tfrac12 L_0 H}\\right\\rceil',
  formula: tabulatedColdTemperatureCorrection,
  domain: tabulatedColdTemperatureCorrectionDomain,
  inputs: {
    height: { symbol: 'H', meaning: 'height above the source of the altimeter setting' },
    aerodromeTemperature: { symbol: 't', meaning: 'temperature at the source of the altimeter setting' },
  },
  outputs: { result: { symbol: 'C', unit: 'ftHeight', meaning: 'feet to add' } },
  citations: [
    {
      source: 'faa-aim',
      locator: 'ICAO cold temperature error table, TBL 7-2-3 of 2014, since renumbered 7-3-1',
      access: 'read',
    },
    {
      source: 'icao-8168',
      locator: 'Volume I, table III-1-4-1 b, simple form of the correction',
      access: 'second-hand',
    },
    { source: 'groundroll', locator: 'rounding up to 10 ft, inferred: it gives all 98 entries', access: 'derived' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof tabulatedColdTemperatureCorrection>;

export const coldTemperatureCorrectionHydrostaticRecord = {
  id: 'atmosphere.cold-temperature-correction-hydrostatic',
  title: 'Cold temperature correction, hydrostatic',
  equation:
    'C = D - H,\\quad D - \\frac{\\Delta T}{L}\\ln\\left(1 - \\frac{L D}{T_s}\\right) = H,\\quad \\Delta T = t - T_s,\\quad T_s = T_0 - L H_{ss}',
  formula: coldTemperatureCorrectionHydrostatic,
  domain: coldTemperatureCorrectionDomain,
  inputs: {
    height: { symbol: 'H', meaning: 'height above the source of the altimeter setting' },
    aerodromeTemperature: { symbol: 't', meaning: 'temperature at the source of the altimeter setting' },
    aerodromeElevation: { symbol: 'H_{ss}', meaning: 'elevation of the source of the altimeter setting' },
  },
  outputs: { result: { symbol: 'C', unit: 'ftHeight', meaning: 'feet to add' } },
  citations: [
    { source: 'iso-2533', locator: '2.3, formulas (11) and (12)', access: 'read' },
    {
      source: 'groundroll',
      locator: 'hydrostatic equation with a temperature off standard by the same at every level',
      access: 'derived',
    },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof coldTemperatureCorrectionHydrostatic>;
