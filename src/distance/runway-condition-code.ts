import type { Citation } from '../sources/index.ts';

/** A runway condition code: 6 for dry, 0 for no braking to speak of. It exists for paved runways only. */
export type RunwayConditionCode = 0 | 1 | 2 | 3 | 4 | 5 | 6;

/** What a runway condition code stands for. */
export interface RunwayConditionMeaning {
  /** What lies on the runway, in ICAO words for contaminants. */
  readonly surface: string;
  /** What pilots report of the braking action. */
  readonly braking: string;
}

/**
 * The meaning of each runway condition code.
 *
 * @example
 * runwayConditionCodes[5].braking // => 'good'
 * runwayConditionCodes[1].surface // => 'ice'
 */
export const runwayConditionCodes: Readonly<Record<RunwayConditionCode, RunwayConditionMeaning>> = {
  6: { surface: 'dry', braking: 'none reported' },
  5: { surface: 'frost, wet, or up to 3 mm of slush, dry snow or wet snow', braking: 'good' },
  4: { surface: 'compacted snow at −15 °C or colder', braking: 'good to medium' },
  3: { surface: 'slippery when wet, more than 3 mm of snow, or compacted snow above −15 °C', braking: 'medium' },
  2: { surface: 'water or slush deeper than 3 mm', braking: 'medium to poor' },
  1: { surface: 'ice', braking: 'poor' },
  0: { surface: 'wet ice, or slush, water or snow on ice or compacted snow', braking: 'nil' },
};

/** Where the meanings stand. */
export const runwayConditionCodeCitation: Citation = {
  source: 'faa-rcam',
  locator: 'version for pilots, all rows',
  access: 'read',
};
