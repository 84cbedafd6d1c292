import type { FormulaRecord } from '../sources/index.ts';
import {
  densityAltitudeNearStandard,
  densityAltitudeNearStandardDomain,
  densityAltitudeNws,
  densityAltitudeNwsDomain,
} from './density-altitude-forms.ts';

export const densityAltitudeNwsRecord = {
  id: 'atmosphere.density-altitude-nws',
  title: 'Density altitude, National Weather Service',
  equation: 'H_\\rho = 145366\\left(1 - \\left(\\frac{17.326\\,p}{T_v}\\right)^{0.235}\\right)',
  formula: densityAltitudeNws,
  domain: densityAltitudeNwsDomain,
  inputs: {
    stationPressure: { symbol: 'p', meaning: 'pressure at the point' },
    virtualTemperature: { symbol: 'T_v', meaning: 'virtual temperature' },
  },
  outputs: { result: { symbol: 'H_\\rho', unit: 'ftDA', meaning: 'density altitude' } },
  citations: [{ source: 'nws-formulas', locator: 'density altitude, in a copy with a garbled layout', access: 'read' }],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof densityAltitudeNws>;

export const densityAltitudeNearStandardRecord = {
  id: 'atmosphere.density-altitude-near-standard',
  title: 'Density altitude near standard temperature',
  equation: 'H_\\rho = H + \\frac{\\Delta T}{L\\,(g_0/(RL) - 1)}',
  formula: densityAltitudeNearStandard,
  domain: densityAltitudeNearStandardDomain,
  inputs: {
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
    isaDeviation: { symbol: '\\Delta T', meaning: 'deviation from standard temperature' },
  },
  outputs: { result: { symbol: 'H_\\rho', unit: 'ftDA', meaning: 'density altitude' } },
  citations: [
    { source: 'groundroll', locator: 'first order of the exact form in the deviation', access: 'derived' },
    { source: 'trade-practice', locator: 'rule of 118.6 ft for each degree', access: 'second-hand' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof densityAltitudeNearStandard>;
