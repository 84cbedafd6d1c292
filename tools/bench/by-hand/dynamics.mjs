// The formulas of `src/dynamics` by hand: arguments in the order of the record's inputs, no checks, the same arithmetic.

const g_mps2 = 9.80665;
const rad = (angle_deg) => (angle_deg * Math.PI) / 180;
const mps = (v_kt) => (v_kt * 1852) / 3600;

/** Distance through the air and time from one speed to another under the acceleration a - b V². */
function speedChange(a_mps2, b_perM, from_mps, to_mps) {
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

const thrust_N = (s_m, m_kg, vlof_kt, mu, slope_percent, vw_kt) => {
  const theta_rad = Math.atan(slope_percent / 100);
  const acceleration_mps2 = mps(vlof_kt - vw_kt) ** 2 / (2 * s_m);
  return m_kg * (acceleration_mps2 + g_mps2 * (mu * Math.cos(theta_rad) + Math.sin(theta_rad)));
};

const rollRatio = (known_N, s_m, otherSpeed_kt, mass_kg, mu, slope_percent, vw_kt) => {
  const theta_rad = Math.atan(slope_percent / 100);
  const resistance_mps2 = g_mps2 * (mu * Math.cos(theta_rad) + Math.sin(theta_rad));
  return mps(otherSpeed_kt - vw_kt) ** 2 / (2 * (known_N / mass_kg - resistance_mps2)) / s_m;
};

export const algebraic = {
  'dynamics.aerodynamic-roll-term': (rho_kgPerM3, loading_NPerM2, cd, cl, mu) =>
    (-rho_kgPerM3 / (2 * loading_NPerM2)) * (cd - mu * cl),
  'dynamics.drag-coefficient-near-ground': (cd0, gearDrag, k1, e, aspectRatio, phi, cl) =>
    cd0 + gearDrag + (k1 + phi / (Math.PI * e * aspectRatio)) * cl ** 2,
  'dynamics.factor-from-roll-ratio': (r, s_m, d_m) => 1 + ((r - 1) * s_m) / d_m,
  'dynamics.flight-path-radius': (v_kt, n, gravity_mps2) => mps(v_kt) ** 2 / (gravity_mps2 * (n - 1)),
  'dynamics.ground-effect-factor': (h_m, b_m) => {
    const square = ((16 * h_m) / b_m) ** 2;
    return square / (1 + square);
  },
  'dynamics.ground-roll-short-form': (m_kg, v_kt, thrust_N, drag_N, lift_N, mu, gravity_mps2) =>
    (mps(v_kt) ** 2 * m_kg) / (2 * (thrust_N - (drag_N + mu * (m_kg * gravity_mps2 - lift_N)))),
  'dynamics.power-lapse': (sigma) => sigma - (1 - sigma) / 7.55,
  'dynamics.rotation-distance': (v_kt, n_s) => n_s * mps(v_kt),
};

export const transcendental = {
  'dynamics.airborne-distance-in-arc': (r_m, h_m) => ({
    distance: Math.sqrt(h_m * (2 * r_m - h_m)),
    pathAngle: (2 * Math.asin(Math.sqrt(h_m / (2 * r_m))) * 180) / Math.PI,
  }),
  'dynamics.airborne-distance': (r_m, h_m, gamma_deg) => {
    const gamma_rad = rad(gamma_deg);
    const arcHeight_m = 2 * r_m * Math.sin(gamma_rad / 2) ** 2;
    if (arcHeight_m >= h_m) return Math.sqrt(h_m * (2 * r_m - h_m));
    return r_m * Math.sin(gamma_rad) + (h_m - arcHeight_m) / Math.tan(gamma_rad);
  },
  'dynamics.approach-distance': (h_m, hf_m, theta_deg) => (h_m - hf_m) / Math.tan(rad(theta_deg)),
  'dynamics.braked-roll': (m_kg, v_kt, thrust_N, s_m2, rho_kgPerM3, cl, cd, mu, n_s, slope_percent, vw_kt) => {
    const theta_rad = Math.atan(slope_percent / 100);
    const v_mps = mps(v_kt);
    const vw_mps = mps(vw_kt);
    const a_mps2 = g_mps2 * (mu * Math.cos(theta_rad) + Math.sin(theta_rad) - thrust_N / (m_kg * g_mps2));
    const b_perM = (0.5 * rho_kgPerM3 * s_m2 * (cd - mu * cl)) / m_kg;
    const { airDistance_m, time_s } = speedChange(a_mps2, -b_perM, vw_mps, v_mps);
    return { distance: n_s * (v_mps - vw_mps) + airDistance_m - vw_mps * time_s, time: n_s + time_s };
  },
  'dynamics.effective-thrust': thrust_N,
  'dynamics.flare-height': (r_m, theta_deg) => r_m * (1 - Math.cos(rad(theta_deg))),
  'dynamics.flare-distance': (r_m, theta_deg) => r_m * Math.sin(rad(theta_deg)),
  'dynamics.ground-roll': (m_kg, vlof_kt, t0_N, a_kgPerM, s_m2, rho_kgPerM3, cl, cd, mu, slope_percent, vw_kt) => {
    const theta_rad = Math.atan(slope_percent / 100);
    const vw_mps = mps(vw_kt);
    const a_mps2 = g_mps2 * (t0_N / (m_kg * g_mps2) - mu * Math.cos(theta_rad) - Math.sin(theta_rad));
    const b_perM = (0.5 * rho_kgPerM3 * s_m2 * (cd - mu * cl) - a_kgPerM) / m_kg;
    const { airDistance_m, time_s } = speedChange(a_mps2, b_perM, vw_mps, mps(vlof_kt));
    return { distance: airDistance_m - vw_mps * time_s, time: time_s };
  },
  'dynamics.roll-from-force-terms': (kt, ka_s2PerM2, v_kt, gravity_mps2) => {
    const v_mps = mps(v_kt);
    const change = (ka_s2PerM2 / kt) * v_mps ** 2;
    const share = change === 0 ? 1 : Math.log1p(change) / change;
    return (v_mps ** 2 / (2 * gravity_mps2 * kt)) * share;
  },
  // biome-ignore format: one line of arguments for each of the two rolls
  'dynamics.roll-ratio': (
    s_m, m_kg, vlof_kt, leastMu, mostMu, slope_percent, vw_kt,
    other_kg, otherLeastMu, otherMostMu, otherSlope_percent, otherVw_kt,
  ) => {
    const otherSpeed_kt = vlof_kt * Math.sqrt(other_kg / m_kg);
    const strong_N = thrust_N(s_m, m_kg, vlof_kt, mostMu, slope_percent, vw_kt);
    const weak_N = thrust_N(s_m, m_kg, vlof_kt, leastMu, slope_percent, vw_kt);
    return {
      low: rollRatio(strong_N, s_m, otherSpeed_kt, other_kg, otherLeastMu, otherSlope_percent, otherVw_kt),
      high: rollRatio(weak_N, s_m, otherSpeed_kt, other_kg, otherMostMu, otherSlope_percent, otherVw_kt),
    };
  },
};

export const notByHand = {
  'dynamics.ground-roll-by-integration':
    'a numerical integral, refined until it settles: its cost is its number of steps',
};
