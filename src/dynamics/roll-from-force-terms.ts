import {
  type Domain,
  demand,
  inconsistent,
  type Metres,
  type MetresPerSecondSquared,
  type Numbers,
  type PerMetrePerSecondSquared,
  type Ratio,
  type TrueAirspeed,
} from '../units/index.ts';

/** Inputs of {@link rollFromForceTerms}. */
export interface RollFromForceTermsInputs {
  /** Net force at standstill as a share of the weight: thrust less friction, or braking. */
  readonly constantTerm: Ratio;
  /** Change of that share for each square of the speed. */
  readonly speedTerm: PerMetrePerSecondSquared;
  /** Speed that is gained or lost. */
  readonly speed: TrueAirspeed;
  /** Acceleration of free fall. */
  readonly gravity: MetresPerSecondSquared;
}

export const rollFromForceTermsDomain = {
  constantTerm: { unit: 'ratio', min: 0.01, max: 2, source: 'library range' },
  speedTerm: { unit: 's2PerM2', min: -0.002, max: 0.002, source: 'library range' },
  speed: { unit: 'ktas', min: 1, max: 300, source: 'library range' },
  gravity: { unit: 'mps2', min: 9, max: 10.5, source: 'free fall on the Earth, as textbooks round it' },
} satisfies Domain<RollFromForceTermsInputs>;

/**
 * Distance in calm air and on the level in which a force gains a speed from standstill, or loses it to standstill.
 *
 * s = ln(1 + (K_A/K_T) V²) / (2 g K_A): K_T the net force at standstill as a share of the weight, K_A its change for
 * each square of the speed in s²/m², V the true airspeed in m/s, g the acceleration of free fall in m/s². For a
 * take-off K_T = T/W − μ; for a braked roll K_T = μ with reverse thrust added, K_A with the sign turned.
 *
 * @param x - `constantTerm` 0.01 to 2, `speedTerm` −0.002 s²/m² to 0.002 s²/m² and not so low that the force is spent
 * below the speed, `speed` 1 KTAS to 300 KTAS, `gravity` 9 m/s² to 10.5 m/s².
 * @returns The distance in m.
 * @throws {@link DomainError} when a parameter is not within its range, or the speed is out of reach.
 * @record dynamics.roll-from-force-terms
 *
 * @example
 * rollFromForceTerms({ constantTerm: ratio(0.25), speedTerm: s2PerM2(-0.00005), speed: ktas(55), gravity: standardGravity }) // ≈ 177.93 ± 0.01
 */
export function rollFromForceTerms(x: RollFromForceTermsInputs): Metres {
  demand('constantTerm', x.constantTerm, rollFromForceTermsDomain.constantTerm);
  demand('speedTerm', x.speedTerm, rollFromForceTermsDomain.speedTerm);
  demand('speed', x.speed, rollFromForceTermsDomain.speed);
  demand('gravity', x.gravity, rollFromForceTermsDomain.gravity);
  const {
    constantTerm: kt,
    speedTerm: ka_s2PerM2,
    speed: v_kt,
    gravity: g_mps2,
  }: Numbers<RollFromForceTermsInputs> = x;
  const v_mps = (v_kt * 1852) / 3600;
  const change = (ka_s2PerM2 / kt) * v_mps ** 2;
  if (1 + change <= 0) refuseSpentForce(ka_s2PerM2, -kt / v_mps ** 2);
  // As printed, but with K_A taken out: the distance under the constant term alone times ln(1 + x)/x, which is 1 at 0.
  const share = change === 0 ? 1 : Math.log1p(change) / change;
  return ((v_mps ** 2 / (2 * g_mps2 * kt)) * share) as Metres;
}

function refuseSpentForce(received: number, min: number): never {
  const { unit, max } = rollFromForceTermsDomain.speedTerm;
  const source = 'a force is left at the speed';
  throw inconsistent('speedTerm', received, unit, min, max, source);
}
