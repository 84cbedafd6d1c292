import { type FieldKey, fieldKeys } from './fields.ts';
import { areCompared, recalledToday } from './recalled.ts';
import type { PageState } from './state.ts';

/** Whether a field stands in a sentence now: the others keep what was typed, and take no part. */
export function isShown(key: FieldKey, state: PageState): boolean {
  const { values: v } = state;
  const ofFigures = v.weather === 'figures';
  switch (key) {
    case 'takeoffConfiguration':
    case 'liftOffSpeedAddition':
    case 'lineUpLoss':
    case 'brakingCoefficient':
    case 'reactionTime':
      return v.job === 'takeoff';
    case 'landingConfiguration':
    case 'approachSpeedAddition':
    case 'excessHeight':
    case 'approachClearance':
    case 'approachAngle':
      return v.job === 'landing';
    case 'metar':
      return !ofFigures;
    case 'temperature':
    case 'dewPoint':
    case 'temperatureUnit':
    case 'pressureKind':
    case 'pressure':
    case 'pressureUnit':
    case 'windSource':
    case 'windKind':
    case 'windSpeed':
    case 'windGust':
    case 'windUnit':
    case 'windNorth':
    case 'rangeFrom':
    case 'rangeTo':
      return ofFigures;
    case 'windFrom':
      return ofFigures && v.windKind === 'from';
    case 'condition':
      return v.surface !== 'snow';
    case 'grassLength':
    case 'ground':
      return v.surface === 'grass';
    case 'conditionCode':
      return v.surface === 'paved';
    case 'compared':
      return recalledToday(state).length > 0;
    case 'comparedEdition':
    case 'comparedDate':
      return areCompared(state);
    case 'heightUnit':
      return v.obstacles === 'listed';
    default:
      return true;
  }
}

export function shownFields(state: PageState): FieldKey[] {
  return fieldKeys.filter((key) => isShown(key, state));
}
