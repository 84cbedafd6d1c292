import type { FactorSet } from './factor-set.ts';

/** Performance class B of Regulation (EU) No 965/2012; binding for commercial operations, a private pilot's choice otherwise. */
export const easaClassB: FactorSet = {
  id: 'easa-class-b',
  title: 'EASA performance class B',
  edition: 'Regulation (EU) No 965/2012, Part-CAT, as seen in 2024',
  scope: 'propeller aeroplanes of at most 9 passenger seats and 5 700 kg; grass up to 20 cm on firm soil',
  takeoff: {
    surfaces: [
      { id: 'easa-b-takeoff-grass-dry', condition: 'dry grass up to 20 cm on firm soil', factor: 1.2, kind: 'value', basis: 'total distance', covers: ['grass'], replaces: [], locator: 'AMC1 CAT.POL.A.305 Table 1', access: 'second-hand' },
      { id: 'easa-b-takeoff-grass-wet', condition: 'wet grass up to 20 cm on firm soil', factor: 1.3, kind: 'value', basis: 'total distance', covers: ['grass', 'wet'], replaces: ['easa-b-takeoff-grass-dry'], locator: 'AMC1 CAT.POL.A.305 Table 1', access: 'second-hand' },
      { id: 'easa-b-takeoff-paved-wet', condition: 'wet paved', factor: 1, kind: 'value', basis: 'total distance', covers: ['wet'], only: { kind: 'paved' }, replaces: [], locator: 'AMC1 CAT.POL.A.305 Table 1', access: 'second-hand' },
    ],
    slope: { id: 'easa-b-takeoff-slope', percentPerPercent: 5, upTo: 2, beyond: 'no figure', locator: 'AMC2 CAT.POL.A.305', access: 'read' },
    safety: [
      { needs: 'nothing', tests: [{ id: 'easa-b-takeoff-tora', against: 'TORA', factor: 1.25, locator: 'CAT.POL.A.305(b)(1)', access: 'read' }] },
      {
        needs: 'stopway or clearway',
        tests: [
          { id: 'easa-b-takeoff-tora-unfactored', against: 'TORA', factor: 1, locator: 'CAT.POL.A.305(b)(2)(i)', access: 'read' },
          { id: 'easa-b-takeoff-toda', against: 'TODA', factor: 1.15, locator: 'CAT.POL.A.305(b)(2)(ii)', access: 'read' },
          { id: 'easa-b-takeoff-asda', against: 'ASDA', factor: 1.3, locator: 'CAT.POL.A.305(b)(2)(iii)', access: 'read' },
        ],
      },
    ],
  },
  landing: {
    surfaces: [
      { id: 'easa-b-landing-grass', condition: 'grass up to 20 cm on firm soil', factor: 1.15, kind: 'value', basis: 'total distance', covers: ['grass'], replaces: [], locator: 'AMC1 CAT.POL.A.330', access: 'second-hand' },
      { id: 'easa-b-landing-wet', condition: 'wet runway', factor: 1.15, kind: 'value', basis: 'total distance', covers: ['wet'], replaces: [], locator: 'CAT.POL.A.335(a)', access: 'read' },
      { id: 'easa-b-landing-very-short-wet-grass', condition: 'very short wet grass on firm subsoil', factor: 1.6, kind: 'at-most', basis: 'total distance', covers: ['grass', 'wet'], only: { kind: 'grass', length: 'very short' }, replaces: ['easa-b-landing-grass', 'easa-b-landing-wet'], locator: 'GM1 CAT.POL.A.335', access: 'read' },
    ],
    slope: { id: 'easa-b-landing-slope', percentPerPercent: 5, upTo: 2, beyond: 'no figure', locator: 'AMC2 CAT.POL.A.330 (read for .430)', access: 'second-hand' },
    safety: { id: 'easa-b-landing-lda', factor: 1 / 0.7, locator: 'CAT.POL.A.330(a): full stop within 70 % of the LDA', access: 'read' },
  },
};
