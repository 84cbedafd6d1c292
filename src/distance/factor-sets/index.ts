import { easaClassB } from './easa-class-b.ts';
import { faaHandbook } from './faa-handbook.ts';
import type { FactorSet } from './factor-set.ts';
import { manufacturerOnly } from './manufacturer-only.ts';
import { partNco } from './part-nco.ts';
import { ukLeaflet } from './uk-leaflet.ts';

/** The factor sets by the word that requests name them with. */
export const factorSets = {
  'easa-class-b': easaClassB,
  'uk-light-aeroplane-leaflet': ukLeaflet,
  'part-nco': partNco,
  'faa-handbook': faaHandbook,
  'manufacturer-only': manufacturerOnly,
} as const satisfies Record<string, FactorSet>;

/** The word that names a factor set in a request. */
export type FactorSetId = keyof typeof factorSets;
