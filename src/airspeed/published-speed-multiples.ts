import type { Citation } from '../sources/index.ts';
import type { Ratio } from '../units/index.ts';

/** A multiple of a stall speed that a rule or a handbook names; `stallSpeedMultiple` makes a speed of it. */
export interface PublishedSpeedMultiple extends Citation {
  /** Unique among all rows. */
  readonly id: string;
  readonly speed: 'rotation' | 'at 50 ft after take-off' | 'approach' | 'crosswind demonstrated';
  readonly sense: 'at least' | 'at most';
  readonly multiple: Ratio;
  /** Landing configuration, or that of the take-off. */
  readonly of: 'V_S0' | 'V_S1';
  /** Which aeroplanes, and what else the rule asks. */
  readonly condition: string;
}

/**
 * Multiples of a stall speed in rules and handbooks. They bound what an aeroplane was certificated with, or stand in
 * where a manual is silent; the manual's own speeds come first. All are calibrated airspeeds. Since Amendment 23-64 the
 * rule gives no figure for the approach.
 *
 * @example
 * publishedSpeedMultiples.find(({ id }) => id === 'afh-short-field')?.multiple // => 1.3
 */
export const publishedSpeedMultiples: readonly PublishedSpeedMultiple[] = [
  {
    id: 'cfr-23-51-a-2',
    source: 'cfr-14-23',
    locator: '23.51(a)(2), edition 2003',
    access: 'read',
    speed: 'rotation',
    sense: 'at least',
    multiple: 1 as Ratio,
    of: 'V_S1',
    condition: 'landplanes with one engine',
  },
  {
    id: 'cfr-23-51-b-1',
    source: 'cfr-14-23',
    locator: '23.51(b)(1), edition 2003',
    access: 'read',
    speed: 'at 50 ft after take-off',
    sense: 'at least',
    multiple: 1.2 as Ratio,
    of: 'V_S1',
    condition: 'aeroplanes with more engines; also 1.10 V_MC, and a speed shown to be safe',
  },
  {
    id: 'cfr-23-51-b-2',
    source: 'cfr-14-23',
    locator: '23.51(b)(2), edition 2003',
    access: 'read',
    speed: 'at 50 ft after take-off',
    sense: 'at least',
    multiple: 1.2 as Ratio,
    of: 'V_S1',
    condition: 'aeroplanes with one engine; also a speed shown to be safe',
  },
  {
    id: 'cfr-23-73-a',
    source: 'cfr-14-23',
    locator: '23.73(a), before Amendment 23-64',
    access: 'recalled',
    speed: 'approach',
    sense: 'at least',
    multiple: 1.3 as Ratio,
    of: 'V_S0',
    condition: 'piston engines, up to 6000 lb; also V_MC',
  },
  {
    id: 'afh-short-field',
    source: 'faa-afh',
    locator: 'ch. 9, p. 9-21 of edition C',
    access: 'read',
    speed: 'approach',
    sense: 'at most',
    multiple: 1.3 as Ratio,
    of: 'V_S0',
    condition: 'final approach to a short field where the maker gives no speed',
  },
  {
    id: 'cfr-23-233-a',
    source: 'cfr-14-23',
    locator: '23.233(a), to Amendment 23-63',
    access: 'read',
    speed: 'crosswind demonstrated',
    sense: 'at least',
    multiple: 0.2 as Ratio,
    of: 'V_S0',
    condition: 'component at 90°; a certification minimum, no limit of the aeroplane',
  },
];
