import type { FormulaRecord } from '../sources/index.ts';
import { pressureAltitudeNws, pressureAltitudeNwsDomain } from './pressure-altitude-nws.ts';

export const pressureAltitudeNwsRecord = {
  id: 'atmosphere.pressure-altitude-nws',
  title: 'Pressure altitude, National Weather Service',
  equation: 'H = H_e + 145366.45\\left(1 - \\left(\\frac{A}{1013.25}\\right)^{0.190284}\\right)',
  formula: pressureAltitudeNws,
  domain: pressureAltitudeNwsDomain,
  inputs: {
    elevation: { symbol: 'H_e', meaning: 'elevation above mean sea level' },
    altimeterSetting: { symbol: 'A', meaning: 'altimeter setting' },
  },
  outputs: { result: { symbol: 'H', unit: 'ftPA', meaning: 'pressure altitude' } },
  citations: [{ source: 'nws-formulas', locator: 'pressure altitude', access: 'second-hand' }],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof pressureAltitudeNws>;
