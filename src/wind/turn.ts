import {
  type Degrees,
  type DegreesPerSecond,
  type Domain,
  demand,
  type GroundSpeed,
  type Metres,
  type Numbers,
  type Seconds,
  type TrueAirspeed,
} from '../units/index.ts';

/** Inputs of {@link turnRadius}. */
export interface TurnRadiusInputs {
  readonly trueAirspeed: TrueAirspeed;
  /** Angle of bank, without regard to its side. */
  readonly bank: Degrees;
}

/** Inputs of {@link rateOfTurn}. */
export interface RateOfTurnInputs {
  readonly trueAirspeed: TrueAirspeed;
  /** Angle of bank, without regard to its side. */
  readonly bank: Degrees;
}

/** Inputs of {@link turnTime}. */
export interface TurnTimeInputs {
  readonly trueAirspeed: TrueAirspeed;
  /** Angle of bank, without regard to its side. */
  readonly bank: Degrees;
  /** Angle through which the heading turns. */
  readonly headingChange: Degrees;
}

/** Inputs of {@link bankAroundPoint}. */
export interface BankAroundPointInputs {
  /** Speed over the ground where the wind is straight ahead or straight behind. */
  readonly groundSpeed: GroundSpeed;
  /** Radius of the circle over the ground. */
  readonly radius: Metres;
}

export const turnRadiusDomain = {
  trueAirspeed: { unit: 'ktas', min: 10, max: 500, source: 'library range' },
  bank: { unit: 'deg', min: 1, max: 75, source: 'library range' },
} satisfies Domain<TurnRadiusInputs>;

export const rateOfTurnDomain = {
  trueAirspeed: { unit: 'ktas', min: 10, max: 500, source: 'library range' },
  bank: { unit: 'deg', min: 0, max: 75, source: 'library range' },
} satisfies Domain<RateOfTurnInputs>;

export const turnTimeDomain = {
  trueAirspeed: { unit: 'ktas', min: 10, max: 500, source: 'library range' },
  bank: { unit: 'deg', min: 1, max: 75, source: 'library range' },
  headingChange: { unit: 'deg', min: 0, max: 360, source: 'at most one full turn' },
} satisfies Domain<TurnTimeInputs>;

export const bankAroundPointDomain = {
  groundSpeed: { unit: 'ktGS', min: 10, max: 300, source: 'library range' },
  radius: { unit: 'm', min: 20, max: 20000, source: 'library range' },
} satisfies Domain<BankAroundPointInputs>;

/** Standard acceleration of free fall. */
const g_mps2 = 9.80665;

/**
 * Radius of a level, coordinated turn through the air; over the ground a wind stretches the circle into a trochoid.
 *
 * R = V² / (g tan φ): V the true airspeed given in kt and taken in m/s, φ the angle of bank, g = 9.80665 m/s². The
 * handbook prints R = V² / (11.26 tan φ) in ft and kt; with the exact foot and g the constant is 11.294.
 *
 * @param x - `trueAirspeed` 10 KTAS to 500 KTAS, `bank` 1° to 75°.
 * @returns The radius in m.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record wind.turn-radius
 *
 * @example
 * turnRadius({ trueAirspeed: ktas(65), bank: degrees(20) }) // ≈ 313.3 ± 0.1
 */
export function turnRadius(x: TurnRadiusInputs): Metres {
  demand('trueAirspeed', x.trueAirspeed, turnRadiusDomain.trueAirspeed);
  demand('bank', x.bank, turnRadiusDomain.bank);
  const { trueAirspeed: v_kt, bank: bank_deg }: Numbers<TurnRadiusInputs> = x;
  return radiusOf_m(v_kt, bank_deg) as Metres;
}

/**
 * Rate of turn in a level, coordinated turn: how fast the heading changes, in any wind.
 *
 * ω = g tan φ / V: V the true airspeed given in kt and taken in m/s, φ the angle of bank, g = 9.80665 m/s². The handbook
 * prints 1091 tan φ / V in degrees per second and kt; the exact constant is 1092.2.
 *
 * @param x - `trueAirspeed` 10 KTAS to 500 KTAS, `bank` 0° to 75°.
 * @returns The rate of turn in degrees per second.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record wind.rate-of-turn
 *
 * @example
 * rateOfTurn({ trueAirspeed: ktas(65), bank: degrees(20) }) // ≈ 6.116 ± 0.001
 */
