import type { LandingData } from '../../aircraft/index.ts';
import type { Situation } from '../request/situation.ts';
import { printedSpeed, type SpeedReading, tableSpeed } from '../request/speeds.ts';
import { massCriterion } from './mass-criterion.ts';

/** A situation with what its landing asks for beside. */
export interface LandingSituation extends Situation<LandingData> {
  /** By how much the threshold is passed above the height of the table. */
  readonly excessHeight_m: number;
  /** The approach speed printed for today's mass. */
  readonly published: SpeedReading;
  /** The one that the table's distance belongs to; an addition is paid for from there. */
  readonly ofTable: SpeedReading;
}

/** Adds the speeds of the approach, which depend on mass and configuration alone. */
export function withApproachSpeeds(situation: Situation, excessHeight_m: number): LandingSituation {
  const table = situation.table as LandingData | undefined;
  return { ...situation, table, excessHeight_m, ...approachSpeeds(situation) };
}

function approachSpeeds(situation: Situation): Pick<LandingSituation, 'published' | 'ofTable'> {
  const printed = situation.ready.approachSpeed;
  if (printed === undefined) {
    const parameters = { table: 'landing', configuration: situation.configuration };
    const none = { ok: false, reason: { code: 'no-table', parameters } } as const;
    return { published: none, ofTable: none };
  }
  return { published: printedSpeed(situation, printed), ofTable: tableSpeed(situation, printed) };
}

/**
 * The same situation at other masses, one after the other; what it returns holds until the next mass. A single copy is
 * loaded again for each, because copying so many fields costs as much as the landing itself.
 */
export function landingAtMasses(situation: LandingSituation): (mass_kg: number) => LandingSituation {
  const loaded: { -readonly [K in keyof LandingSituation]: LandingSituation[K] } = { ...situation };
  return (mass_kg) => {
    loaded.mass_kg = mass_kg;
    loaded.massCriterion = massCriterion(loaded);
    const { published, ofTable } = approachSpeeds(loaded);
    loaded.published = published;
    loaded.ofTable = ofTable;
    return loaded;
  };
}
