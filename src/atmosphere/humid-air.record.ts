import type { FormulaRecord } from '../sources/index.ts';
import { humidAirDomain, humidDensityAltitude, virtualTemperature } from './humid-air.ts';

export const virtualTemperatureRecord = {
  id: 'atmosphere.virtual-temperature',
  title: 'Virtual temperature',
  equation: 'T_v = \\frac{T}{1 - (1 - \\varepsilon)\\,e(t_d)/p(H)}',
  formula: virtualTemperature,
  domain: humidAirDomain,
  inputs: {
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
    temperature: { symbol: 'T', meaning: 'outside air temperature' },
    dewPoint: { symbol: 't_d', meaning: 'dew point' },
  },
  outputs: { result: { symbol: 'T_v', unit: 'degC', meaning: 'virtual temperature' } },
  citations: [
    { source: 'wmo-8', locator: 'equation 4.A.6, ratio of molar masses 0.62198', access: 'second-hand' },
    { source: 'bolton-1980', locator: 'equation (10)', access: 'second-hand' },
    { source: 'groundroll', locator: 'mixture of two ideal gases', access: 'derived' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof virtualTemperature>;

export const humidDensityAltitudeRecord = {
  id: 'atmosphere.humid-density-altitude',
  title: 'Density altitude of humid air',
  equation:
    'H_\\rho = \\frac{T_0}{L}\\left(1 - \\left(\\frac{p(H)}{P_0}\\,\\frac{T_0}{T_v}\\right)^{1/(g_0/(RL) - 1)}\\right)',
  formula: humidDensityAltitude,
  domain: humidAirDomain,
  inputs: {
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
    temperature: { symbol: 'T', meaning: 'outside air temperature' },
    dewPoint: { symbol: 't_d', meaning: 'dew point' },
  },
  outputs: { result: { symbol: 'H_\\rho', unit: 'ftDA', meaning: 'density altitude' } },
  citations: [
    { source: 'wmo-8', locator: 'equation 4.A.6, ratio of molar masses 0.62198', access: 'second-hand' },
    { source: 'bolton-1980', locator: 'equation (10)', access: 'second-hand' },
    { source: 'iso-2533', locator: '2.3, formulas (12) and (14)', access: 'read' },
    {
      source: 'groundroll',
      locator: 'inverse of the tropospheric density law at the virtual temperature',
      access: 'derived',
    },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof humidDensityAltitude>;
