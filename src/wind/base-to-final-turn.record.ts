import type { FormulaRecord } from '../sources/index.ts';
import {
  baseToFinalBank,
  baseToFinalBankDomain,
  baseToFinalTurn,
  baseToFinalTurnDomain,
} from './base-to-final-turn.ts';
import { baseToFinalVerdict, baseToFinalVerdictDomain } from './base-to-final-verdict.ts';

const turnInWind = {
  trueAirspeed: { symbol: 'V', meaning: 'true airspeed' },
  headwind: { symbol: 'H', meaning: 'wind along the runway, headwind positive; r_x = -H/V' },
  crosswind: { symbol: 'X', meaning: 'wind across the runway, from the right positive; r_y = X/V, to the left -X/V' },
  circuit: { symbol: '\\text{circuit}', meaning: 'side of the turns' },
};

export const baseToFinalTurnRecord = {
  id: 'wind.base-to-final-turn',
  title: 'Base-to-final turn in the wind',
  equation:
    '\\Delta = \\tfrac{\\pi}{2} + \\arcsin r_x + \\arcsin r_y, \\quad d_y = R\\left(\\sqrt{1 - r_y^2} + r_x + r_y\\Delta\\right), \\quad d_x = R\\left(\\sqrt{1 - r_x^2} + r_y + r_x\\Delta\\right), \\quad R = \\frac{V^2}{g\\tan\\varphi}',
  formula: baseToFinalTurn,
  domain: baseToFinalTurnDomain,
  inputs: { ...turnInWind, bank: { symbol: '\\varphi', meaning: 'angle of bank' } },
  outputs: {
    headingChange: { symbol: '\\Delta', unit: 'deg', meaning: 'change of heading' },
    time: { symbol: '\\Delta R/V', unit: 's', meaning: 'time of the turn' },
    lateralDistance: { symbol: 'd_y', unit: 'm', meaning: 'distance taken across the centreline' },
    distanceAlongRunway: { symbol: 'd_x', unit: 'm', meaning: 'distance taken along the runway direction' },
    distanceInCalm: { symbol: 'R', unit: 'm', meaning: 'what the turn takes in calm' },
    overshoot: { symbol: 'd_y - R', unit: 'm', meaning: 'distance beyond the centreline when begun as for calm' },
  },
  citations: [
    { source: 'groundroll', locator: 'circular turn in the air carried by a uniform wind', access: 'derived' },
    { source: 'faa-afh', locator: 'ch. 5, base-to-final turn: overshoot with the wind from behind', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof baseToFinalTurn>;

export const baseToFinalBankRecord = {
  id: 'wind.base-to-final-bank',
  title: 'Bank that ends the base-to-final turn on the centreline',
  equation: '\\tan\\varphi = \\frac{V^2}{g d}\\left(\\sqrt{1 - r_y^2} + r_x + r_y\\Delta\\right)',
  formula: baseToFinalBank,
  domain: baseToFinalBankDomain,
  inputs: {
    ...turnInWind,
    startDistance: { symbol: 'd', meaning: 'distance from the extended centreline at which the turn is begun' },
  },
  outputs: { result: { symbol: '\\varphi', unit: 'deg', meaning: 'angle of bank' } },
  citations: [
    { source: 'groundroll', locator: 'circular turn in the air carried by a uniform wind', access: 'derived' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof baseToFinalBank>;

export const baseToFinalVerdictRecord = {
  id: 'wind.base-to-final-verdict',
  title: 'Bank of the base-to-final turn against its limit',
  equation: '\\varphi \\le \\varphi_{\\max}',
  formula: baseToFinalVerdict,
  domain: baseToFinalVerdictDomain,
  inputs: {
    ...turnInWind,
    startDistance: { symbol: 'd', meaning: 'distance from the extended centreline at which the turn is begun' },
    greatestBank: { symbol: '\\varphi_{\\max}', meaning: 'greatest bank accepted' },
  },
  outputs: {
    verdict: { symbol: '\\text{verdict}', unit: 'text', meaning: 'within or outside' },
    bank: { symbol: '\\varphi', unit: 'deg', meaning: 'angle of bank, where it is within' },
  },
  citations: [
    {
      source: 'faa-afh',
      locator: 'ch. 5, base-to-final turn: bank of at most 30°, otherwise go around',
      access: 'read',
    },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof baseToFinalVerdict>;
