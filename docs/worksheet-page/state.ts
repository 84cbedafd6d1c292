import { type FieldKey, fieldKeys, fields, type ObstacleKey } from './fields.ts';

/** One obstacle, as it is typed. */
export type ObstacleState = Readonly<Record<ObstacleKey, string>>;

/** Everything on the page but a file of one's own: the texts as they are typed, whatever they are. */
export interface PageState {
  readonly values: Readonly<Record<FieldKey, string>>;
  readonly obstacles: readonly ObstacleState[];
}

const startObstacles: readonly ObstacleState[] = [
  { name: 'pines', beyond: '25', end: '28', height: '28', ground: '438', top: '', aside: '' },
];

/** What the page starts with. */
export const startState: PageState = {
  values: Object.fromEntries(fieldKeys.map((key) => [key, fields[key].start])) as Record<FieldKey, string>,
  obstacles: startObstacles,
};

export const emptyObstacle: ObstacleState = {
  name: '',
  beyond: '',
  end: '',
  height: '',
  ground: '',
  top: '',
  aside: '',
};

export function withValue(state: PageState, key: FieldKey, value: string): PageState {
  return { ...state, values: { ...state.values, [key]: value } };
}

export function withObstacle(state: PageState, place: number, key: ObstacleKey, value: string): PageState {
  const obstacles = state.obstacles.map((each, i) => (i === place ? { ...each, [key]: value } : each));
  return { ...state, obstacles };
}
