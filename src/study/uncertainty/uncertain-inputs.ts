import type { UnitWord } from '../../units/index.ts';
import type { Distribution } from './distribution.ts';

/** How far one input of a request may be from what it says, and why. */
export interface InputUncertainty {
  readonly distribution: Distribution;
  /** Of the differences in the distribution; `ratio` for a factor. */
  readonly unit: UnitWord;
  readonly why: string;
}

/**
 * The uncertainty of each input unless the caller says otherwise. They are our own judgement, stated so that it can be
 * disagreed with: none of them is measured, and all of them are taken as independent of each other.
 */
export const inputUncertainties = {
  windDirection: {
    distribution: { shape: 'rectangular', from: -5, to: 5 },
    unit: 'deg',
    why: 'Directions are reported to the nearest 10°.',
  },
  windSpeed: {
    distribution: { shape: 'normal', standardDeviation: 1.5 },
    unit: 'kt',
    why: 'Rounded to whole knots, and a mean of ten minutes: the minute on the runway differs from it.',
  },
  gust: {
    distribution: { shape: 'normal', standardDeviation: 2 },
    unit: 'kt',
    why: 'Where gusts are reported: the greatest one met need not be the greatest one recorded.',
  },
  unreportedGust: {
    distribution: { shape: 'rectangular', from: 0, to: 10 },
    unit: 'kt',
    why: 'Where none are reported: gusts up to 10 kt above the mean need not be (Annex 3).',
  },
  temperature: {
    distribution: { shape: 'rectangular', from: -1, to: 1 },
    unit: 'degC',
    why: 'Reported in whole degrees, at the screen and not above the runway.',
  },
  pressure: {
    distribution: { shape: 'rectangular', from: 0, to: 1 },
    unit: 'hPa',
    why: 'Reported rounded down to the whole hectopascal.',
  },
  mass: {
    distribution: { shape: 'normal', standardDeviation: 10 },
    unit: 'kg',
    why: 'People, bags and fuel that were estimated, an aeroplane weighed some years ago.',
  },
  technique: {
    distribution: { shape: 'lognormal', standardDeviation: 0.05 },
    unit: 'ratio',
    why: 'A factor on the distance of the manual, with the median 1: pilots and engines differ by some percent, and longer by more than shorter.',
  },
  surfaceIncrease: {
    distribution: { shape: 'lognormal', standardDeviation: 0.3 },
    unit: 'ratio',
    why: 'A factor on what the surface adds: published factors for one grass differ by about a third of it.',
  },
  runwayLength: {
    distribution: { shape: 'rectangular', from: -5, to: 5 },
    unit: 'm',
    why: 'Where exactly the roll begins, and where the usable surface ends.',
  },
} as const satisfies Record<string, InputUncertainty>;

/** An input whose uncertainty enters. */
export type UncertainInputId = keyof typeof inputUncertainties;
