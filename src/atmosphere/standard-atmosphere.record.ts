import type { FormulaRecord } from '../sources/index.ts';
import {
  standardAtmosphere,
  standardAtmosphereAtGeometricAltitude,
  standardAtmosphereAtGeometricAltitudeDomain,
  standardAtmosphereAtPressure,
  standardAtmosphereAtPressureAltitude,
  standardAtmosphereAtPressureAltitudeDomain,
  standardAtmosphereAtPressureDomain,
  standardAtmosphereDomain,
} from './standard-atmosphere.ts';

export const standardAtmosphereRecord = {
  id: 'atmosphere.standard-atmosphere',
  title: 'Standard atmosphere',
  equation:
    'T = T_b + \\beta(H - H_b),\\quad p = p_b\\left(\\frac{T}{T_b}\\right)^{-g_0/(\\beta R)}\\ \\text{or}\\ p_b\\,\\mathrm{e}^{-g_0(H - H_b)/(R T_b)},\\quad \\rho = \\frac{p}{RT},\\quad a = \\sqrt{\\kappa R T},\\quad \\mu = \\frac{\\beta_s T^{3/2}}{T + S},\\quad \\nu = \\frac{\\mu}{\\rho}',
  formula: standardAtmosphere,
  domain: standardAtmosphereDomain,
  inputs: {
    geopotentialAltitude: { symbol: 'H', meaning: 'geopotential altitude' },
  },
  outputs: {
    temperature: { symbol: 'T', unit: 'degC', meaning: 'temperature' },
    pressure: { symbol: 'p', unit: 'hPa', meaning: 'pressure' },
    density: { symbol: '\\rho', unit: 'kgPerM3', meaning: 'density' },
    speedOfSound: { symbol: 'a', unit: 'kt', meaning: 'speed of sound' },
    dynamicViscosity: { symbol: '\\mu', unit: 'PaS', meaning: 'dynamic viscosity' },
    kinematicViscosity: { symbol: '\\nu', unit: 'm2PerS', meaning: 'kinematic viscosity' },
    freeFall: { symbol: 'g', unit: 'mps2', meaning: 'acceleration of free fall' },
    temperatureRatio: { symbol: '\\theta', unit: 'ratio', meaning: 'temperature over that at mean sea level' },
    pressureRatio: { symbol: '\\delta', unit: 'ratio', meaning: 'pressure over that at mean sea level' },
    densityRatio: { symbol: '\\sigma', unit: 'ratio', meaning: 'density over that at mean sea level' },
    rootOfDensityRatio: { symbol: '\\sqrt\\sigma', unit: 'ratio', meaning: 'square root of the density ratio' },
    viscosityRatio: { symbol: '\\mu/\\mu_0', unit: 'ratio', meaning: 'dynamic viscosity over that at mean sea level' },
  },
  citations: [
    { source: 'iso-2533', locator: '2.3, formulas (7), (11) to (14), (21) to (23)', access: 'read' },
    { source: 'icao-7488', locator: 'constants and layers of the standard atmosphere', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof standardAtmosphere>;

export const standardAtmosphereAtGeometricAltitudeRecord = {
  id: 'atmosphere.standard-atmosphere-at-geometric-altitude',
  title: 'Standard atmosphere at a geometric altitude',
  equation:
    'H = \\frac{r h}{r + h},\\quad T = T_b + \\beta(H - H_b),\\quad p = p_b\\left(\\frac{T}{T_b}\\right)^{-g_0/(\\beta R)}\\ \\text{or}\\ p_b\\,\\mathrm{e}^{-g_0(H - H_b)/(R T_b)},\\quad \\rho = \\frac{p}{RT},\\quad a = \\sqrt{\\kappa R T},\\quad \\mu = \\frac{\\beta_s T^{3/2}}{T + S},\\quad \\nu = \\frac{\\mu}{\\rho}',
  formula: standardAtmosphereAtGeometricAltitude,
  domain: standardAtmosphereAtGeometricAltitudeDomain,
  inputs: {
    geometricAltitude: { symbol: 'h', meaning: 'geometric altitude' },
  },
  outputs: {
    temperature: { symbol: 'T', unit: 'degC', meaning: 'temperature' },
    pressure: { symbol: 'p', unit: 'hPa', meaning: 'pressure' },
    density: { symbol: '\\rho', unit: 'kgPerM3', meaning: 'density' },
    speedOfSound: { symbol: 'a', unit: 'kt', meaning: 'speed of sound' },
    dynamicViscosity: { symbol: '\\mu', unit: 'PaS', meaning: 'dynamic viscosity' },
    kinematicViscosity: { symbol: '\\nu', unit: 'm2PerS', meaning: 'kinematic viscosity' },
    freeFall: { symbol: 'g', unit: 'mps2', meaning: 'acceleration of free fall' },
    temperatureRatio: { symbol: '\\theta', unit: 'ratio', meaning: 'temperature over that at mean sea level' },
    pressureRatio: { symbol: '\\delta', unit: 'ratio', meaning: 'pressure over that at mean sea level' },
    densityRatio: { symbol: '\\sigma', unit: 'ratio', meaning: 'density over that at mean sea level' },
    rootOfDensityRatio: { symbol: '\\sqrt\\sigma', unit: 'ratio', meaning: 'square root of the density ratio' },
    viscosityRatio: { symbol: '\\mu/\\mu_0', unit: 'ratio', meaning: 'dynamic viscosity over that at mean sea level' },
  },
  citations: [
    { source: 'iso-2533', locator: '2.3, formulas (7) to (9), (11) to (14), (21) to (23)', access: 'read' },
    { source: 'icao-7488', locator: 'constants and layers of the standard atmosphere', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof standardAtmosphereAtGeometricAltitude>;

export const standardAtmosphereAtPressureAltitudeRecord = {
  id: 'atmosphere.standard-atmosphere-at-pressure-altitude',
  title: 'Standard atmosphere at a pressure altitude',
  equation:
    'H = H_p,\\quad T = T_b + \\beta(H - H_b),\\quad p = p_b\\left(\\frac{T}{T_b}\\right)^{-g_0/(\\beta R)}\\ \\text{or}\\ p_b\\,\\mathrm{e}^{-g_0(H - H_b)/(R T_b)},\\quad \\rho = \\frac{p}{RT},\\quad a = \\sqrt{\\kappa R T},\\quad \\mu = \\frac{\\beta_s T^{3/2}}{T + S},\\quad \\nu = \\frac{\\mu}{\\rho}',
  formula: standardAtmosphereAtPressureAltitude,
  domain: standardAtmosphereAtPressureAltitudeDomain,
  inputs: {
    pressureAltitude: { symbol: 'H_p', meaning: 'pressure altitude' },
  },
  outputs: {
    temperature: { symbol: 'T', unit: 'degC', meaning: 'temperature' },
    pressure: { symbol: 'p', unit: 'hPa', meaning: 'pressure' },
    density: { symbol: '\\rho', unit: 'kgPerM3', meaning: 'density' },
    speedOfSound: { symbol: 'a', unit: 'kt', meaning: 'speed of sound' },
    dynamicViscosity: { symbol: '\\mu', unit: 'PaS', meaning: 'dynamic viscosity' },
    kinematicViscosity: { symbol: '\\nu', unit: 'm2PerS', meaning: 'kinematic viscosity' },
    freeFall: { symbol: 'g', unit: 'mps2', meaning: 'acceleration of free fall' },
    temperatureRatio: { symbol: '\\theta', unit: 'ratio', meaning: 'temperature over that at mean sea level' },
    pressureRatio: { symbol: '\\delta', unit: 'ratio', meaning: 'pressure over that at mean sea level' },
    densityRatio: { symbol: '\\sigma', unit: 'ratio', meaning: 'density over that at mean sea level' },
    rootOfDensityRatio: { symbol: '\\sqrt\\sigma', unit: 'ratio', meaning: 'square root of the density ratio' },
    viscosityRatio: { symbol: '\\mu/\\mu_0', unit: 'ratio', meaning: 'dynamic viscosity over that at mean sea level' },
  },
  citations: [
    { source: 'iso-2533', locator: '2.3, formulas (7), (11) to (14), (21) to (23)', access: 'read' },
    { source: 'icao-7488', locator: 'constants and layers of the standard atmosphere', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof standardAtmosphereAtPressureAltitude>;

export const standardAtmosphereAtPressureRecord = {
  id: 'atmosphere.standard-atmosphere-at-pressure',
  title: 'Standard atmosphere at a pressure',
  equation:
    'p(H) = p_s,\\quad T = T_b + \\beta(H - H_b),\\quad p = p_b\\left(\\frac{T}{T_b}\\right)^{-g_0/(\\beta R)}\\ \\text{or}\\ p_b\\,\\mathrm{e}^{-g_0(H - H_b)/(R T_b)},\\quad \\rho = \\frac{p}{RT},\\quad a = \\sqrt{\\kappa R T},\\quad \\mu = \\frac{\\beta_s T^{3/2}}{T + S},\\quad \\nu = \\frac{\\mu}{\\rho}',
  formula: standardAtmosphereAtPressure,
  domain: standardAtmosphereAtPressureDomain,
  inputs: {
    pressure: { symbol: 'p_s', meaning: 'static pressure' },
  },
  outputs: {
    temperature: { symbol: 'T', unit: 'degC', meaning: 'temperature' },
    pressure: { symbol: 'p', unit: 'hPa', meaning: 'pressure' },
    density: { symbol: '\\rho', unit: 'kgPerM3', meaning: 'density' },
    speedOfSound: { symbol: 'a', unit: 'kt', meaning: 'speed of sound' },
    dynamicViscosity: { symbol: '\\mu', unit: 'PaS', meaning: 'dynamic viscosity' },
    kinematicViscosity: { symbol: '\\nu', unit: 'm2PerS', meaning: 'kinematic viscosity' },
    freeFall: { symbol: 'g', unit: 'mps2', meaning: 'acceleration of free fall' },
    temperatureRatio: { symbol: '\\theta', unit: 'ratio', meaning: 'temperature over that at mean sea level' },
    pressureRatio: { symbol: '\\delta', unit: 'ratio', meaning: 'pressure over that at mean sea level' },
    densityRatio: { symbol: '\\sigma', unit: 'ratio', meaning: 'density over that at mean sea level' },
    rootOfDensityRatio: { symbol: '\\sqrt\\sigma', unit: 'ratio', meaning: 'square root of the density ratio' },
    viscosityRatio: { symbol: '\\mu/\\mu_0', unit: 'ratio', meaning: 'dynamic viscosity over that at mean sea level' },
  },
  citations: [
    { source: 'iso-2533', locator: '2.3, formulas (7), (11) to (14), (21) to (23)', access: 'read' },
    { source: 'icao-7488', locator: 'constants and layers of the standard atmosphere', access: 'read' },
    { source: 'groundroll', locator: 'inverse of the pressure law of each layer', access: 'derived' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof standardAtmosphereAtPressure>;
