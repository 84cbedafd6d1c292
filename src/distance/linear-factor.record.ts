import type { FormulaRecord } from '../sources/index.ts';
import {
  printedLawFactor,
  printedLawFactorDomain,
  slopeFactor,
  slopeFactorDomain,
  windFactor,
  windFactorDomain,
} from './linear-factor.ts';

export const windFactorRecord = {
  id: 'distance.wind-factor',
  title: 'Linear wind factor',
  equation: 'k = 1 + \\frac{p\\,W}{100}',
  formula: windFactor,
  domain: windFactorDomain,
  inputs: {
    wind: { symbol: 'W', meaning: 'wind component used, as an amount' },
    percentPerKnot: { symbol: 'p', meaning: 'change of the distance for each knot' },
  },
  outputs: { result: { symbol: 'k', unit: 'ratio', meaning: 'correction factor' } },
  citations: [
    {
      source: 'light-aircraft-handbook',
      locator: 'wind notes of the distance tables, linear in the wind',
      access: 'second-hand',
    },
    { source: 'faa-test-figures', locator: 'Figure 38, 10 % for each 4 kt of headwind', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof windFactor>;

export const slopeFactorRecord = {
  id: 'distance.slope-factor',
  title: 'Linear slope factor',
  equation: 'k = 1 + \\frac{p\\,s}{100}',
  formula: slopeFactor,
  domain: slopeFactorDomain,
  inputs: {
    slope: { symbol: 's', meaning: 'slope, as an amount' },
    percentPerPercent: { symbol: 'p', meaning: 'change of the distance for each percent of slope' },
  },
  outputs: { result: { symbol: 'k', unit: 'ratio', meaning: 'correction factor' } },
  citations: [
    { source: 'eu-965-2012', locator: 'AMC2 CAT.POL.A.305, 5 % for each 1 % of upslope', access: 'read' },
    { source: 'uk-leaflet', locator: 'table of factors, 10 % for 2 % of slope', access: 'second-hand' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof slopeFactor>;

export const printedLawFactorRecord = {
  id: 'distance.printed-law-factor',
  title: "Linear factor of a manual's own law",
  equation: 'k = 1 + \\frac{p\\,n}{100}',
  formula: printedLawFactor,
  domain: printedLawFactorDomain,
  inputs: {
    percentPerStep: { symbol: 'p', meaning: 'change of the distance for each step' },
    steps: { symbol: 'n', meaning: 'number of steps' },
  },
  outputs: { result: { symbol: 'k', unit: 'ratio', meaning: 'correction factor' } },
  citations: [
    { source: 'trade-practice', locator: 'percentages of a manual are read in proportion', access: 'common-practice' },
  ],
  homogeneous: true,
  checkValues: {
    nonePublished: 'a straight line; the same arithmetic as the wind factor, whose published examples are checked',
  },
} satisfies FormulaRecord<typeof printedLawFactor>;
