import type { UnitWord } from '../../units/index.ts';
import { convert } from '../../units/unit-table.ts';
import type { AnyRequest } from '../any-request.ts';

/** One input of a request as a study changes it, with everything else held. */
export interface StudyInput {
  readonly id: StudyInputId;
  /** In words, for a reader; with the name of an obstacle where it belongs to one. */
  readonly quantity: string;
  /** The obstacle that it belongs to. */
  readonly obstacle?: string;
  readonly unit: UnitWord;
  /** What the request says; none where the question replaces the wind altogether. */
  readonly today: number | undefined;
  /** The bounds in which a request takes the input. */
  readonly min: number;
  readonly max: number;
  /** What of the request changes with it: weather and mass alone are compared without reading the request again. */
  readonly changes: 'weather' | 'mass' | 'request';
  /** The request with the input at another value. */
  readonly at: (value: number) => AnyRequest;
}

/** The inputs that a study can change. */
export type StudyInputId =
  | 'mass'
  | 'temperature'
  | 'pressure'
  | 'windSpeed'
  | 'gust'
  | 'windDirection'
  | 'tailwind'
  | 'crosswind'
  | 'surfaceFactor'
  | 'slope'
  | 'runwayLength'
  | 'lineUpLoss'
  | 'obstacleHeight'
  | 'obstacleDistance'
  | 'liftOffSpeedAddition'
  | 'approachSpeedAddition'
  | 'excessHeight';

/** A measure of a request in another unit of its kind. */
export function inUnit(measured: { value: number; unit: UnitWord }, unit: UnitWord): number {
  return convert(measured.value, measured.unit, unit) as number;
}

/** A figure that a search computed, without the binary tail that a conversion there and back leaves. */
export function plain(value: number): number {
  return Number(value.toPrecision(12));
}
