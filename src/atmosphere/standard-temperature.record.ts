import type { FormulaRecord } from '../sources/index.ts';
import {
  isaDeviation,
  isaDeviationDomain,
  standardTemperature,
  standardTemperatureDomain,
} from './standard-temperature.ts';

export const standardTemperatureRecord = {
  id: 'atmosphere.standard-temperature',
  title: 'Standard temperature',
  equation: 'T_\\mathrm{ISA} = T_0 - L H',
  formula: standardTemperature,
  domain: standardTemperatureDomain,
  inputs: {
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
  },
  outputs: { result: { symbol: 'T_\\mathrm{ISA}', unit: 'degC', meaning: 'standard temperature' } },
  citations: [
    { source: 'iso-2533', locator: '2.3, formula (11)', access: 'read' },
    { source: 'icao-7488', locator: 'constants of the standard atmosphere', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof standardTemperature>;

export const isaDeviationRecord = {
  id: 'atmosphere.isa-deviation',
  title: 'Deviation from standard temperature',
  equation: '\\Delta T = T - (T_0 - L H)',
  formula: isaDeviation,
  domain: isaDeviationDomain,
  inputs: {
    temperature: { symbol: 'T', meaning: 'outside air temperature' },
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
  },
  outputs: { result: { symbol: '\\Delta T', unit: 'degCDifference', meaning: 'deviation, warmer positive' } },
  citations: [
    { source: 'iso-2533', locator: '2.3, formula (11)', access: 'read' },
    { source: 'groundroll', locator: 'difference of two temperatures', access: 'derived' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof isaDeviation>;
