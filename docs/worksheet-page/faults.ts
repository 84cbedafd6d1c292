import type { Fault } from 'groundroll';
import { type FieldKey, fieldOf, obstacleFields, obstacleKeys, type SentenceId } from './fields.ts';
import { shownFields } from './shown.ts';
import type { PageState } from './state.ts';

/** What the library says is wrong, in the sentence and at the figure where it was typed. */
export interface PlacedFault {
  readonly sentence: SentenceId;
  /** The id of the field on the page; none where it is about several. */
  readonly field?: string;
  /** What the field is called. */
  readonly label?: string;
  readonly message: string;
}

export const idOfField = (key: FieldKey) => `field-${key}`;
export const idOfObstacle = (place: number, key: string) => `obstacle-${place + 1}-${key}`;

interface Place {
  readonly path: string;
  readonly sentence: SentenceId;
  readonly field?: string;
  readonly label?: string;
}

/** Parts of a request that no single field stands for. */
const parts: readonly Place[] = [
  { path: 'performanceData', sentence: 'aeroplane' },
  { path: 'runway.obstacles', sentence: 'obstacles' },
  { path: 'runway', sentence: 'runway' },
  { path: 'runwayInUse', sentence: 'runway' },
  { path: 'weather.wind', sentence: 'wind' },
  { path: 'weather', sentence: 'air' },
  { path: 'policies', sentence: 'policies' },
  { path: 'policies.confirmations', sentence: 'factors' },
  { path: 'personalLimits', sentence: 'limits' },
];

/** Faults in their places, each once: both ends find most of them. */
export function placedFaults(faults: readonly Fault[], state: PageState): PlacedFault[] {
  const places = [...placesOf(state), ...parts];
  const placed = faults.map(({ path, message }) => {
    const { sentence, field, label } = placeOf(path, places) ?? { sentence: 'aeroplane' as const };
    const known = places.some((each) => each.path === path) || field !== undefined;
    return {
      sentence,
      ...(field === undefined ? {} : { field }),
      ...(label === undefined ? {} : { label }),
      message: known || path === '' ? message : `${path}: ${message}`,
    };
  });
  return [...new Map(placed.map((each) => [JSON.stringify(each), each])).values()];
}

function placesOf(state: PageState): Place[] {
  const { pressureKind } = state.values;
  const ofFields = shownFields(state).flatMap((key): Place[] => {
    const { path, sentence, label } = fieldOf(key);
    if (path === '') return [];
    const inRequest = path === 'weather.pressure' ? `weather.${pressureKind}` : path;
    return [{ path: inRequest, sentence, field: idOfField(key), label }];
  });
  const ofObstacles = state.obstacles.flatMap((_, i) =>
    obstacleKeys.map((key) => ({
      path: `runway.obstacles[${i}].${obstacleFields[key].path}`,
      sentence: 'obstacles' as const,
      field: idOfObstacle(i, key),
      label: `${obstacleFields[key].label} of obstacle ${i + 1}`,
    })),
  );
  return [...ofFields, ...ofObstacles];
}

/** The place whose path is the longest part of the fault's own. */
function placeOf(path: string, places: readonly Place[]): Place | undefined {
  return places
    .filter((each) => path === each.path || path.startsWith(`${each.path}.`) || path.startsWith(`${each.path}[`))
    .reduce<Place | undefined>((best, each) => (best && best.path.length >= each.path.length ? best : each), undefined);
}
