import type { FormulaRecord } from '../sources/index.ts';
import {
  crabAngle,
  crabAngleDomain,
  sideslipAngle,
  sideslipAngleDomain,
  sideslipBank,
  sideslipBankDomain,
} from './wing-low.ts';

const inputs = {
  crosswind: { symbol: 'X', meaning: 'wind across the runway, from the right positive' },
  trueAirspeed: { symbol: 'V', meaning: 'true airspeed' },
};

export const crabAngleRecord = {
  id: 'wind.crab-angle',
  title: 'Crab angle on the approach',
  equation: '\\alpha = \\arcsin\\frac{X}{V}',
  formula: crabAngle,
  domain: crabAngleDomain,
  inputs,
  outputs: { result: { symbol: '\\alpha', unit: 'deg', meaning: 'crab angle, nose to the right positive' } },
  citations: [
    { source: 'faa-afh', locator: 'ch. 9, crosswind approach: crab method', access: 'read' },
    { source: 'mathematics', locator: 'addition of velocities', access: 'derived' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof crabAngle>;

export const sideslipAngleRecord = {
  id: 'wind.sideslip-angle',
  title: 'Angle of sideslip of a wing-low approach',
  equation: '\\beta = \\arcsin\\frac{X}{V}',
  formula: sideslipAngle,
  domain: sideslipAngleDomain,
  inputs,
  outputs: { result: { symbol: '\\beta', unit: 'deg', meaning: 'angle of sideslip, air from the right positive' } },
  citations: [
    { source: 'faa-afh', locator: 'ch. 9, crosswind approach: wing-low method', access: 'read' },
    { source: 'mathematics', locator: 'addition of velocities', access: 'derived' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof sideslipAngle>;

export const sideslipBankRecord = {
  id: 'wind.sideslip-bank',
  title: 'Bank of a wing-low approach',
  equation: '\\sin\\varphi = \\frac{-C_{Y\\beta}\\,\\beta}{C_L}, \\qquad \\beta = \\arcsin\\frac{X}{V}',
  formula: sideslipBank,
  domain: sideslipBankDomain,
  inputs: {
    ...inputs,
    sideForceDerivative: { symbol: 'C_{Y\\beta}', meaning: 'side force derivative for each radian of sideslip' },
    liftCoefficient: { symbol: 'C_L', meaning: 'lift coefficient' },
  },
  outputs: { result: { symbol: '\\varphi', unit: 'deg', meaning: 'angle of bank, right wing low positive' } },
  citations: [
    { source: 'flight-dynamics-textbooks', locator: 'steady sideslip: balance of the side forces', access: 'recalled' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof sideslipBank>;
