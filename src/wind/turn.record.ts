import type { FormulaRecord } from '../sources/index.ts';
import {
  bankAroundPoint,
  bankAroundPointDomain,
  rateOfTurn,
  rateOfTurnDomain,
  turnRadius,
  turnRadiusDomain,
  turnTime,
  turnTimeDomain,
} from './turn.ts';

export const turnRadiusRecord = {
  id: 'wind.turn-radius',
  title: 'Radius of a level turn',
  equation: 'R = \\frac{V^2}{g\\tan\\varphi}',
  formula: turnRadius,
  domain: turnRadiusDomain,
  inputs: {
    trueAirspeed: { symbol: 'V', meaning: 'true airspeed' },
    bank: { symbol: '\\varphi', meaning: 'angle of bank' },
  },
  outputs: { result: { symbol: 'R', unit: 'm', meaning: 'radius through the air' } },
  citations: [
    { source: 'faa-phak', locator: 'ch. 5, radius of turn', access: 'read' },
    { source: 'mathematics', locator: 'equilibrium in a level, coordinated turn', access: 'derived' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof turnRadius>;

export const rateOfTurnRecord = {
  id: 'wind.rate-of-turn',
  title: 'Rate of turn',
  equation: '\\omega = \\frac{g\\tan\\varphi}{V}',
  formula: rateOfTurn,
  domain: rateOfTurnDomain,
  inputs: {
    trueAirspeed: { symbol: 'V', meaning: 'true airspeed' },
    bank: { symbol: '\\varphi', meaning: 'angle of bank' },
  },
  outputs: { result: { symbol: '\\omega', unit: 'degPerS', meaning: 'rate of turn' } },
  citations: [
    { source: 'faa-phak', locator: 'ch. 5, rate of turn', access: 'read' },
    { source: 'mathematics', locator: 'equilibrium in a level, coordinated turn', access: 'derived' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof rateOfTurn>;

export const turnTimeRecord = {
  id: 'wind.turn-time',
  title: 'Time of a turn',
  equation: 't = \\Delta\\psi\\,\\frac{V}{g\\tan\\varphi}',
  formula: turnTime,
  domain: turnTimeDomain,
  inputs: {
    trueAirspeed: { symbol: 'V', meaning: 'true airspeed' },
    bank: { symbol: '\\varphi', meaning: 'angle of bank' },
    headingChange: { symbol: '\\Delta\\psi', meaning: 'change of heading' },
  },
  outputs: { result: { symbol: 't', unit: 's', meaning: 'time' } },
  citations: [
    { source: 'faa-phak', locator: 'ch. 5, rate of turn: time of a full turn', access: 'read' },
    { source: 'mathematics', locator: 'turn at a constant rate', access: 'derived' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof turnTime>;

export const bankAroundPointRecord = {
  id: 'wind.bank-around-point',
  title: 'Bank in a turn around a point, with the wind straight ahead or behind',
  equation: '\\varphi = \\arctan\\frac{V_G^2}{gR}',
  formula: bankAroundPoint,
  domain: bankAroundPointDomain,
  inputs: {
    groundSpeed: { symbol: 'V_G', meaning: 'ground speed where heading and track agree' },
    radius: { symbol: 'R', meaning: 'radius over the ground' },
  },
  outputs: { result: { symbol: '\\varphi', unit: 'deg', meaning: 'angle of bank' } },
  citations: [
    { source: 'faa-afh', locator: 'ch. 7, ground reference manoeuvres: turns around a point', access: 'read' },
    { source: 'mathematics', locator: 'turn at a constant radius over the ground', access: 'derived' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof bankAroundPoint>;
