import type { FormulaRecord } from '../sources/index.ts';
import {
  altitudeRestrictionGradient,
  altitudeRestrictionGradientDomain,
  procedureClimbGradientCivil,
  procedureClimbGradientDomain,
  procedureClimbGradientMilitary,
} from './procedure-climb-gradient.ts';

const overObstacle = {
  obstacleTop: { symbol: 'O', meaning: 'top of the obstacle above mean sea level' },
  startElevation: { symbol: 'E', meaning: 'start of the climb above mean sea level' },
  distance: { symbol: 'D', meaning: 'distance from the departure end of the runway' },
} as const;

export const procedureClimbGradientCivilRecord = {
  id: 'flight-path.procedure-climb-gradient-civil',
  title: 'Climb gradient of a civil instrument departure (United States)',
  equation: 'CG = \\frac{O - E}{0.76\\,D}',
  formula: procedureClimbGradientCivil,
  domain: procedureClimbGradientDomain,
  inputs: overObstacle,
  outputs: { result: { symbol: 'CG', unit: 'ftPerNM', meaning: 'climb gradient of the procedure' } },
  citations: [{ source: 'faa-iph', locator: 'ch. 1, design criteria: standard formula', access: 'read' }],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof procedureClimbGradientCivil>;

export const procedureClimbGradientMilitaryRecord = {
  id: 'flight-path.procedure-climb-gradient-military',
  title: 'Climb gradient of a military instrument departure (United States)',
  equation: 'CG = \\frac{48\\,D + O - E}{D}',
  formula: procedureClimbGradientMilitary,
  domain: procedureClimbGradientDomain,
  inputs: overObstacle,
  outputs: { result: { symbol: 'CG', unit: 'ftPerNM', meaning: 'climb gradient of the procedure' } },
  citations: [{ source: 'faa-iph', locator: 'ch. 1, design criteria: formula for military use only', access: 'read' }],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof procedureClimbGradientMilitary>;

export const altitudeRestrictionGradientRecord = {
  id: 'flight-path.altitude-restriction-gradient',
  title: 'Climb gradient to an altitude restriction (United States)',
  equation: 'CG = \\frac{A - E}{D}',
  formula: altitudeRestrictionGradient,
  domain: altitudeRestrictionGradientDomain,
  inputs: {
    altitude: { symbol: 'A', meaning: 'altitude to be reached above mean sea level' },
    startElevation: { symbol: 'E', meaning: 'start of the climb above mean sea level' },
    distance: { symbol: 'D', meaning: 'distance from the departure end of the runway' },
  },
  outputs: { result: { symbol: 'CG', unit: 'ftPerNM', meaning: 'climb gradient of the procedure' } },
  citations: [
    { source: 'faa-iph', locator: 'ch. 1, design criteria: altitude restriction', access: 'read' },
    { source: 'faa-8260-rnavdep', locator: 'par. 12e', access: 'read' },
  ],
  homogeneous: true,
  checkValues: 'published',
} satisfies FormulaRecord<typeof altitudeRestrictionGradient>;
