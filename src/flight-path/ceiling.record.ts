import type { FormulaRecord } from '../sources/index.ts';
import {
  absoluteCeiling,
  absoluteCeilingDomain,
  rateAtDensityAltitude,
  rateAtDensityAltitudeDomain,
  serviceCeiling,
  serviceCeilingDomain,
} from './ceiling.ts';
import { timeToClimb, timeToClimbDomain } from './time-to-climb.ts';

const rateAtZero = { symbol: 'R_0', meaning: 'rate of climb at a density altitude of zero' } as const;
const ceiling = { symbol: 'H', meaning: 'absolute ceiling' } as const;

export const absoluteCeilingRecord = {
  id: 'flight-path.absolute-ceiling',
  title: 'Absolute ceiling, rate of climb falling linearly',
  equation: 'H = \\frac{H_s R_0}{R_0 - 100}',
  formula: absoluteCeiling,
  domain: absoluteCeilingDomain,
  inputs: { rateAtZero, serviceCeiling: { symbol: 'H_s', meaning: 'service ceiling' } },
  outputs: { result: { symbol: 'H', unit: 'ftDA', meaning: 'absolute ceiling' } },
  citations: [
    { source: 'college-climb-notes', locator: 'linear model of the rate of climb', access: 'read' },
    { source: 'faa-phak', locator: 'ch. 11 and glossary: the service ceiling leaves 100 ft/min', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof absoluteCeiling>;

export const serviceCeilingRecord = {
  id: 'flight-path.service-ceiling',
  title: 'Service ceiling, rate of climb falling linearly',
  equation: 'H_s = H\\left(1 - \\frac{100}{R_0}\\right)',
  formula: serviceCeiling,
  domain: serviceCeilingDomain,
  inputs: { rateAtZero, absoluteCeiling: ceiling },
  outputs: { result: { symbol: 'H_s', unit: 'ftDA', meaning: 'service ceiling' } },
  citations: [
    { source: 'college-climb-notes', locator: 'linear model of the rate of climb', access: 'read' },
    { source: 'faa-phak', locator: 'ch. 11 and glossary: the service ceiling leaves 100 ft/min', access: 'read' },
  ],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof serviceCeiling>;

export const rateAtDensityAltitudeRecord = {
  id: 'flight-path.rate-at-density-altitude',
  title: 'Rate of climb falling linearly to the absolute ceiling',
  equation: 'R = R_0\\left(1 - \\frac{h}{H}\\right)',
  formula: rateAtDensityAltitude,
  domain: rateAtDensityAltitudeDomain,
  inputs: {
    rateAtZero,
    absoluteCeiling: ceiling,
    densityAltitude: { symbol: 'h', meaning: 'density altitude climbed through' },
  },
  outputs: { result: { symbol: 'R', unit: 'ftPerMin', meaning: 'rate of climb' } },
  citations: [{ source: 'college-climb-notes', locator: 'linear model of the rate of climb', access: 'read' }],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof rateAtDensityAltitude>;

export const timeToClimbRecord = {
  id: 'flight-path.time-to-climb',
  title: 'Time to climb, rate of climb falling linearly',
  equation: 't = \\frac{H}{R_0}\\ln\\frac{H - h_1}{H - h_2}',
  formula: timeToClimb,
  domain: timeToClimbDomain,
  inputs: {
    rateAtZero,
    absoluteCeiling: ceiling,
    from: { symbol: 'h_1', meaning: 'density altitude at which the climb starts' },
    to: { symbol: 'h_2', meaning: 'density altitude at which the climb ends' },
  },
  outputs: { result: { symbol: 't', unit: 'min', meaning: 'time to climb' } },
  citations: [{ source: 'college-climb-notes', locator: 'example 1', access: 'read' }],
  homogeneous: false,
  checkValues: 'published',
} satisfies FormulaRecord<typeof timeToClimb>;
