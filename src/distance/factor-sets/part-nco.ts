import type { FactorSet } from './factor-set.ts';

/** Private flights in Europe: the rule asks for adequate performance and names no number. */
export const partNco: FactorSet = {
  id: 'part-nco',
  title: 'EASA Part-NCO',
  edition: 'Regulation (EU) No 965/2012, Annex VII',
  scope: 'non-commercial flights; performance must be adequate, no numeric factor is given',
  hasSafetyFactor: false,
  takeoff: {
    surfaces: [],
    safety: [
      {
        needs: 'nothing',
        tests: [{ id: 'part-nco-takeoff', against: 'TORA', factor: 1, locator: 'NCO.POL.110', access: 'second-hand' }],
      },
    ],
  },
  landing: {
    surfaces: [],
    safety: { id: 'part-nco-landing', factor: 1, locator: 'NCO.POL.110', access: 'second-hand' },
  },
};
