import { type Criterion, limitsOfUse, type Verdict } from '../assessment/index.ts';
import { type Surface, surfaceInWords } from '../distance/index.ts';
import type { ReadResult } from '../documents/index.ts';
import { type AnyRequest, assessAny } from './any-request.ts';
import { listFaults } from './argument-faults.ts';
import { type StudySentence, studySentence } from './sentences.ts';
import { capital, criterionInWords, tightestFirst } from './words.ts';

/** One surface of the list, with what the whole assessment says of it. */
export interface SurfaceVerdict {
  readonly surface: Surface;
  readonly words: string;
  readonly verdict: Verdict;
  readonly limiting: Criterion;
}

/** How far down a list of surfaces the verdict stays within. */
export interface MostAdverseSurface {
  readonly answer: 'value' | 'withinThroughoutRange' | 'outsideThroughoutRange' | 'undetermined';
  /** The last one of the list before the first that is not within. */
  readonly value?: Surface;
  /** In the order given. */
  readonly surfaces: readonly SurfaceVerdict[];
  /** What turns on the first surface that is not within; empty where all are. */
  readonly limitedBy: readonly Criterion[];
  readonly evaluations: number;
  readonly sentence: StudySentence;
  readonly limitsOfUse: readonly string[];
}

/**
 * The last of several surfaces, given in order of adversity, on which every criterion is within limits.
 *
 * @param request - a take-off or a landing request; its surface is replaced by each of the list.
 * @param surfaces - from the least to the most adverse, as the caller judges it; none after the first that is not within
 *   counts, whatever its own verdict.
 * @returns every surface with its verdict and the last that is within, or the faults of the request.
 *
 * @example
 * mostAdverseSurface({ schema: 'groundroll/takeoff-request/1' } as never, []).ok // => false
 */
export function mostAdverseSurface(request: AnyRequest, surfaces: readonly Surface[]): ReadResult<MostAdverseSurface> {
  const unlisted = listFaults('surfaces', surfaces);
  if (unlisted.length > 0) return { ok: false, faults: unlisted };
  const found: SurfaceVerdict[] = [];
  const turning: Criterion[][] = [];
  for (const [i, surface] of surfaces.entries()) {
    const assessed = assessAny({ ...request, runway: { ...request?.runway, surface } });
    if (!assessed.ok) {
      const placed = (path: string) => path.replace(/^runway\.surface/, `surfaces[${i}]`);
      return { ok: false, faults: assessed.faults.map(({ path, message }) => ({ path: placed(path), message })) };
    }
    const { verdict, criteria } = assessed.value;
    const ordered = tightestFirst(criteria);
    found.push({ surface, words: surfaceInWords(surface), verdict, limiting: ordered[0] as Criterion });
    turning.push(ordered.filter((each) => each.verdict !== 'within'));
  }
  const turn = found.findIndex(({ verdict }) => verdict !== 'within');
  const last = turn < 0 ? undefined : found[turn - 1];
  const answer =
    turn < 0
      ? 'withinThroughoutRange'
      : last !== undefined
        ? 'value'
        : found.every(({ verdict }) => verdict === 'outside')
          ? 'outsideThroughoutRange'
          : 'undetermined';
  const limitedBy = turning[turn] ?? [];
  const parameters = {
    last: capital((last ?? (found[found.length - 1] as SurfaceVerdict)).words),
    next: found[turn]?.words ?? '',
    turning: limitedBy.slice(0, 1).map(criterionInWords).join(),
  };
  return {
    ok: true,
    value: {
      answer,
      ...(last === undefined ? {} : { value: last.surface }),
      surfaces: found,
      limitedBy,
      evaluations: found.length,
      sentence: studySentence(surfaceCodes[answer], parameters),
      limitsOfUse,
    },
  };
}

const surfaceCodes = {
  value: 'surface-last-within',
  withinThroughoutRange: 'surface-all-within',
  outsideThroughoutRange: 'surface-none-within',
  undetermined: 'surface-none-within',
} as const;
