import type { FormulaRecord } from '../sources/index.ts';
import {
  saturationVapourPressureBuck1981,
  saturationVapourPressureBuck1996,
  saturationVapourPressureNws,
  saturationVapourPressureTetens,
  vapourPressureDomain,
} from './vapour-pressure-forms.ts';

export const saturationVapourPressureTetensRecord = {
  id: 'atmosphere.saturation-vapour-pressure-tetens',
  title: 'Saturation vapour pressure, Tetens with the constants of Murray',
  equation: 'e = 6.1078\\cdot10^{7.5t/(t + 237.3)}',
  formula: saturationVapourPressureTetens,
  domain: vapourPressureDomain,
  inputs: {
    temperature: { symbol: 't', meaning: 'air temperature, or dew point' },
  },
  outputs: { result: { symbol: 'e', unit: 'hPa', meaning: 'vapour pressure' } },
  citations: [{ source: 'tetens-murray', locator: 'saturation over water', access: 'second-hand' }],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof saturationVapourPressureTetens>;

export const saturationVapourPressureNwsRecord = {
  id: 'atmosphere.saturation-vapour-pressure-nws',
  title: 'Saturation vapour pressure, National Weather Service',
  equation: 'e = 6.11\\cdot10^{7.5t/(t + 237.7)}',
  formula: saturationVapourPressureNws,
  domain: vapourPressureDomain,
  inputs: {
    temperature: { symbol: 't', meaning: 'air temperature, or dew point' },
  },
  outputs: { result: { symbol: 'e', unit: 'hPa', meaning: 'vapour pressure' } },
  citations: [{ source: 'nws-formulas', locator: 'vapour pressure; another copy has 6.112', access: 'second-hand' }],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof saturationVapourPressureNws>;

export const saturationVapourPressureBuck1981Record = {
  id: 'atmosphere.saturation-vapour-pressure-buck-1981',
  title: 'Saturation vapour pressure, Buck 1981',
  equation: 'e = 6.1121\\,\\exp\\frac{17.502\\,t}{t + 240.97}',
  formula: saturationVapourPressureBuck1981,
  domain: vapourPressureDomain,
  inputs: {
    temperature: { symbol: 't', meaning: 'air temperature, or dew point' },
  },
  outputs: { result: { symbol: 'e', unit: 'hPa', meaning: 'vapour pressure' } },
  citations: [{ source: 'buck-1981', locator: 'saturation over water', access: 'second-hand' }],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof saturationVapourPressureBuck1981>;

export const saturationVapourPressureBuck1996Record = {
  id: 'atmosphere.saturation-vapour-pressure-buck-1996',
  title: 'Saturation vapour pressure, Buck 1996',
  equation: 'e = 6.1121\\,\\exp\\frac{(18.678 - t/234.5)\\,t}{t + 257.14}',
  formula: saturationVapourPressureBuck1996,
  domain: vapourPressureDomain,
  inputs: {
    temperature: { symbol: 't', meaning: 'air temperature, or dew point' },
  },
  outputs: { result: { symbol: 'e', unit: 'hPa', meaning: 'vapour pressure' } },
  citations: [{ source: 'buck-1996', locator: 'saturation over water', access: 'second-hand' }],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof saturationVapourPressureBuck1996>;
