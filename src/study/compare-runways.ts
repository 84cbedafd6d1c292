import {
  type Criterion,
  limitsOfUse,
  type Runway,
  type Sentence,
  type Verdict,
  verdictInWords,
} from '../assessment/index.ts';
import type { Fault, ReadResult } from '../documents/index.ts';
import { type AnyRequest, assessAny } from './any-request.ts';
import { listFaults, withoutRepeats } from './argument-faults.ts';
import { type StudySentence, studySentence } from './sentences.ts';
import { criterionInWords, shareOfLimit, tightestFirst } from './words.ts';

/** One end of a runway, as it would be used. */
export interface RunwayRow {
  readonly aerodrome: string;
  readonly designator: string;
  readonly verdict: Verdict;
  /** `10: within limits; tightest is the crosswind, 1 kt to spare, then the landing distance, 111 m to spare.` */
  readonly sentence: StudySentence;
  /** The limiting one first. */
  readonly criteria: readonly Criterion[];
  readonly headline: readonly Sentence[];
}

/** The ends of one or several runways in order. */
export interface RunwayComparison {
  /** Within before undetermined before outside, then by the margin of the limiting criterion as a share of its limit. */
  readonly rows: readonly RunwayRow[];
  readonly limitsOfUse: readonly string[];
}

/**
 * One request from every end of the runway, or of several runways of the aerodrome, as an ordered list of sentences.
 * The order is that of verdicts and margins; it is no recommendation.
 *
 * @param request - a take-off or a landing request; its runway and the end in use are replaced by each in turn.
 * @param runways - the runways of the aerodrome; the runway of the request if not given.
 * @returns the rows in order, or the faults of the request; those of a runway are named by its place in the list.
 *
 * @example
 * compareRunways({ schema: 'groundroll/landing-request/1' } as never).ok // => false
 */
export function compareRunways(request: AnyRequest, runways?: readonly Runway[]): ReadResult<RunwayComparison> {
  if (runways === undefined) {
    const assessed = assessAny(request);
    if (!assessed.ok) return assessed;
  } else {
    const unlisted = listFaults('runways', runways);
    if (unlisted.length > 0) return { ok: false, faults: unlisted };
  }
  const candidates = runways ?? [request.runway];
  const several = new Set(candidates.map((runway) => runway?.aerodrome)).size > 1;
  const rows: RunwayRow[] = [];
  const faults: Fault[] = [];
  for (const [i, runway] of candidates.entries()) {
    for (const designator of designatorsOf(runway)) {
      // What has no designator is for the reader to refuse; the end that the request names is none of its faults.
      const runwayInUse = designator ?? request.runwayInUse;
      const assessed = assessAny({ ...request, runway, runwayInUse });
      if (!assessed.ok) faults.push(...assessed.faults.map((fault) => placed(fault, i)));
      else rows.push(rowOf(assessed.value, several));
    }
  }
  // Both ends of a runway show the same faults of the rest of the request.
  if (faults.length > 0) return { ok: false, faults: withoutRepeats(faults) };
  return { ok: true, value: { rows: rows.sort(inOrder), limitsOfUse } };
}

/** The designators of both ends; a single one that is none, of a runway that its reader will refuse. */
function designatorsOf(runway: Runway): readonly (string | undefined)[] {
  const ends: unknown = runway?.ends;
  return Array.isArray(ends) && ends.length > 0 ? ends.map((end) => end?.designator) : [undefined];
}

function placed({ path, message }: Fault, i: number): Fault {
  return { path: path.replace(/^runway(?=\.|$)/, `runways[${i}]`), message };
}

function rowOf(
  {
    request,
    verdict,
    criteria,
    headline,
  }: { request: AnyRequest; verdict: Verdict; criteria: readonly Criterion[]; headline: readonly Sentence[] },
  several: boolean,
): RunwayRow {
  const { runway, runwayInUse } = request;
  const ordered = tightestFirst(criteria);
  return {
    aerodrome: runway.aerodrome,
    designator: runwayInUse,
    verdict,
    sentence: rowSentence(several ? `${runway.aerodrome} ${runwayInUse}` : runwayInUse, verdict, ordered),
    criteria: ordered,
    headline,
  };
}

/**
 * The tightest criterion, then the next one about something else; what is undetermined is named first. The mass is the
 * same on every runway: it is named only where it is not within limits.
 */
function rowSentence(end: string, verdict: Verdict, ordered: readonly Criterion[]): StudySentence {
  const isOpen = verdict === 'undetermined';
  const subjects = (criteria: readonly Criterion[]) => [...new Set(criteria.map(({ subject }) => subject))];
  const decided = ordered.filter((each) => !isOpen || each.verdict !== 'undetermined').filter(dependsOnRunway);
  const [first, second] = subjects(decided).map(
    (subject) => decided.find((each) => each.subject === subject) as Criterion,
  );
  const next = second === undefined ? '' : `, then ${inShort(second, first)}`;
  return studySentence(isOpen ? 'runway-row-undetermined' : 'runway-row', {
    end,
    verdict: verdictInWords(verdict),
    open: subjects(ordered.filter((each) => each.verdict === 'undetermined')).join(', '),
    rest: first === undefined ? '' : `; tightest ${isOpen ? 'of the rest is' : 'is'} ${criterionInWords(first)}${next}`,
  });
}

/** A second margin that is spare like the first does not say so again. */
function inShort(second: Criterion, first: Criterion | undefined): string {
  const words = criterionInWords(second);
  return first?.verdict === 'within' ? words.replace(/ to spare$/, '') : words;
}

function dependsOnRunway({ id, verdict }: Criterion): boolean {
  return id !== 'mass' || verdict !== 'within';
}

const order: readonly Verdict[] = ['within', 'undetermined', 'outside'];

function inOrder(a: RunwayRow, b: RunwayRow): number {
  return order.indexOf(a.verdict) - order.indexOf(b.verdict) || spare(b) - spare(a);
}

/** The margin of the limiting criterion as a share of its limit; of the tightest that is decided where it is not. */
function spare({ criteria }: RunwayRow): number {
  for (const each of criteria.filter(dependsOnRunway)) {
    const share = shareOfLimit(each);
    if (share !== undefined) return share;
  }
  return 0;
}
