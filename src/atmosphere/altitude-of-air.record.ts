import type { FormulaRecord } from '../sources/index.ts';
import {
  densityAltitudeFromDensity,
  densityAltitudeFromDensityDomain,
  pressureAltitudeFromPressure,
  pressureAltitudeFromPressureDomain,
} from './altitude-of-air.ts';

export const pressureAltitudeFromPressureRecord = {
  id: 'atmosphere.pressure-altitude-from-pressure',
  title: 'Pressure altitude from a pressure',
  equation:
    'H = H_b + \\frac{T_b}{\\beta}\\left(\\left(\\frac{p}{p_b}\\right)^{-\\beta R/g_0} - 1\\right)\\ \\text{or}\\ H_b - \\frac{R T_b}{g_0}\\ln\\frac{p}{p_b}',
  formula: pressureAltitudeFromPressure,
  domain: pressureAltitudeFromPressureDomain,
  inputs: {
    pressure: { symbol: 'p', meaning: 'static pressure' },
  },
  outputs: { result: { symbol: 'H', unit: 'ftPA', meaning: 'pressure altitude' } },
  citations: [
    { source: 'iso-2533', locator: '2.3, formulas (12) and (13)', access: 'read' },
    { source: 'icao-7488', locator: 'constants of the standard atmosphere', access: 'read' },
    { source: 'groundroll', locator: 'inverse of the pressure law of each layer', access: 'derived' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof pressureAltitudeFromPressure>;

export const densityAltitudeFromDensityRecord = {
  id: 'atmosphere.density-altitude-from-density',
  title: 'Density altitude from a density',
  equation:
    'H = H_b + \\frac{T_b}{\\beta}\\left(\\left(\\frac{\\rho}{\\rho_b}\\right)^{-1/(g_0/(\\beta R) + 1)} - 1\\right)\\ \\text{or}\\ H_b - \\frac{R T_b}{g_0}\\ln\\frac{\\rho}{\\rho_b}',
  formula: densityAltitudeFromDensity,
  domain: densityAltitudeFromDensityDomain,
  inputs: {
    density: { symbol: '\\rho', meaning: 'density of the air' },
  },
  outputs: { result: { symbol: 'H', unit: 'ftDA', meaning: 'density altitude' } },
  citations: [
    { source: 'iso-2533', locator: '2.3, formulas (12) to (14)', access: 'read' },
    { source: 'icao-7488', locator: 'constants of the standard atmosphere', access: 'read' },
    { source: 'groundroll', locator: 'inverse of the density law of each layer', access: 'derived' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof densityAltitudeFromDensity>;
