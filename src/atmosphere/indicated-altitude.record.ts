import type { FormulaRecord } from '../sources/index.ts';
import {
  indicatedAltitude,
  indicatedAltitudeDomain,
  indicatedHeight,
  indicatedHeightDomain,
} from './indicated-altitude.ts';

export const indicatedAltitudeRecord = {
  id: 'atmosphere.indicated-altitude',
  title: 'Altitude shown by an altimeter set to QNH',
  equation: 'H_Q = H - \\frac{T_0}{L}\\left(1 - \\left(\\frac{p_\\mathrm{QNH}}{P_0}\\right)^{RL/g_0}\\right)',
  formula: indicatedAltitude,
  domain: indicatedAltitudeDomain,
  inputs: {
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
    qnh: { symbol: 'p_\\mathrm{QNH}', meaning: 'altimeter setting' },
  },
  outputs: { result: { symbol: 'H_Q', unit: 'ftElevation', meaning: 'altitude above mean sea level' } },
  citations: [
    { source: 'iso-2533', locator: '2.3, formula (12)', access: 'read' },
    { source: 'icao-7488', locator: 'constants of the standard atmosphere', access: 'read' },
    {
      source: 'groundroll',
      locator: 'tropospheric pressure law from one elevation to another; elevation taken as geopotential',
      access: 'derived',
    },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof indicatedAltitude>;

export const indicatedHeightRecord = {
  id: 'atmosphere.indicated-height',
  title: 'Height shown by an altimeter set to QFE',
  equation: 'H_F = H - \\frac{T_0}{L}\\left(1 - \\left(\\frac{p_\\mathrm{QFE}}{P_0}\\right)^{RL/g_0}\\right)',
  formula: indicatedHeight,
  domain: indicatedHeightDomain,
  inputs: {
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
    qfe: { symbol: 'p_\\mathrm{QFE}', meaning: 'pressure at the elevation given' },
  },
  outputs: { result: { symbol: 'H_F', unit: 'ftHeight', meaning: 'height above the datum of the QFE' } },
  citations: [
    { source: 'iso-2533', locator: '2.3, formula (12)', access: 'read' },
    { source: 'icao-7488', locator: 'constants of the standard atmosphere', access: 'read' },
    {
      source: 'groundroll',
      locator: 'tropospheric pressure law from one elevation to another; elevation taken as geopotential',
      access: 'derived',
    },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof indicatedHeight>;
