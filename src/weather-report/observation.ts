import type { Fault } from '../documents/index.ts';
import {
  isAltimeterLike,
  isQnhLike,
  isTemperatureLike,
  pressureFaults,
  readAltimeter,
  readQnh,
  readTemperature,
  type TemperatureGroup,
} from './air-groups.ts';
import { type Group, type GroupReading, groupFault } from './group.ts';
import { isModifier } from './heading.ts';
import type { Absent, MetarHeading, MetarObservation, MetarWind } from './metar.ts';
import { isRangeLike, isWindLike, readRange, readWind, type WindGroup } from './wind-group.ts';

/** What ends the observation: the trend, the statement that there is none, and the remarks. */
const endOfObservation: ReadonlySet<string> = new Set(['BECMG', 'TEMPO', 'NOSIG', 'RMK']);

type Kind = 'wind' | 'wind.range' | 'temperature' | 'qnh' | 'altimeterSetting';

/** What a group is meant as, by its look alone; undefined for the groups that are not read. */
function kindOf(text: string): Kind | undefined {
  if (isWindLike(text)) return 'wind';
  if (isRangeLike(text)) return 'wind.range';
  if (isTemperatureLike(text)) return 'temperature';
  if (isQnhLike(text)) return 'qnh';
  return isAltimeterLike(text) ? 'altimeterSetting' : undefined;
}

/** Reads what follows the head, up to the trend or the remarks; faults are noted. */
export function readObservation(
  groups: readonly Group[],
  faults: Fault[],
): Omit<MetarObservation, keyof MetarHeading | 'kind'> {
  const found = new Map<Kind, Group>();
  const notRead: string[] = [];
  let before: Kind | undefined;
  for (const [i, group] of groups.entries()) {
    if (endOfObservation.has(group.text)) {
      notRead.push(...groups.slice(i).map(({ text }) => text));
      break;
    }
    const kind = kindOf(group.text);
    if (isModifier(group.text)) faults.push(groupFault('', group, 'is not in its place, behind the time'));
    else if (/[a-z]/.test(group.text)) faults.push(groupFault('', group, 'is not in capital letters'));
    else if (kind === undefined) notRead.push(group.text);
    else if (found.has(kind)) faults.push(groupFault(kind, group, 'is a second group of its kind'));
    else if (kind === 'wind.range' && before !== 'wind') faults.push(groupFault(kind, group, 'does not follow a wind'));
    else found.set(kind, group);
    before = kind;
  }

  /** The value of a group, `absent` where there is none; its faults are noted. */
  function take<T>(kind: Kind, read: (group: Group) => GroupReading<T>): T | Absent {
    const group = found.get(kind);
    const reading = group === undefined ? undefined : read(group);
    if (reading?.ok === true) return reading.value;
    faults.push(...(reading?.faults ?? []));
    return 'absent';
  }
  const wind = take<WindGroup>('wind', readWind);
  const range = take('wind.range', readRange);
  const air = take<TemperatureGroup>('temperature', readTemperature);
  const qnh = take('qnh', readQnh);
  const altimeterSetting = take('altimeterSetting', readAltimeter);
  faults.push(...rangeFaults(wind, range, found.get('wind.range')), ...pressureFaults(qnh, altimeterSetting));
  return {
    wind: typeof wind === 'string' ? wind : { ...wind, range },
    temperature: air === 'absent' ? air : air.temperature,
    dewPoint: air === 'absent' ? air : air.dewPoint,
    qnh,
    altimeterSetting,
    notRead,
  };
}

/** What is wrong between a range of directions and the wind that it belongs to. */
function rangeFaults(wind: WindGroup | Absent, range: MetarWind['range'], group: Group | undefined): Fault[] {
  if (group === undefined || typeof range === 'string') return [];
  if (wind === 'calm') return [groupFault('wind.range', group, 'varies a calm')];
  if (wind === 'missing') return [groupFault('wind.range', group, 'varies a wind that is missing')];
  if (wind === 'absent' || typeof wind.from === 'string') return [];
  const clockwise = (angle: number) => (angle - range.from.value + 360) % 360;
  if (clockwise(wind.from.value) <= clockwise(range.to.value)) return [];
  return [groupFault('wind.range', group, `does not hold the mean direction of ${wind.from.value}, clockwise`)];
}
