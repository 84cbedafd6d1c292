import type { FormulaRecord } from '../sources/index.ts';
import {
  relativeHumidityWmo,
  relativeHumidityWmoDomain,
  saturationVapourPressureOfMoistAirWmo,
  saturationVapourPressureOfMoistAirWmoDomain,
  saturationVapourPressureWmo,
  saturationVapourPressureWmoDomain,
} from './vapour-pressure-wmo.ts';

export const saturationVapourPressureWmoRecord = {
  id: 'atmosphere.saturation-vapour-pressure-wmo',
  title: 'Saturation vapour pressure, WMO-No. 8',
  equation: 'e = 6.112\\,\\exp\\frac{17.62\\,t}{t + 243.12}',
  formula: saturationVapourPressureWmo,
  domain: saturationVapourPressureWmoDomain,
  inputs: {
    temperature: { symbol: 't', meaning: 'air temperature, or dew point' },
  },
  outputs: { result: { symbol: 'e', unit: 'hPa', meaning: 'vapour pressure' } },
  citations: [{ source: 'wmo-8', locator: 'Annex 4.B', access: 'second-hand' }],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof saturationVapourPressureWmo>;

export const saturationVapourPressureOfMoistAirWmoRecord = {
  id: 'atmosphere.saturation-vapour-pressure-of-moist-air-wmo',
  title: 'Saturation vapour pressure in air, WMO-No. 8',
  equation: "e' = (1.0016 + 3.15\\cdot10^{-6}p - 0.074/p)\\,e(t)",
  formula: saturationVapourPressureOfMoistAirWmo,
  domain: saturationVapourPressureOfMoistAirWmoDomain,
  inputs: {
    temperature: { symbol: 't', meaning: 'air temperature, or dew point' },
    pressure: { symbol: 'p', meaning: 'pressure of the air' },
  },
  outputs: { result: { symbol: "e'", unit: 'hPa', meaning: 'vapour pressure' } },
  citations: [{ source: 'wmo-8', locator: 'Annex 4.B', access: 'second-hand' }],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof saturationVapourPressureOfMoistAirWmo>;

export const relativeHumidityWmoRecord = {
  id: 'atmosphere.relative-humidity-wmo',
  title: 'Relative humidity from the mixing ratio, WMO-No. 8',
  equation: "U = 100\\,\\frac{r p}{(\\varepsilon + r)\\,e'_w(p, t)}",
  formula: relativeHumidityWmo,
  domain: relativeHumidityWmoDomain,
  inputs: {
    temperature: { symbol: 't', meaning: 'air temperature' },
    pressure: { symbol: 'p', meaning: 'pressure of the air' },
    mixingRatio: { symbol: 'r', meaning: 'mixing ratio' },
  },
  outputs: { result: { symbol: 'U', unit: 'percent', meaning: 'relative humidity' } },
  citations: [
    { source: 'wmo-8', locator: 'Annex 4.B', access: 'second-hand' },
    { source: 'wmo-8', locator: 'equation 4.A.6, ratio of molar masses 0.62198', access: 'second-hand' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof relativeHumidityWmo>;
