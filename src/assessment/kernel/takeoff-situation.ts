import type { TakeoffData } from '../../aircraft/index.ts';
import type { Situation } from '../request/situation.ts';
import { flownSpeed, type SpeedReading, tableSpeed } from '../request/speeds.ts';
import { climbSpeedOf } from './climb-out.ts';
import { massCriterion } from './mass-criterion.ts';
import { type SafetyRule, safetyRuleOf } from './safety.ts';

/** A situation with the speeds of its take-off. */
export interface TakeoffSituation extends Situation<TakeoffData> {
  readonly liftOff: SpeedReading;
  /** The speed that the table's ground roll belongs to; an addition is paid for from there. */
  readonly tableLiftOff: SpeedReading;
  readonly atScreen: SpeedReading;
  /** None without climb data. */
  readonly climbSpeed: SpeedReading | undefined;
  readonly hasAddition: boolean;
  readonly safetyRule: SafetyRule;
}

/** Adds the speeds of the take-off, which depend on mass and configuration alone. */
export function withTakeoffSpeeds(situation: Situation, addition_kt: number): TakeoffSituation {
  return {
    ...situation,
    table: situation.table as TakeoffData | undefined,
    ...takeoffSpeeds(situation, addition_kt),
    hasAddition: addition_kt > 0,
    safetyRule: safetyRuleOf(situation),
  };
}

type TakeoffSpeeds = Pick<TakeoffSituation, 'liftOff' | 'tableLiftOff' | 'atScreen' | 'climbSpeed'>;

function takeoffSpeeds(situation: Situation, addition_kt: number): TakeoffSpeeds {
  const { liftOffSpeed, speedAtScreenHeight } = situation.ready;
  const climbSpeed = climbSpeedOf(situation);
  if (liftOffSpeed === undefined || speedAtScreenHeight === undefined) {
    const parameters = { table: 'take-off', configuration: situation.configuration };
    const none = { ok: false, reason: { code: 'no-table', parameters } } as const;
    return { liftOff: none, tableLiftOff: none, atScreen: none, climbSpeed };
  }
  return {
    liftOff: flownSpeed(situation, liftOffSpeed, addition_kt),
    tableLiftOff: tableSpeed(situation, liftOffSpeed),
    atScreen: flownSpeed(situation, speedAtScreenHeight, addition_kt),
    climbSpeed,
  };
}

/** The same situation at other masses, one after the other. What either returns holds until the next mass. */
export interface TakeoffAtMasses {
  readonly whole: (mass_kg: number) => TakeoffSituation;
  /** For the distance alone, which needs no speeds where nothing is added to them. */
  readonly distanceAlone: (mass_kg: number) => TakeoffSituation;
}

/** A single copy is loaded again for each mass, because copying so many fields costs as much as the take-off itself. */
export function takeoffAtMasses(situation: TakeoffSituation, addition_kt: number): TakeoffAtMasses {
  const loaded: { -readonly [K in keyof TakeoffSituation]: TakeoffSituation[K] } = { ...situation };
  const whole = (mass_kg: number) => {
    loaded.mass_kg = mass_kg;
    loaded.massCriterion = massCriterion(loaded);
    const { liftOff, tableLiftOff, atScreen, climbSpeed } = takeoffSpeeds(loaded, addition_kt);
    loaded.liftOff = liftOff;
    loaded.tableLiftOff = tableLiftOff;
    loaded.atScreen = atScreen;
    loaded.climbSpeed = climbSpeed;
    return loaded;
  };
  const needsSpeeds = situation.hasAddition || situation.policies.firstPrinciples === 'more adverse';
  const withoutSpeeds = (mass_kg: number) => {
    loaded.mass_kg = mass_kg;
    loaded.liftOff = notRead;
    loaded.tableLiftOff = notRead;
    loaded.atScreen = notRead;
    loaded.climbSpeed = notRead;
    return loaded;
  };
  return { whole, distanceAlone: needsSpeeds ? whole : withoutSpeeds };
}

const notRead: SpeedReading = { ok: false, reason: { code: 'mark-not-known', parameters: {} } };
