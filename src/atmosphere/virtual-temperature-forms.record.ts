import type { FormulaRecord } from '../sources/index.ts';
import {
  virtualTemperatureFromMixingRatio,
  virtualTemperatureFromMixingRatioDomain,
  virtualTemperatureFromSpecificHumidity,
  virtualTemperatureFromSpecificHumidityDomain,
} from './virtual-temperature-forms.ts';

export const virtualTemperatureFromSpecificHumidityRecord = {
  id: 'atmosphere.virtual-temperature-from-specific-humidity',
  title: 'Virtual temperature from the specific humidity',
  equation: 'T_v = T\\left(1 + \\left(\\frac{1}{\\varepsilon} - 1\\right)q\\right)',
  formula: virtualTemperatureFromSpecificHumidity,
  domain: virtualTemperatureFromSpecificHumidityDomain,
  inputs: {
    temperature: { symbol: 'T', meaning: 'air temperature' },
    specificHumidity: { symbol: 'q', meaning: 'specific humidity' },
  },
  outputs: { result: { symbol: 'T_v', unit: 'degC', meaning: 'virtual temperature' } },
  citations: [
    { source: 'humidity-library-tests', locator: 'virtual temperature', access: 'read' },
    { source: 'wmo-8', locator: 'equation 4.A.6, ratio of molar masses 0.62198', access: 'second-hand' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof virtualTemperatureFromSpecificHumidity>;

export const virtualTemperatureFromMixingRatioRecord = {
  id: 'atmosphere.virtual-temperature-from-mixing-ratio',
  title: 'Virtual temperature from the mixing ratio',
  equation: 'T_v = T\\,\\frac{1 + r/\\varepsilon}{1 + r}',
  formula: virtualTemperatureFromMixingRatio,
  domain: virtualTemperatureFromMixingRatioDomain,
  inputs: {
    temperature: { symbol: 'T', meaning: 'air temperature' },
    mixingRatio: { symbol: 'r', meaning: 'mixing ratio' },
  },
  outputs: { result: { symbol: 'T_v', unit: 'degC', meaning: 'virtual temperature' } },
  citations: [
    { source: 'wmo-8', locator: 'equation 4.A.6, ratio of molar masses 0.62198', access: 'second-hand' },
    { source: 'groundroll', locator: 'mixture of two ideal gases', access: 'derived' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof virtualTemperatureFromMixingRatio>;
