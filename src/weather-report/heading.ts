import type { Fault } from '../documents/index.ts';
import { type Group, groupFault } from './group.ts';
import type { MetarHeading, MetarTime } from './metar.ts';

/** The head of a report, whether it is all there is, and what follows it. */
export interface HeadingReading {
  readonly heading: MetarHeading;
  readonly isNil: boolean;
  readonly rest: readonly Group[];
}

/** Words that say something of the whole report. */
export function isModifier(text: string | undefined): boolean {
  return text === 'AUTO' || text === 'COR' || text === 'NIL';
}

/** Reads the head of a report; what is not in its place is noted as a fault, and reading goes on. */
export function readHeading(groups: readonly Group[], faults: Fault[]): HeadingReading {
  let i = 0;
  const modifiers = new Set<string>();
  const takeModifier = (group: Group) => {
    if (modifiers.has(group.text)) faults.push(groupFault('', group, 'stands there twice'));
    modifiers.add(group.text);
    i += 1;
  };

  const first = groups[i]?.text;
  const report = first === 'METAR' || first === 'SPECI' ? first : 'not stated';
  if (report !== 'not stated') i += 1;
  const correction = groups[i];
  if (correction?.text === 'COR') takeModifier(correction);

  const station = groups[i];
  if (station === undefined) faults.push({ path: 'station', message: 'is missing' });
  else if (isTimeLike(station.text)) faults.push(groupFault('station', station, 'stands where the station is due'));
  else {
    if (!/^[A-Z][A-Z\d]{3}$/.test(station.text)) {
      faults.push(groupFault('station', station, 'is not a location indicator of four characters'));
    }
    i += 1;
  }

  const time = timeOf(groups[i], faults);
  if (isTimeLike(groups[i]?.text)) i += 1;
  for (let group = groups[i]; group !== undefined && isModifier(group.text); group = groups[i]) takeModifier(group);

  const heading = {
    report,
    station: station?.text ?? '',
    time,
    corrected: modifiers.has('COR'),
    automatic: modifiers.has('AUTO'),
  } as const;
  return { heading, isNil: modifiers.has('NIL'), rest: groups.slice(i) };
}

/** Whether a group is meant as a time: digits and a Z, or six digits where the time is due. */
function isTimeLike(text: string | undefined): boolean {
  return text !== undefined && /^(?:[\d/]{1,7}Z|\d{6})$/.test(text);
}

function timeOf(group: Group | undefined, faults: Fault[]): MetarTime {
  if (group === undefined || !isTimeLike(group.text)) {
    faults.push({ path: 'time', message: 'is missing: day, hour and minute follow the station as ddhhmmZ' });
    return { day: 0, hour: 0, minute: 0 };
  }
  const { text } = group;
  const [day, hour, minute] = [text.slice(0, 2), text.slice(2, 4), text.slice(4, 6)].map(Number) as [
    number,
    number,
    number,
  ];
  if (!/^\d{6}Z$/.test(text) || day < 1 || day > 31 || hour > 23 || minute > 59) {
    faults.push(groupFault('time', group, 'is not a day, hour and minute: ddhhmmZ'));
  }
  return { day, hour, minute };
}
