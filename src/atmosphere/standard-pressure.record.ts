import type { FormulaRecord } from '../sources/index.ts';
import { standardPressure, standardPressureDomain } from './standard-pressure.ts';

export const standardPressureRecord = {
  id: 'atmosphere.standard-pressure',
  title: 'Pressure at a pressure altitude',
  equation: 'p = P_0\\left(1 - \\frac{L H}{T_0}\\right)^{g_0/(RL)}',
  formula: standardPressure,
  domain: standardPressureDomain,
  inputs: {
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
  },
  outputs: { result: { symbol: 'p', unit: 'hPa', meaning: 'static pressure' } },
  citations: [
    { source: 'iso-2533', locator: '2.3, formula (12)', access: 'read' },
    { source: 'icao-7488', locator: 'constants of the standard atmosphere', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof standardPressure>;
