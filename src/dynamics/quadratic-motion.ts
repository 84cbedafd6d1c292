/** A change of speed along a line: how far through the air, and in what time. */
interface SpeedChange {
  readonly airDistance_m: number;
  readonly time_s: number;
}

/**
 * Distance through the air and time in which an acceleration A − B V² takes the airspeed from V₀ up to V₁:
 * ∫ V dV / (A − B V²) and ∫ dV / (A − B V²). The acceleration must be positive at both ends and at no airspeed.
 *
 * The textbook forms ln[(A − B V₀²)/(A − B V₁²)]/(2B) and [atanh(V₁√(B/A)) − atanh(V₀√(B/A))]/√(AB) lose their digits
 * as B nears 0; the logarithm is therefore taken of 1 + x, and the two arguments are joined by the addition theorem.
 */
export function speedChange(a_mps2: number, b_perM: number, from_mps: number, to_mps: number): SpeedChange {
  const gain_mps = to_mps - from_mps;
  const last_mps2 = a_mps2 - b_perM * to_mps ** 2;
  const joint_mps2 = a_mps2 - b_perM * from_mps * to_mps;
  const squares = to_mps ** 2 - from_mps ** 2;
  const k_perS = Math.sqrt(Math.abs(a_mps2 * b_perM));
  const excess = (b_perM * squares) / last_mps2;
  const airDistance_m = (squares / (2 * last_mps2)) * (excess === 0 ? 1 : Math.log1p(excess) / excess);
  if (k_perS === 0) return { airDistance_m, time_s: gain_mps / a_mps2 };
  const time_s =
    b_perM > 0
      ? Math.atanh((k_perS * gain_mps) / joint_mps2) / k_perS
      : Math.atan2(k_perS * gain_mps, joint_mps2) / k_perS;
  return { airDistance_m, time_s };
}
