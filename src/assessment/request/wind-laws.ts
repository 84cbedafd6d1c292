import { type DistanceData, printedRange } from '../../aircraft/index.ts';
import { inUnit } from './in-unit.ts';

/** What the manual prints for a head- or tailwind, in knots. */
export interface WindLaw {
  readonly percentPerKnot: number;
  /** The last wind that it is printed for. */
  readonly cap_kt: number;
}

/** The laws of a table, and the last headwind that the manual prints. */
export interface WindLaws {
  readonly headwind: WindLaw | undefined;
  readonly tailwind: WindLaw | undefined;
  /** On an axis of the tables, or in the law; none where the manual has neither. */
  readonly greatestHeadwind_kt: number;
}

/** The laws in the units of the kernel: every weather asks for them. */
export function windLawsOf(table: DistanceData | undefined): WindLaws {
  if (table === undefined) return { headwind: undefined, tailwind: undefined, greatestHeadwind_kt: 0 };
  const { distance, corrections } = table;
  const headwind = lawOf(corrections.headwind);
  const axis = printedRange(distance, 'headwind');
  return {
    headwind,
    tailwind: lawOf(corrections.tailwind),
    greatestHeadwind_kt: axis === undefined ? (headwind?.cap_kt ?? 0) : Math.max(0, axis.to),
  };
}

function lawOf(law: DistanceData['corrections']['headwind' | 'tailwind']): WindLaw | undefined {
  return law && { percentPerKnot: law.change.value / inUnit(law.per, 'kt'), cap_kt: inUnit(law.upTo, 'kt') };
}
