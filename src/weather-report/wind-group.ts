import type { Measure } from '../units/index.ts';
import { type Group, type GroupReading, groupFault } from './group.ts';
import type { MetarWind, Missing } from './metar.ts';

type Speed = Measure<'kt' | 'mps'>;

/** A wind group alone; the range of directions is a group of its own. */
export type WindGroup = Omit<MetarWind, 'range'> | 'calm' | Missing;

/** Wider than any mean wind that has been measured where aeroplanes land; a slip of a digit is beyond it. */
const greatestSpeed = { kt: 200, mps: 100 };

/** Whether a group is meant as a wind: by a unit of speed at its end, by VRB, or by five or six digits at its head. */
export function isWindLike(text: string): boolean {
  return /(?:KTS?|MPS|KMH|KPH|MPH)$/.test(text) || text.startsWith('VRB') || /^\d{5,6}(?!\d)/.test(text);
}

/** Reads a group that is meant as a wind. */
export function readWind(group: Group): GroupReading<WindGroup> {
  const refuse = (problem: string) => ({ ok: false, faults: [groupFault('wind', group, problem)] }) as const;
  const parts = /^(\d{3}|VRB|\/\/\/)(P?\d{2,3}|\/\/)(?:G(P?\d{2,3}))?(KT|MPS)$/.exec(group.text);
  if (parts === null) return refuse('is not a wind group: dddffKT or dddffGffKT, in KT or MPS');
  const [, direction = '', mean = '', gustDigits, unitWord] = parts;
  const unit = unitWord === 'KT' ? 'kt' : 'mps';
  const problem = speedProblem(mean, unit) ?? (gustDigits === undefined ? undefined : speedProblem(gustDigits, unit));
  if (problem !== undefined) return refuse(problem);
  const gust: Speed | 'absent' = gustDigits === undefined ? 'absent' : { value: Number(gustDigits), unit };

  if (mean === '//') {
    if (gust !== 'absent') return refuse('has a gust, but no mean speed');
    if (direction === '///') return { ok: true, value: 'missing' };
  } else if (Number(mean) === 0) {
    if (direction === '000' && gust === 'absent') return { ok: true, value: 'calm' };
    return refuse('has no speed; calm is reported as 00000');
  } else if (gust !== 'absent' && gust.value <= Number(mean)) {
    return refuse(`has a gust of ${gust.value} ${unit} that is not above the mean of ${Number(mean)} ${unit}`);
  }
  const speed: Speed | Missing = mean === '//' ? 'missing' : { value: Number(mean), unit };
  if (direction === 'VRB') return { ok: true, value: { from: 'variable', speed, gust } };
  if (direction === '///') return { ok: true, value: { from: 'missing', speed, gust } };
  const wrong = directionProblem(direction);
  if (wrong !== undefined) return refuse(wrong);
  return { ok: true, value: { from: { value: Number(direction), unit: 'degTrue' }, speed, gust } };
}

/** What is wrong with the digits of a speed; P before them says that it is more than they do. */
function speedProblem(digits: string, unit: 'kt' | 'mps'): string | undefined {
  if (digits.startsWith('P')) return `gives a speed only as more than ${Number(digits.slice(1))} ${unit}`;
  if (digits.length === 3 && digits.startsWith('0')) return 'has three digits for a speed below 100';
  if (Number(digits) > greatestSpeed[unit]) return `has a speed above ${greatestSpeed[unit]} ${unit}`;
  return undefined;
}

/** Whether a group is meant as the directions between which the wind varies. */
export function isRangeLike(text: string): boolean {
  return /^[\d/]{2,4}V[\d/]{2,4}$/.test(text);
}

/** Reads a group that is meant as a range of directions. */
export function readRange(group: Group): GroupReading<Exclude<MetarWind['range'], 'absent'>> {
  const refuse = (problem: string) => ({ ok: false, faults: [groupFault('wind.range', group, problem)] }) as const;
  if (group.text === '///V///') return { ok: true, value: 'missing' };
  const parts = /^(\d{3})V(\d{3})$/.exec(group.text);
  if (parts === null) return refuse('is not a range of directions: dddVddd');
  const [, from = '', to = ''] = parts;
  const problem = directionProblem(from) ?? directionProblem(to);
  if (problem !== undefined) return refuse(problem);
  if (from === to) return refuse('has two equal directions');
  const value = { from: { value: Number(from), unit: 'degTrue' }, to: { value: Number(to), unit: 'degTrue' } } as const;
  return { ok: true, value };
}

function directionProblem(digits: string): string | undefined {
  const value = Number(digits);
  if (value === 0) return 'has the direction 000, which is reported for calm only; north is 360';
  if (value > 360) return `has the direction ${digits}, beyond 360`;
  return value % 10 === 0 ? undefined : `has the direction ${digits}, which is not in whole tens of degrees`;
}