export function rateOfTurn(x: RateOfTurnInputs): DegreesPerSecond {
  demand('trueAirspeed', x.trueAirspeed, rateOfTurnDomain.trueAirspeed);
  demand('bank', x.bank, rateOfTurnDomain.bank);
  const { trueAirspeed: v_kt, bank: bank_deg }: Numbers<RateOfTurnInputs> = x;
  return rateOf_degPerS(v_kt, bank_deg) as DegreesPerSecond;
}

/**
 * Time in which a level, coordinated turn changes the heading by an angle. Rolling in and out is not in it.
 *
 * t = Δψ / ω with ω = g tan φ / V: Δψ the change of heading, the others as in {@link rateOfTurn}.
 *
 * @param x - `trueAirspeed` 10 KTAS to 500 KTAS, `bank` 1° to 75°, `headingChange` 0° to 360°.
 * @returns The time in s.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record wind.turn-time
 *
 * @example
 * turnTime({ trueAirspeed: ktas(65), bank: degrees(20), headingChange: degrees(90) }) // ≈ 14.72 ± 0.01
 */
export function turnTime(x: TurnTimeInputs): Seconds {
  demand('trueAirspeed', x.trueAirspeed, turnTimeDomain.trueAirspeed);
  demand('bank', x.bank, turnTimeDomain.bank);
  demand('headingChange', x.headingChange, turnTimeDomain.headingChange);
  const { trueAirspeed: v_kt, bank: bank_deg, headingChange: change_deg }: Numbers<TurnTimeInputs> = x;
  return (change_deg / rateOf_degPerS(v_kt, bank_deg)) as Seconds;
}

/**
 * Angle of bank that keeps a circle around a point on the ground, where the wind is straight ahead or straight behind:
 * with the tailwind it is the steepest of the circle, with the headwind the shallowest.
 *
 * φ = arctan(V_G² / (g R)): V_G the ground speed there, given in kt and taken in m/s, R the radius over the ground in m,
 * g = 9.80665 m/s². Only at these two points do heading and track agree, so that the ground speed may stand for V.
 *
 * @param x - `groundSpeed` 10 kt to 300 kt, `radius` 20 m to 20 000 m.
 * @returns The angle of bank in degrees.
 * @throws {@link DomainError} when a parameter is not within its range.
 * @record wind.bank-around-point
 *
 * @example
 * bankAroundPoint({ groundSpeed: ktGS(95), radius: m(400) }) // ≈ 31.34 ± 0.01
 */
export function bankAroundPoint(x: BankAroundPointInputs): Degrees {
  demand('groundSpeed', x.groundSpeed, bankAroundPointDomain.groundSpeed);
  demand('radius', x.radius, bankAroundPointDomain.radius);
  const { groundSpeed: v_kt, radius: radius_m }: Numbers<BankAroundPointInputs> = x;
  return bankFor(v_kt, radius_m) as Degrees;
}

/** The radius in m at which a speed turns with an angle of bank. */
export function radiusOf_m(v_kt: number, bank_deg: number): number {
  const v_mps = (v_kt * 1852) / 3600;
  return v_mps ** 2 / (g_mps2 * tangent(bank_deg));
}

/** The rate in degrees per second at which a speed turns with an angle of bank. */
export function rateOf_degPerS(v_kt: number, bank_deg: number): number {
  const v_mps = (v_kt * 1852) / 3600;
  const rate_radPerS = (g_mps2 * tangent(bank_deg)) / v_mps;
  return (rate_radPerS * 180) / Math.PI;
}

/** The angle of bank in degrees with which a speed turns at a radius. */
export function bankFor(v_kt: number, radius_m: number): number {
  const v_mps = (v_kt * 1852) / 3600;
  return (Math.atan(v_mps ** 2 / (g_mps2 * radius_m)) * 180) / Math.PI;
}

function tangent(angle_deg: number): number {
  return Math.tan((angle_deg * Math.PI) / 180);
}
