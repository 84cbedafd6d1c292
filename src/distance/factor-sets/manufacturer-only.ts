import type { FactorSet } from './factor-set.ts';

/** Nothing but the flight manual: what it does not say has no figure. */
export const manufacturerOnly: FactorSet = {
  id: 'manufacturer-only',
  title: 'Flight manual alone',
  edition: 'none',
  scope: 'corrections of the flight manual only; no authority, no margin',
  hasSafetyFactor: false,
  takeoff: {
    surfaces: [],
    safety: [
      {
        needs: 'nothing',
        tests: [{ id: 'manufacturer-takeoff', against: 'TORA', factor: 1, locator: 'no factor', access: 'policy' }],
      },
    ],
  },
  landing: {
    surfaces: [],
    safety: { id: 'manufacturer-landing', factor: 1, locator: 'no factor', access: 'policy' },
  },
};
