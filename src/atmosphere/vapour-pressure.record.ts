import type { FormulaRecord } from '../sources/index.ts';
import { saturationVapourPressure, saturationVapourPressureDomain } from './vapour-pressure.ts';

export const saturationVapourPressureRecord = {
  id: 'atmosphere.saturation-vapour-pressure',
  title: 'Saturation vapour pressure over water',
  equation: 'e = 6.112\\,\\exp\\frac{17.67\\,t}{t + 243.5}',
  formula: saturationVapourPressure,
  domain: saturationVapourPressureDomain,
  inputs: {
    temperature: { symbol: 't', meaning: 'air temperature, or dew point' },
  },
  outputs: { result: { symbol: 'e', unit: 'hPa', meaning: 'vapour pressure' } },
  citations: [{ source: 'bolton-1980', locator: 'equation (10)', access: 'second-hand' }],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof saturationVapourPressure>;
