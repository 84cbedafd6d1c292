import type { FormulaRecord } from '../sources/index.ts';
import { rollWithSurface, rollWithSurfaceDomain } from './roll-on-surface.ts';

export const rollWithSurfaceRecord = {
  id: 'distance.roll-with-surface',
  title: 'Ground roll on a surface whose factor is for the whole distance',
  equation: 'R = R_0 + (k - 1)\\,D_0',
  formula: rollWithSurface,
  domain: rollWithSurfaceDomain,
  inputs: {
    groundRoll: { symbol: 'R_0', meaning: 'ground roll without the surface' },
    distance: { symbol: 'D_0', meaning: 'whole distance without the surface' },
    factor: { symbol: 'k', meaning: 'correction factor of the surface or slope' },
  },
  outputs: { result: { symbol: 'R', unit: 'm', meaning: 'ground roll on the surface' } },
  citations: [
    {
      source: 'groundroll',
      locator: 'a surface changes the roll only, so that its whole increment is rolled',
      access: 'derived',
    },
  ],
  homogeneous: true,
  checkValues: {
    nonePublished:
      'a derivation of this library; no source prints a ground roll beside a factor for the whole distance',
  },
} satisfies FormulaRecord<typeof rollWithSurface>;
