import type { FactorSet } from './factor-set.ts';

/** Relations that the FAA teaches, for what a table does not carry itself; bounds where the handbook says "at least". */
export const faaHandbook: FactorSet = {
  id: 'faa-handbook',
  title: 'FAA handbook relations',
  edition: 'FAA-H-8083-25, chapter on performance',
  scope: 'teaching relations for mass and wind; no surface, no slope, no margin',
  hasSafetyFactor: false,
  takeoff: {
    surfaces: [],
    mass: {
      id: 'faa-takeoff-mass',
      factorPerStep: 1.21,
      step: 10,
      kind: 'at-least',
      locator: 'each 10 % of mass, at least 21 %',
      access: 'read',
    },
    tailwind: {
      id: 'faa-takeoff-tailwind',
      factorPerStep: 1.21,
      step: 10,
      locator: 'tailwind of 10 % of the take-off speed, 21 %',
      access: 'read',
    },
    safety: [
      {
        needs: 'nothing',
        tests: [{ id: 'faa-takeoff', against: 'TORA', factor: 1, locator: 'no factor', access: 'read' }],
      },
    ],
  },
  landing: {
    surfaces: [],
    mass: { id: 'faa-landing-mass', factorPerStep: 1.1, step: 10, locator: 'each 10 % of mass, 10 %', access: 'read' },
    safety: { id: 'faa-landing', factor: 1, locator: 'no factor', access: 'read' },
  },
};
