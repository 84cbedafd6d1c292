import type { FormulaRecord } from '../sources/index.ts';
import {
  pressureAltitude,
  pressureAltitudeDomain,
  pressureAltitudeFromQfe,
  pressureAltitudeFromQfeDomain,
} from './pressure-altitude.ts';

export const pressureAltitudeRecord = {
  id: 'atmosphere.pressure-altitude',
  title: 'Pressure altitude from elevation and QNH',
  equation: 'H = H_e + \\frac{T_0}{L}\\left(1 - \\left(\\frac{p_\\mathrm{QNH}}{P_0}\\right)^{RL/g_0}\\right)',
  formula: pressureAltitude,
  domain: pressureAltitudeDomain,
  inputs: {
    elevation: { symbol: 'H_e', meaning: 'elevation above mean sea level' },
    qnh: { symbol: 'p_\\mathrm{QNH}', meaning: 'altimeter setting' },
  },
  outputs: { result: { symbol: 'H', unit: 'ftPA', meaning: 'pressure altitude' } },
  citations: [
    { source: 'iso-2533', locator: '2.3, formula (12)', access: 'read' },
    { source: 'icao-7488', locator: 'constants of the standard atmosphere', access: 'read' },
    {
      source: 'groundroll',
      locator: 'inverse of the tropospheric pressure law; elevation taken as geopotential',
      access: 'derived',
    },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof pressureAltitude>;

export const pressureAltitudeFromQfeRecord = {
  id: 'atmosphere.pressure-altitude-from-qfe',
  title: 'Pressure altitude from QFE',
  equation: 'H = \\frac{T_0}{L}\\left(1 - \\left(\\frac{p_\\mathrm{QFE}}{P_0}\\right)^{RL/g_0}\\right)',
  formula: pressureAltitudeFromQfe,
  domain: pressureAltitudeFromQfeDomain,
  inputs: {
    qfe: { symbol: 'p_\\mathrm{QFE}', meaning: 'pressure at the point' },
  },
  outputs: { result: { symbol: 'H', unit: 'ftPA', meaning: 'pressure altitude' } },
  citations: [
    { source: 'iso-2533', locator: '2.3, formula (12)', access: 'read' },
    { source: 'icao-7488', locator: 'constants of the standard atmosphere', access: 'read' },
    { source: 'groundroll', locator: 'inverse of the tropospheric pressure law', access: 'derived' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof pressureAltitudeFromQfe>;
