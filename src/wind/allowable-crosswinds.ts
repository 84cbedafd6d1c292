import type { Access, SourceId } from '../sources/index.ts';
import type { Knots, Ratio } from '../units/index.ts';

/** A crosswind up to which an authority counts a runway usable, with where it stands and how it is known to us. */
export interface AllowableCrosswind {
  /** Unique among all rows. */
  readonly id: string;
  readonly source: SourceId;
  readonly locator: string;
  /** A `recalled` or `second-hand` figure was not seen: compare it with the current edition before use. */
  readonly access: Access;
  /** Which aerodromes it is for. */
  readonly condition: string;
  readonly crosswind: Knots;
  /** The least share of the time that the runways of an aerodrome are to be usable. */
  readonly leastUsability: Ratio;
}

const leastUsability = 0.95 as Ratio;

/**
 * Crosswinds with which authorities plan the runways of an aerodrome. They lay out runways; none of them is a limit of an
 * aeroplane or of a pilot.
 */
export const allowableCrosswinds: readonly AllowableCrosswind[] = [
  {
    id: 'icao-long',
    source: 'icao-annex-14',
    locator: '3.1.3',
    access: 'recalled',
    condition: 'reference field length of 1500 m or more',
    crosswind: 20 as Knots,
    leastUsability,
  },
  {
    id: 'icao-medium',
    source: 'icao-annex-14',
    locator: '3.1.3',
    access: 'recalled',
    condition: 'reference field length from 1200 m to less than 1500 m',
    crosswind: 13 as Knots,
    leastUsability,
  },
  {
    id: 'icao-short',
    source: 'icao-annex-14',
    locator: '3.1.3',
    access: 'recalled',
    condition: 'reference field length below 1200 m',
    crosswind: 10 as Knots,
    leastUsability,
  },
  {
    id: 'faa-a1-b1',
    source: 'faa-150-5300-13',
    locator: 'allowable crosswind; the letter groups are recalled',
    access: 'second-hand',
    condition: 'runway design codes A-I and B-I',
    crosswind: 10.5 as Knots,
    leastUsability,
  },
  {
    id: 'faa-a2-b2',
    source: 'faa-150-5300-13',
    locator: 'allowable crosswind; printed as 15 mph in 14 CFR 151.79',
    access: 'second-hand',
    condition: 'runway design codes A-II and B-II',
    crosswind: 13 as Knots,
    leastUsability,
  },
  {
    id: 'faa-a3-d3',
    source: 'faa-150-5300-13',
    locator: 'allowable crosswind',
    access: 'recalled',
    condition: 'runway design codes A-III, B-III and C-I to D-III',
    crosswind: 16 as Knots,
    leastUsability,
  },
  {
    id: 'faa-a4-e6',
    source: 'faa-150-5300-13',
    locator: 'allowable crosswind',
    access: 'recalled',
    condition: 'runway design codes A-IV to D-VI and E-I to E-VI',
    crosswind: 20 as Knots,
    leastUsability,
  },
];
