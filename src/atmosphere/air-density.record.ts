import type { FormulaRecord } from '../sources/index.ts';
import {
  airDensity,
  airDensityDomain,
  humidAirDensity,
  humidAirDensityDomain,
  humidDensityRatio,
  humidDensityRatioDomain,
} from './air-density.ts';

export const airDensityRecord = {
  id: 'atmosphere.air-density',
  title: 'Density of dry air',
  equation: '\\rho = \\frac{p}{RT}',
  formula: airDensity,
  domain: airDensityDomain,
  inputs: {
    pressure: { symbol: 'p', meaning: 'pressure of the air' },
    temperature: { symbol: 'T', meaning: 'air temperature' },
  },
  outputs: { result: { symbol: '\\rho', unit: 'kgPerM3', meaning: 'density' } },
  citations: [
    { source: 'iso-2533', locator: '2.3, formula (14)', access: 'read' },
    { source: 'icao-7488', locator: 'constants of the standard atmosphere', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof airDensity>;

export const humidAirDensityRecord = {
  id: 'atmosphere.humid-air-density',
  title: 'Density of humid air',
  equation: '\\rho = \\frac{p - (1 - \\varepsilon)\\,e(t_d)}{RT}',
  formula: humidAirDensity,
  domain: humidAirDensityDomain,
  inputs: {
    pressure: { symbol: 'p', meaning: 'pressure of the air' },
    temperature: { symbol: 'T', meaning: 'air temperature' },
    dewPoint: { symbol: 't_d', meaning: 'dew point' },
  },
  outputs: { result: { symbol: '\\rho', unit: 'kgPerM3', meaning: 'density' } },
  citations: [
    { source: 'wmo-8', locator: 'equation 4.A.6, ratio of molar masses 0.62198', access: 'second-hand' },
    { source: 'bolton-1980', locator: 'equation (10)', access: 'second-hand' },
    { source: 'iso-2533', locator: '2.3, formula (14)', access: 'read' },
    { source: 'groundroll', locator: 'mixture of two ideal gases', access: 'derived' },
  ],
  homogeneous: false,
  checkValues: {
    nonePublished: 'the sources print humid density by relative humidity only; that form has check values of its own',
  },
} satisfies FormulaRecord<typeof humidAirDensity>;

export const humidDensityRatioRecord = {
  id: 'atmosphere.humid-density-ratio',
  title: 'Density ratio of humid air',
  equation: '\\sigma = \\frac{p - (1 - \\varepsilon)\\frac{U}{100}\\,e(t)}{P_0}\\,\\frac{T_0}{T}',
  formula: humidDensityRatio,
  domain: humidDensityRatioDomain,
  inputs: {
    pressure: { symbol: 'p', meaning: 'pressure of the air' },
    temperature: { symbol: 'T', meaning: 'air temperature, as t in °C' },
    relativeHumidity: { symbol: 'U', meaning: 'relative humidity' },
  },
  outputs: { result: { symbol: '\\sigma', unit: 'ratio', meaning: 'density ratio' } },
  citations: [
    { source: 'wmo-8', locator: 'equation 4.A.6, ratio of molar masses 0.62198', access: 'second-hand' },
    { source: 'bolton-1980', locator: 'equation (10)', access: 'second-hand' },
    { source: 'iso-2533', locator: '2.3, formula (14)', access: 'read' },
    { source: 'groundroll', locator: 'mixture of two ideal gases', access: 'derived' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof humidDensityRatio>;
