import type { FormulaRecord } from '../sources/index.ts';
import { densityAltitude, densityAltitudeDomain, densityRatio, densityRatioDomain } from './density-altitude.ts';

export const densityRatioRecord = {
  id: 'atmosphere.density-ratio',
  title: 'Density ratio of dry air',
  equation: '\\sigma = \\frac{p(H)}{P_0}\\,\\frac{T_0}{T}',
  formula: densityRatio,
  domain: densityRatioDomain,
  inputs: {
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
    temperature: { symbol: 'T', meaning: 'outside air temperature' },
  },
  outputs: { result: { symbol: '\\sigma', unit: 'ratio', meaning: 'density ratio' } },
  citations: [{ source: 'iso-2533', locator: '2.3, formulas (12) and (14)', access: 'read' }],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof densityRatio>;

export const densityAltitudeRecord = {
  id: 'atmosphere.density-altitude',
  title: 'Density altitude of dry air',
  equation: 'H_\\rho = \\frac{T_0}{L}\\left(1 - \\sigma^{1/(g_0/(RL) - 1)}\\right)',
  formula: densityAltitude,
  domain: densityAltitudeDomain,
  inputs: {
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
    temperature: { symbol: 'T', meaning: 'outside air temperature' },
  },
  outputs: { result: { symbol: 'H_\\rho', unit: 'ftDA', meaning: 'density altitude' } },
  citations: [
    { source: 'iso-2533', locator: '2.3, formulas (12) and (14)', access: 'read' },
    { source: 'groundroll', locator: 'inverse of the tropospheric density law', access: 'derived' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof densityAltitude>;
