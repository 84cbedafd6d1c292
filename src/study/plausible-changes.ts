import type { Measure, UnitWord } from '../units/index.ts';
import type { StudyInput, StudyInputId } from './inputs/study-input.ts';
import { inUnit } from './inputs/study-input.ts';

/** An input of a request that has a value today, which a sensitivity moves. */
export type SensitivityInputId = Exclude<StudyInputId, 'tailwind' | 'crosswind'>;

/** How much an input may plausibly change, or be wrong, before the aeroplane moves; and why. */
export interface PlausibleChange {
  readonly change: Measure<UnitWord>;
  readonly why: string;
}

/**
 * The change of each input that sensitivities are shown for unless the caller says otherwise. They are our own judgement
 * of what happens within an hour or goes unnoticed in a briefing, not a limit of anything.
 */
export const plausibleChanges = {
  mass: {
    change: { value: 20, unit: 'kg' },
    why: 'Bags guessed instead of weighed, or half an hour of fuel more than thought.',
  },
  temperature: { change: { value: 3, unit: 'degC' }, why: 'About an hour later on a summer morning.' },
  pressure: { change: { value: 3, unit: 'hPa' }, why: 'A few hours old; 1 hPa is about 28 ft of pressure altitude.' },
  windSpeed: { change: { value: 3, unit: 'kt' }, why: 'A mean of ten minutes differs from the next by about as much.' },
  gust: { change: { value: 5, unit: 'kt' }, why: 'The gust that comes need not be the one that was reported.' },
  windDirection: { change: { value: 10, unit: 'deg' }, why: 'Reported in steps of 10°, and it wanders by as much.' },
  surfaceFactor: {
    change: { value: 0.1, unit: 'ratio' },
    why: 'From one line of a table of surfaces to the next, as from dry to wet grass.',
  },
  slope: {
    change: { value: 0.5, unit: 'percent' },
    why: 'Taken from contours or from one elevation for the whole field.',
  },
  runwayLength: {
    change: { value: 20, unit: 'm' },
    why: 'Paced out, measured on a map, or some of it soft or fenced.',
  },
  lineUpLoss: {
    change: { value: 20, unit: 'm' },
    why: 'Lining up with a turn on the runway instead of from its very end.',
  },
  obstacleHeight: { change: { value: 2, unit: 'm' }, why: 'Heights of trees are estimated, and trees grow.' },
  obstacleDistance: { change: { value: 20, unit: 'm' }, why: 'Paced out or measured on a map.' },
  liftOffSpeedAddition: { change: { value: 3, unit: 'kt' }, why: 'Lifting off a needle width late.' },
  approachSpeedAddition: {
    change: { value: 5, unit: 'kt' },
    why: 'What is easily added to be on the safe side; the runway pays for it.',
  },
  excessHeight: { change: { value: 20, unit: 'ft' }, why: 'Passing the threshold a little high is hardly noticed.' },
} as const satisfies Record<SensitivityInputId, PlausibleChange>;

/** A difference in the unit of an input; the zero of a scale drops out. */
export function differenceIn(input: StudyInput, { value, unit }: Measure<UnitWord>): number {
  const own = lengthLike[input.unit] ?? input.unit;
  const given = lengthLike[unit] ?? unit;
  return inUnit({ value, unit: given }, own) - inUnit({ value: 0, unit: given }, own);
}

/** Differences of heights, elevations and distances are lengths, those of directions angles. */
const lengthLike: Partial<Record<UnitWord, UnitWord>> = {
  ftHeight: 'ft',
  mHeight: 'm',
  ftElevation: 'ft',
  mElevation: 'm',
  degTrue: 'deg',
  degMagnetic: 'deg',
  degCDifference: 'degC',
};
