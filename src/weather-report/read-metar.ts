import type { Fault, ReadResult } from '../documents/index.ts';
import { type Group, groupFault, groupsOf } from './group.ts';
import { readHeading } from './heading.ts';
import type { Metar } from './metar.ts';
import { readObservation } from './observation.ts';

const longestText = 2000;

/**
 * Reads a METAR or SPECI: wind, temperature, dew point and QNH; all faults at once, each with the group and its place;
 * never a throw.
 *
 * What the report does not have is `absent`, what it fills with solidi is `missing`, and a group that is meant as one of
 * those read but is not in its form is a fault, as is a second one of a kind. A speed given only as more than 99 kt
 * (P99KT) is a fault too: nothing that is a bound is read as a figure. Reading ends before the trend and the remarks;
 * visibility, weather and cloud stand in `notRead`. Directions are true.
 *
 * @param text - one report of at most 2000 characters, in capital letters, with or without the `=` at its end.
 * @returns the reading, or the faults.
 *
 * @example
 * const read = readMetar('METAR ZZZZ 141350Z 19007G17KT 150V230 9999 FEW040 26/16 Q1006 NOSIG=');
 * read.ok && read.value.kind === 'observation' && read.value.wind // => { from: { value: 190, unit: 'degTrue' }, speed: { value: 7, unit: 'kt' }, gust: { value: 17, unit: 'kt' }, range: { from: { value: 150, unit: 'degTrue' }, to: { value: 230, unit: 'degTrue' } } }
 * read.ok && read.value.kind === 'observation' && read.value.qnh // => { value: 1006, unit: 'hPa' }
 * readMetar('METAR ZZZZ 141350Z 190O7KT 26/16 Q1006') // => { ok: false, faults: [{ path: 'wind', message: '"190O7KT" at character 20 is not a wind group: dddffKT or dddffGffKT, in KT or MPS' }] }
 */
export function readMetar(text: string): ReadResult<Metar> {
  if (typeof text !== 'string') return refused({ path: '', message: 'a report is a text' });
  if (text.length > longestText) {
    return refused({ path: '', message: `a text of ${text.length} characters is longer than ${longestText}` });
  }
  const groups = groupsOf(text);
  const second = beginningOfSecond(groups);
  if (second !== undefined) return refused(groupFault('', second, 'begins a second report'));
  const words = groups.filter((group) => group.text !== '=');
  if (words.length === 0) return refused({ path: '', message: 'the report is empty' });

  const faults: Fault[] = [];
  const { heading, isNil, rest } = readHeading(words, faults);
  if (isNil) {
    for (const group of rest) faults.push(groupFault('', group, 'follows NIL, which says that there is no report'));
    return faults.length > 0 ? { ok: false, faults } : { ok: true, value: { kind: 'nil', ...heading } };
  }
  const observation = readObservation(rest, faults);
  if (faults.length > 0) return { ok: false, faults };
  return { ok: true, value: { kind: 'observation', ...heading, ...observation } };
}

function refused(fault: Fault): ReadResult<never> {
  return { ok: false, faults: [fault] };
}

/** A group behind the end of a report, or one that can only be the head of another. */
function beginningOfSecond(groups: readonly Group[]): Group | undefined {
  const end = groups.findIndex(({ text }) => text === '=');
  if (end >= 0 && end + 1 < groups.length) return groups[end + 1];
  return groups.find(({ text }, i) => i > 0 && (text === 'METAR' || text === 'SPECI'));
}
