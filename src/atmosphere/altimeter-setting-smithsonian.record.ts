import type { FormulaRecord } from '../sources/index.ts';
import {
  altimeterSettingDomain,
  altimeterSettingIom19,
  altimeterSettingIom19Domain,
  altimeterSettingMadis,
  altimeterSettingNoaa,
  altimeterSettingSmithsonian,
  stationPressureSmithsonian,
  stationPressureSmithsonianDomain,
} from './altimeter-setting-smithsonian.ts';

export const altimeterSettingSmithsonianRecord = {
  id: 'atmosphere.altimeter-setting-smithsonian',
  title: 'Altimeter setting, Smithsonian form',
  equation:
    'A = (p - 0.3)\\left(1 + \\frac{ P_0^n a/T_0 \\cdot H_s}{(p - 0.3)^n}\\right)^{1/n},\\quad n = \\frac{Ra}{g_0},\\ T_0 = 288',
  formula: altimeterSettingSmithsonian,
  domain: altimeterSettingDomain,
  inputs: {
    stationPressure: { symbol: 'p', meaning: 'pressure at the barometer' },
    stationElevation: { symbol: 'H_s', meaning: 'elevation of the barometer' },
  },
  outputs: { result: { symbol: 'A', unit: 'hPa', meaning: 'altimeter setting' } },
  citations: [
    { source: 'smithsonian-1951', locator: 'p. 269, altimeter setting', access: 'second-hand' },
    {
      source: 'meteorology-library-tests',
      locator: 'gas constant of 287.04749 J/(kg K), inferred from the published results',
      access: 'second-hand',
    },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof altimeterSettingSmithsonian>;

export const stationPressureSmithsonianRecord = {
  id: 'atmosphere.station-pressure-smithsonian',
  title: 'Station pressure, Smithsonian form',
  equation: 'p = \\left(A^n - P_0^n\\frac{a}{T_0}H_s\\right)^{1/n} + 0.3,\\quad n = \\frac{Ra}{g_0},\\ T_0 = 288',
  formula: stationPressureSmithsonian,
  domain: stationPressureSmithsonianDomain,
  inputs: {
    altimeterSetting: { symbol: 'A', meaning: 'altimeter setting' },
    stationElevation: { symbol: 'H_s', meaning: 'elevation of the barometer' },
  },
  outputs: { result: { symbol: 'p', unit: 'hPa', meaning: 'pressure at the barometer' } },
  citations: [
    { source: 'smithsonian-1951', locator: 'p. 269, altimeter setting', access: 'second-hand' },
    {
      source: 'meteorology-library-tests',
      locator: 'gas constant of 287.04749 J/(kg K), inferred from the published results',
      access: 'second-hand',
    },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof stationPressureSmithsonian>;

export const altimeterSettingNoaaRecord = {
  id: 'atmosphere.altimeter-setting-noaa',
  title: 'Altimeter setting, NOAA constant',
  equation:
    'A = (p - 0.3)\\left(1 + \\frac{8.42288069\\cdot10^{-5} H_s}{(p - 0.3)^n}\\right)^{1/n},\\quad n = 0.190284',
  formula: altimeterSettingNoaa,
  domain: altimeterSettingDomain,
  inputs: {
    stationPressure: { symbol: 'p', meaning: 'pressure at the barometer' },
    stationElevation: { symbol: 'H_s', meaning: 'elevation of the barometer' },
  },
  outputs: { result: { symbol: 'A', unit: 'hPa', meaning: 'altimeter setting' } },
  citations: [
    { source: 'smithsonian-1951', locator: 'p. 269, altimeter setting', access: 'second-hand' },
    {
      source: 'weather-station-tests',
      locator: 'constant of NOAA with 288 K, in the code beside the tests',
      access: 'second-hand',
    },
  ],
  homogeneous: false,
  checkValues: {
    nonePublished: 'the sources print the constant and no worked example of it',
  },
} satisfies FormulaRecord<typeof altimeterSettingNoaa>;

export const altimeterSettingMadisRecord = {
  id: 'atmosphere.altimeter-setting-madis',
  title: 'Altimeter setting, MADIS constant',
  equation:
    'A = (p - 0.3)\\left(1 + \\frac{8.4184960528\\cdot10^{-5} H_s}{(p - 0.3)^n}\\right)^{1/n},\\quad n = 0.190284',
  formula: altimeterSettingMadis,
  domain: altimeterSettingDomain,
  inputs: {
    stationPressure: { symbol: 'p', meaning: 'pressure at the barometer' },
    stationElevation: { symbol: 'H_s', meaning: 'elevation of the barometer' },
  },
  outputs: { result: { symbol: 'A', unit: 'hPa', meaning: 'altimeter setting' } },
  citations: [
    {
      source: 'weather-station-tests',
      locator: 'constant of MADIS with 288.15 K, in the code beside the tests',
      access: 'second-hand',
    },
  ],
  homogeneous: false,
  checkValues: {
    nonePublished: 'the sources print the constant and no worked example of it',
  },
} satisfies FormulaRecord<typeof altimeterSettingMadis>;

export const altimeterSettingIom19Record = {
  id: 'atmosphere.altimeter-setting-iom-19',
  title: 'Altimeter setting, WMO report 19',
  equation: 'A = (p - 0.01)\\left(1 + \\frac{4.30899\\cdot10^{-5} H_s}{(p - 0.01)^n}\\right)^{1/n},\\quad n = 0.190284',
  formula: altimeterSettingIom19,
  domain: altimeterSettingIom19Domain,
  inputs: {
    stationPressure: { symbol: 'p', meaning: 'pressure at the barometer' },
    stationElevation: { symbol: 'H_s', meaning: 'elevation of the barometer' },
  },
  outputs: { result: { symbol: 'A', unit: 'inHg', meaning: 'altimeter setting' } },
  citations: [{ source: 'wmo-iom-19', locator: 'altimeter setting in inches of mercury', access: 'second-hand' }],
  homogeneous: false,
  checkValues: {
    nonePublished: 'the sources print the constant and no worked example of it',
  },
} satisfies FormulaRecord<typeof altimeterSettingIom19>;
