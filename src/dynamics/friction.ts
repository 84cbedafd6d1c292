import type { Access, Citation } from '../sources/index.ts';
import type { Ratio } from '../units/index.ts';

/** What one source says of a friction; `low` and `high` are equal where it gives one figure. */
export interface FrictionFigure extends Citation {
  readonly low: Ratio;
  readonly high: Ratio;
}

/** The friction of wheels on a surface: the band of what the sources say, which may differ by more than two to one. */
export interface Friction {
  readonly low: Ratio;
  readonly high: Ratio;
  /** The weakest access among the figures; an answer that uses a recalled one must say so. */
  readonly access: Access;
  readonly figures: readonly FrictionFigure[];
}

/**
 * Rolling friction by surface, brakes off. A band of one figure is one source's opinion, not a certainty.
 *
 * @example
 * rollingFriction['soft ground'].high // => 0.3
 * rollingFriction['wet grass'].access // => 'recalled'
 */
export const rollingFriction = {
  'dry paved': {
    low: 0.02 as Ratio,
    high: 0.05 as Ratio,
    access: 'second-hand',
    figures: [
      {
        low: 0.02 as Ratio,
        high: 0.02 as Ratio,
        source: 'takeoff-course-notes',
        locator: 'note 1, dry concrete or asphalt',
        access: 'read',
      },
      {
        low: 0.04 as Ratio,
        high: 0.04 as Ratio,
        source: 'anderson-aircraft-performance',
        locator: 'ex. 6.6, paved runway',
        access: 'read',
      },
      {
        low: 0.02 as Ratio,
        high: 0.02 as Ratio,
        source: 'anderson-introduction',
        locator: 'ex. 6.17, paved runway',
        access: 'read',
      },
      {
        low: 0.02 as Ratio,
        high: 0.02 as Ratio,
        source: 'flight-test-textbook',
        locator: 'eq. 3.22, dry concrete',
        access: 'read',
      },
      {
        low: 0.03 as Ratio,
        high: 0.05 as Ratio,
        source: 'raymer-aircraft-design',
        locator: 'Table 17.1, dry concrete, brakes off',
        access: 'second-hand',
      },
    ],
  },
  'wet paved': {
    low: 0.05 as Ratio,
    high: 0.05 as Ratio,
    access: 'second-hand',
    figures: [
      {
        low: 0.05 as Ratio,
        high: 0.05 as Ratio,
        source: 'raymer-aircraft-design',
        locator: 'Table 17.1, wet concrete, brakes off',
        access: 'second-hand',
      },
    ],
  },
  'icy paved': {
    low: 0.02 as Ratio,
    high: 0.02 as Ratio,
    access: 'second-hand',
    figures: [
      {
        low: 0.02 as Ratio,
        high: 0.02 as Ratio,
        source: 'raymer-aircraft-design',
        locator: 'Table 17.1, icy concrete, brakes off',
        access: 'second-hand',
      },
    ],
  },
  gravel: {
    low: 0.04 as Ratio,
    high: 0.04 as Ratio,
    access: 'read',
    figures: [
      {
        low: 0.04 as Ratio,
        high: 0.04 as Ratio,
        source: 'takeoff-course-notes',
        locator: 'note 1, hard turf or gravel',
        access: 'read',
      },
    ],
  },
  'firm dirt': {
    low: 0.04 as Ratio,
    high: 0.04 as Ratio,
    access: 'recalled',
    figures: [
      {
        low: 0.04 as Ratio,
        high: 0.04 as Ratio,
        source: 'raymer-aircraft-design',
        locator: 'Table 17.1, firm dirt, brakes off',
        access: 'recalled',
      },
    ],
  },
  'hard turf': {
    low: 0.04 as Ratio,
    high: 0.05 as Ratio,
    access: 'recalled',
    figures: [
      {
        low: 0.04 as Ratio,
        high: 0.04 as Ratio,
        source: 'takeoff-course-notes',
        locator: 'note 1, hard turf or gravel',
        access: 'read',
      },
      {
        low: 0.05 as Ratio,
        high: 0.05 as Ratio,
        source: 'raymer-aircraft-design',
        locator: 'Table 17.1, hard turf, brakes off',
        access: 'recalled',
      },
    ],
  },
  'short dry grass': {
    low: 0.05 as Ratio,
    high: 0.05 as Ratio,
    access: 'read',
    figures: [
      {
        low: 0.05 as Ratio,
        high: 0.05 as Ratio,
        source: 'takeoff-course-notes',
        locator: 'note 1, short dry grass',
        access: 'read',
      },
    ],
  },
  'wet grass': {
    low: 0.08 as Ratio,
    high: 0.08 as Ratio,
    access: 'recalled',
    figures: [
      {
        low: 0.08 as Ratio,
        high: 0.08 as Ratio,
        source: 'raymer-aircraft-design',
        locator: 'Table 17.1, wet grass, brakes off',
        access: 'recalled',
      },
    ],
  },
  'long grass': {
    low: 0.1 as Ratio,
    high: 0.1 as Ratio,
    access: 'read',
    figures: [
      {
        low: 0.1 as Ratio,
        high: 0.1 as Ratio,
        source: 'takeoff-course-notes',
        locator: 'note 1, long grass',
        access: 'read',
      },
    ],
  },
  'soft turf': {
    low: 0.07 as Ratio,
    high: 0.07 as Ratio,
    access: 'recalled',
    figures: [
      {
        low: 0.07 as Ratio,
        high: 0.07 as Ratio,
        source: 'raymer-aircraft-design',
        locator: 'Table 17.1, soft turf, brakes off',
        access: 'recalled',
      },
    ],
  },
  'soft ground': {
    low: 0.1 as Ratio,
    high: 0.3 as Ratio,
    access: 'read',
    figures: [
      {
        low: 0.1 as Ratio,
        high: 0.3 as Ratio,
        source: 'takeoff-course-notes',
        locator: 'note 1, soft ground',
        access: 'read',
      },
      {
        low: 0.3 as Ratio,
        high: 0.3 as Ratio,
        source: 'flight-test-textbook',
        locator: 'eq. 3.22, very soft ground',
        access: 'read',
      },
    ],
  },
} as const satisfies Record<string, Friction>;

