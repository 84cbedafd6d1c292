import type { FormulaRecord } from '../sources/index.ts';
import { usabilityFactor, usabilityFactorDomain } from './usability-factor.ts';

export const usabilityFactorRecord = {
  id: 'wind.usability-factor',
  title: 'Usability factor (wind coverage)',
  equation: 'F = \\frac{N\\left(|X| \\le X_{\\max},\\ \\max(bT, T_G) \\le T_{\\max}\\right)}{N_{\\mathrm{counted}}}',
  formula: usabilityFactor,
  domain: usabilityFactorDomain,
  inputs: {
    directions: { symbol: '\\varphi_i', meaning: 'directions the wind blew from' },
    speeds: { symbol: 'W_i', meaning: 'mean speeds' },
    gusts: { symbol: 'G_i', meaning: 'speeds of the gusts' },
    runways: { symbol: '\\theta_j', meaning: 'directions of use' },
    crosswindLimit: { symbol: 'X_{\\max}', meaning: 'most crosswind' },
    tailwindLimit: { symbol: 'T_{\\max}', meaning: 'most tailwind' },
    tailwindShare: { symbol: 'b', meaning: 'share of a mean tailwind that is reckoned with' },
  },
  outputs: {
    observations: { symbol: 'N', unit: 'ratio', meaning: 'number of observations' },
    missing: { symbol: 'N_{\\mathrm{missing}}', unit: 'ratio', meaning: 'number without a speed' },
    counted: { symbol: 'N_{\\mathrm{counted}}', unit: 'ratio', meaning: 'number counted' },
    calm: { symbol: 'N_{\\mathrm{calm}}', unit: 'ratio', meaning: 'number of calms' },
    variable: { symbol: 'N_{\\mathrm{variable}}', unit: 'ratio', meaning: 'number without a direction' },
    within: {
      symbol: 'N_{\\mathrm{within}}',
      unit: 'ratio',
      meaning: 'number within the limits on at least one runway',
    },
    usabilityFactor: { symbol: 'F', unit: 'ratio', meaning: 'share within the limits on at least one runway' },
  },
  citations: [
    { source: 'icao-annex-14', locator: '3.1, usability factor', access: 'recalled' },
    { source: 'faa-150-5300-13', locator: 'wind coverage', access: 'second-hand' },
    {
      source: 'groundroll',
      locator: 'a wind without a direction counts in full as tailwind and crosswind; missing observations stand apart',
      access: 'policy',
    },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof usabilityFactor>;
