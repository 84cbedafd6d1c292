import type { FormulaRecord } from '../sources/index.ts';
import { magneticField, magneticFieldDomain } from './field.ts';

export const magneticFieldRecord = {
  id: 'magnetism.field',
  title: 'Magnetic field by the World Magnetic Model',
  equation:
    'H = \\sqrt{X^2 + Y^2}, \\quad F = \\sqrt{H^2 + Z^2}, \\quad I = \\operatorname{atan2}(Z, H), \\quad \\dot H = \\frac{X \\dot X + Y \\dot Y}{H}, \\quad \\dot F = \\frac{X \\dot X + Y \\dot Y + Z \\dot Z}{F}, \\quad \\dot I = \\frac{H \\dot Z - Z \\dot H}{F^2}, \\quad (X, Y, Z) = f(\\varphi, \\lambda, h, t)',
  formula: magneticField,
  domain: magneticFieldDomain,
  inputs: {
    latitude: { symbol: '\\varphi', meaning: 'latitude, north positive' },
    longitude: { symbol: '\\lambda', meaning: 'longitude, east positive' },
    date: { symbol: 't', meaning: 'decimal year, UTC' },
    elevation: { symbol: 'h', meaning: 'elevation, standing in for the height above the ellipsoid' },
  },
  outputs: {
    north: { symbol: 'X', unit: 'nT', meaning: 'component towards true north' },
    east: { symbol: 'Y', unit: 'nT', meaning: 'component towards true east' },
    down: { symbol: 'Z', unit: 'nT', meaning: 'component straight down' },
    horizontalIntensity: { symbol: 'H', unit: 'nT', meaning: 'horizontal intensity' },
    totalIntensity: { symbol: 'F', unit: 'nT', meaning: 'total intensity' },
    inclination: { symbol: 'I', unit: 'deg', meaning: 'dip below the horizontal' },
    northChange: { symbol: '\\dot X', unit: 'nTPerYear', meaning: 'change of the north component in a year' },
    eastChange: { symbol: '\\dot Y', unit: 'nTPerYear', meaning: 'change of the east component in a year' },
    downChange: { symbol: '\\dot Z', unit: 'nTPerYear', meaning: 'change of the downward component in a year' },
    horizontalIntensityChange: {
      symbol: '\\dot H',
      unit: 'nTPerYear',
      meaning: 'change of the horizontal intensity in a year',
    },
    totalIntensityChange: { symbol: '\\dot F', unit: 'nTPerYear', meaning: 'change of the total intensity in a year' },
    inclinationChange: { symbol: '\\dot I', unit: 'degPerYear', meaning: 'change of the inclination in a year' },
    date: { symbol: 't', unit: 'year', meaning: 'the date asked for' },
    model: { symbol: 'f', unit: 'data', meaning: 'which model, when it holds, and its standard deviations' },
  },
  citations: [
    { source: 'wmm2025', locator: 'coefficients and test values', access: 'read' },
    { source: 'wmm2025', locator: 'error model: standard deviations of the field', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof magneticField>;
