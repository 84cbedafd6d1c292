export { type MetarGroup, metarGroups } from './groups.ts';
export type {
  Absent,
  Metar,
  MetarHeading,
  MetarNil,
  MetarObservation,
  MetarTime,
  MetarWind,
  Missing,
} from './metar.ts';
export { readMetar } from './read-metar.ts';
