import type { FormulaRecord } from '../sources/index.ts';
import {
  qfeFromQnh,
  qfeFromQnhDomain,
  qfeFromStationPressure,
  qfeFromStationPressureDomain,
  qnhFromPressureAltitude,
  qnhFromPressureAltitudeDomain,
  qnhFromQfe,
  qnhFromQfeDomain,
  qnhFromStationPressure,
  qnhFromStationPressureDomain,
  stationPressureFromQfe,
  stationPressureFromQfeDomain,
  stationPressureFromQnh,
  stationPressureFromQnhDomain,
} from './altimeter-setting.ts';

export const qnhFromQfeRecord = {
  id: 'atmosphere.qnh-from-qfe',
  title: 'QNH from QFE',
  equation:
    'p_\\mathrm{QNH} = P_0\\left(\\left(\\frac{p_\\mathrm{QFE}}{P_0}\\right)^{n} + \\frac{L H_e}{T_0}\\right)^{1/n},\\quad n = \\frac{RL}{g_0}',
  formula: qnhFromQfe,
  domain: qnhFromQfeDomain,
  inputs: {
    qfe: { symbol: 'p_\\mathrm{QFE}', meaning: 'pressure at the elevation given' },
    elevation: { symbol: 'H_e', meaning: 'elevation of the datum of the QFE' },
  },
  outputs: { result: { symbol: 'p_\\mathrm{QNH}', unit: 'hPa', meaning: 'altimeter setting' } },
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
} satisfies FormulaRecord<typeof qnhFromQfe>;

export const qfeFromQnhRecord = {
  id: 'atmosphere.qfe-from-qnh',
  title: 'QFE from QNH',
  equation:
    'p_\\mathrm{QFE} = P_0\\left(\\left(\\frac{p_\\mathrm{QNH}}{P_0}\\right)^{n} - \\frac{L H_e}{T_0}\\right)^{1/n},\\quad n = \\frac{RL}{g_0}',
  formula: qfeFromQnh,
  domain: qfeFromQnhDomain,
  inputs: {
    qnh: { symbol: 'p_\\mathrm{QNH}', meaning: 'altimeter setting' },
    elevation: { symbol: 'H_e', meaning: 'elevation of the datum of the QFE' },
  },
  outputs: { result: { symbol: 'p_\\mathrm{QFE}', unit: 'hPa', meaning: 'pressure at the elevation given' } },
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
} satisfies FormulaRecord<typeof qfeFromQnh>;

export const qnhFromStationPressureRecord = {
  id: 'atmosphere.qnh-from-station-pressure',
  title: 'QNH from station pressure',
  equation:
    'p_\\mathrm{QNH} = P_0\\left(\\left(\\frac{p}{P_0}\\right)^{n} + \\frac{L H_s}{T_0}\\right)^{1/n},\\quad n = \\frac{RL}{g_0}',
  formula: qnhFromStationPressure,
  domain: qnhFromStationPressureDomain,
  inputs: {
    stationPressure: { symbol: 'p', meaning: 'pressure at the barometer' },
    stationElevation: { symbol: 'H_s', meaning: 'elevation of the barometer' },
  },
  outputs: { result: { symbol: 'p_\\mathrm{QNH}', unit: 'hPa', meaning: 'altimeter setting' } },
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
} satisfies FormulaRecord<typeof qnhFromStationPressure>;

export const stationPressureFromQnhRecord = {
  id: 'atmosphere.station-pressure-from-qnh',
  title: 'Station pressure from QNH',
  equation:
    'p = P_0\\left(\\left(\\frac{p_\\mathrm{QNH}}{P_0}\\right)^{n} - \\frac{L H_s}{T_0}\\right)^{1/n},\\quad n = \\frac{RL}{g_0}',
  formula: stationPressureFromQnh,
  domain: stationPressureFromQnhDomain,
  inputs: {
    qnh: { symbol: 'p_\\mathrm{QNH}', meaning: 'altimeter setting' },
    stationElevation: { symbol: 'H_s', meaning: 'elevation of the barometer' },
  },
  outputs: { result: { symbol: 'p', unit: 'hPa', meaning: 'pressure at the barometer' } },
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
} satisfies FormulaRecord<typeof stationPressureFromQnh>;

export const qfeFromStationPressureRecord = {
  id: 'atmosphere.qfe-from-station-pressure',
  title: 'QFE from station pressure',
  equation:
    'p_\\mathrm{QFE} = P_0\\left(\\left(\\frac{p}{P_0}\\right)^{n} + \\frac{L (H_s - H_e)}{T_0}\\right)^{1/n},\\quad n = \\frac{RL}{g_0}',
  formula: qfeFromStationPressure,
  domain: qfeFromStationPressureDomain,
  inputs: {
    stationPressure: { symbol: 'p', meaning: 'pressure at the barometer' },
    stationElevation: { symbol: 'H_s', meaning: 'elevation of the barometer' },
    elevation: { symbol: 'H_e', meaning: 'elevation of the datum of the QFE' },
  },
  outputs: { result: { symbol: 'p_\\mathrm{QFE}', unit: 'hPa', meaning: 'pressure at the elevation given' } },
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
} satisfies FormulaRecord<typeof qfeFromStationPressure>;

export const stationPressureFromQfeRecord = {
  id: 'atmosphere.station-pressure-from-qfe',
  title: 'Station pressure from QFE',
  equation:
    'p = P_0\\left(\\left(\\frac{p_\\mathrm{QFE}}{P_0}\\right)^{n} + \\frac{L (H_e - H_s)}{T_0}\\right)^{1/n},\\quad n = \\frac{RL}{g_0}',
  formula: stationPressureFromQfe,
  domain: stationPressureFromQfeDomain,
  inputs: {
    qfe: { symbol: 'p_\\mathrm{QFE}', meaning: 'pressure at the elevation given' },
    elevation: { symbol: 'H_e', meaning: 'elevation of the datum of the QFE' },
    stationElevation: { symbol: 'H_s', meaning: 'elevation of the barometer' },
  },
  outputs: { result: { symbol: 'p', unit: 'hPa', meaning: 'pressure at the barometer' } },
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
} satisfies FormulaRecord<typeof stationPressureFromQfe>;

export const qnhFromPressureAltitudeRecord = {
  id: 'atmosphere.qnh-from-pressure-altitude',
  title: 'QNH from pressure altitude',
  equation: 'p_\\mathrm{QNH} = P_0\\left(1 - \\frac{L (H - H_e)}{T_0}\\right)^{g_0/(RL)}',
  formula: qnhFromPressureAltitude,
  domain: qnhFromPressureAltitudeDomain,
  inputs: {
    pressureAltitude: { symbol: 'H', meaning: 'pressure altitude' },
    elevation: { symbol: 'H_e', meaning: 'elevation above mean sea level' },
  },
  outputs: { result: { symbol: 'p_\\mathrm{QNH}', unit: 'hPa', meaning: 'altimeter setting' } },
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
} satisfies FormulaRecord<typeof qnhFromPressureAltitude>;
