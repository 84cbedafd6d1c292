import type { FormulaRecord } from '../sources/index.ts';
import {
  altimeterSettingAsos,
  altimeterSettingAwos,
  automaticAltimeterSettingDomain,
  stationPressureAwos,
  stationPressureAwosDomain,
} from './altimeter-setting-asos.ts';

export const altimeterSettingAsosRecord = {
  id: 'atmosphere.altimeter-setting-asos',
  title: 'Altimeter setting, ASOS form',
  equation: 'A = \\left(p^{0.1903} + 1.313\\cdot10^{-5} H_s\\right)^{5.255}',
  formula: altimeterSettingAsos,
  domain: automaticAltimeterSettingDomain,
  inputs: {
    stationPressure: { symbol: 'p', meaning: 'pressure at the barometer' },
    stationElevation: { symbol: 'H_s', meaning: 'elevation of the barometer' },
  },
  outputs: { result: { symbol: 'A', unit: 'inHg', meaning: 'altimeter setting' } },
  citations: [{ source: 'asos-algorithm', locator: 'pressure algorithm, unit W8', access: 'read' }],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof altimeterSettingAsos>;

export const altimeterSettingAwosRecord = {
  id: 'atmosphere.altimeter-setting-awos',
  title: 'Altimeter setting, AWOS form',
  equation: 'A = \\left(p^N + 1.313\\cdot10^{-5} H_s\\right)^{1/N},\\quad N = 0.1903',
  formula: altimeterSettingAwos,
  domain: automaticAltimeterSettingDomain,
  inputs: {
    stationPressure: { symbol: 'p', meaning: 'pressure at the barometer' },
    stationElevation: { symbol: 'H_s', meaning: 'elevation of the barometer' },
  },
  outputs: { result: { symbol: 'A', unit: 'inHg', meaning: 'altimeter setting' } },
  citations: [
    { source: 'awos-algorithm', locator: 'pressure algorithm, exponent 1/N with N = 0.1903', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof altimeterSettingAwos>;

export const stationPressureAwosRecord = {
  id: 'atmosphere.station-pressure-awos',
  title: 'Station pressure, AWOS form',
  equation: 'p = \\left(A^N - 1.313\\cdot10^{-5} H_s\\right)^{1/N},\\quad N = 0.1903',
  formula: stationPressureAwos,
  domain: stationPressureAwosDomain,
  inputs: {
    altimeterSetting: { symbol: 'A', meaning: 'altimeter setting' },
    stationElevation: { symbol: 'H_s', meaning: 'elevation of the barometer' },
  },
  outputs: { result: { symbol: 'p', unit: 'inHg', meaning: 'pressure at the barometer' } },
  citations: [
    { source: 'awos-algorithm', locator: 'pressure algorithm, exponent 1/N with N = 0.1903', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof stationPressureAwos>;
