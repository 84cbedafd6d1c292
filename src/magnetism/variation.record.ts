import type { FormulaRecord } from '../sources/index.ts';
import { magneticVariation, magneticVariationDomain } from './variation.ts';

export const magneticVariationRecord = {
  id: 'magnetism.variation',
  title: 'Magnetic variation by the World Magnetic Model',
  equation:
    'D = \\operatorname{atan2}(Y, X), \\quad \\dot D = \\frac{X \\dot Y - Y \\dot X}{H^2}, \\quad H = \\sqrt{X^2 + Y^2}, \\quad \\sigma = \\sqrt{0.26^2 + (5417/H)^2}, \\quad (X, Y) = f(\\varphi, \\lambda, h, t)',
  formula: magneticVariation,
  domain: magneticVariationDomain,
  inputs: {
    latitude: { symbol: '\\varphi', meaning: 'latitude, north positive' },
    longitude: { symbol: '\\lambda', meaning: 'longitude, east positive' },
    date: { symbol: 't', meaning: 'decimal year, UTC' },
    elevation: { symbol: 'h', meaning: 'elevation, standing in for the height above the ellipsoid' },
  },
  outputs: {
    zone: { symbol: 'Z', unit: 'text', meaning: 'normal, caution or blackout zone' },
    variation: { symbol: 'D', unit: 'degEast', meaning: 'variation outside the blackout zone, east positive' },
    modelledDeclination: { symbol: 'D', unit: 'deg', meaning: 'declination of the model inside the blackout zone' },
    annualChange: { symbol: '\\dot D', unit: 'degEastPerYear', meaning: 'change of the declination in a year' },
    uncertainty: { symbol: '\\sigma', unit: 'deg', meaning: 'one standard deviation of the declination' },
    horizontalIntensity: { symbol: 'H', unit: 'nT', meaning: 'horizontal intensity of the field' },
    date: { symbol: 't', unit: 'year', meaning: 'the date asked for' },
    model: { symbol: 'f', unit: 'data', meaning: 'which model, and when it holds' },
  },
  citations: [
    { source: 'wmm2025', locator: 'coefficients and test values', access: 'read' },
    { source: 'wmm2025', locator: 'error model of the declination: 0.26 degrees and 5417/H', access: 'read' },
    { source: 'wmm2025', locator: 'blackout zone below 2000 nT, caution zone below 6000 nT', access: 'second-hand' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof magneticVariation>;
