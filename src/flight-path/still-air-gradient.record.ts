import type { FormulaRecord } from '../sources/index.ts';
import { stillAirGradient, stillAirGradientDomain } from './still-air-gradient.ts';

export const stillAirGradientRecord = {
  id: 'flight-path.still-air-gradient',
  title: 'Still-air gradient',
  equation: '\\gamma = \\tan\\left(\\arcsin\\frac{ROC}{V}\\right)',
  formula: stillAirGradient,
  domain: stillAirGradientDomain,
  inputs: {
    rateOfClimb: { symbol: 'ROC', meaning: 'rate of climb' },
    trueAirspeed: { symbol: 'V', meaning: 'true airspeed' },
  },
  outputs: { result: { symbol: '\\gamma', unit: 'ratio', meaning: 'still-air gradient' } },
  citations: [
    { source: 'mathematics', locator: 'right triangle of airspeed and rate of climb', access: 'derived' },
    { source: 'faa-phak', locator: 'ch. 11, climb performance', access: 'read' },
  ],
  homogeneous: true,
  checkValues: {
    nonePublished: 'sources print the gradient over the ground, or the sine for the tangent without saying so',
  },
} satisfies FormulaRecord<typeof stillAirGradient>;