/** A surface whose rolling friction is known. */
export type RollingSurface = keyof typeof rollingFriction;

/**
 * Braking friction by surface, of an aeroplane that brakes hard. The greatest that a tyre can give in a test, 0.8 on a
 * dry surface, is not among them.
 *
 * @example
 * brakingFriction['wet paved'].low // => 0.15
 */
export const brakingFriction = {
  'any surface': {
    low: 0.2 as Ratio,
    high: 0.4 as Ratio,
    access: 'read',
    figures: [
      {
        low: 0.2 as Ratio,
        high: 0.4 as Ratio,
        source: 'takeoff-course-notes',
        locator: 'note 2, braking, 0.30 to 0.35 called typical',
        access: 'read',
      },
    ],
  },
  'dry paved': {
    low: 0.3 as Ratio,
    high: 0.5 as Ratio,
    access: 'second-hand',
    figures: [
      {
        low: 0.4 as Ratio,
        high: 0.4 as Ratio,
        source: 'anderson-aircraft-performance',
        locator: 'ex. 6.7, dry concrete',
        access: 'read',
      },
      {
        low: 0.3 as Ratio,
        high: 0.5 as Ratio,
        source: 'raymer-aircraft-design',
        locator: 'Table 17.1, dry concrete, brakes on',
        access: 'second-hand',
      },
    ],
  },
  'wet paved': {
    low: 0.15 as Ratio,
    high: 0.3 as Ratio,
    access: 'second-hand',
    figures: [
      {
        low: 0.15 as Ratio,
        high: 0.3 as Ratio,
        source: 'raymer-aircraft-design',
        locator: 'Table 17.1, wet concrete, brakes on',
        access: 'second-hand',
      },
    ],
  },
  'icy paved': {
    low: 0.06 as Ratio,
    high: 0.1 as Ratio,
    access: 'second-hand',
    figures: [
      {
        low: 0.06 as Ratio,
        high: 0.1 as Ratio,
        source: 'raymer-aircraft-design',
        locator: 'Table 17.1, icy concrete, brakes on',
        access: 'second-hand',
      },
    ],
  },
  'firm dirt': {
    low: 0.3 as Ratio,
    high: 0.3 as Ratio,
    access: 'recalled',
    figures: [
      {
        low: 0.3 as Ratio,
        high: 0.3 as Ratio,
        source: 'raymer-aircraft-design',
        locator: 'Table 17.1, firm dirt, brakes on',
        access: 'recalled',
      },
    ],
  },
  'hard turf': {
    low: 0.4 as Ratio,
    high: 0.4 as Ratio,
    access: 'recalled',
    figures: [
      {
        low: 0.4 as Ratio,
        high: 0.4 as Ratio,
        source: 'raymer-aircraft-design',
        locator: 'Table 17.1, hard turf, brakes on',
        access: 'recalled',
      },
    ],
  },
  'wet grass': {
    low: 0.2 as Ratio,
    high: 0.2 as Ratio,
    access: 'recalled',
    figures: [
      {
        low: 0.2 as Ratio,
        high: 0.2 as Ratio,
        source: 'raymer-aircraft-design',
        locator: 'Table 17.1, wet grass, brakes on',
        access: 'recalled',
      },
    ],
  },
  'soft turf': {
    low: 0.2 as Ratio,
    high: 0.2 as Ratio,
    access: 'recalled',
    figures: [
      {
        low: 0.2 as Ratio,
        high: 0.2 as Ratio,
        source: 'raymer-aircraft-design',
        locator: 'Table 17.1, soft turf, brakes on',
        access: 'recalled',
      },
    ],
  },
} as const satisfies Record<string, Friction>;

/** A surface whose braking friction is known. */
export type BrakingSurface = keyof typeof brakingFriction;
