// The formulas of `src/flight-path` by hand: arguments in the order of the record's inputs, no checks, the same
// arithmetic.

const g_mps2 = 9.80665;
const rad = (angle_deg) => (angle_deg * Math.PI) / 180;
const deg = (angle_rad) => (angle_rad * 180) / Math.PI;
const mps = (v_kt) => (v_kt * 1852) / 3600;
const climb_mps = (rate_ftPerMin) => (rate_ftPerMin * 0.3048) / 60;
const ftPerMin = (rate_mps) => (rate_mps * 60) / 0.3048;

/** The terms of the drag: k V² + h / V², less what the thrust loses with V². */
const k_kgPerM = (a_kgPerM, s_m2, rho_kgPerM3, cd0) => 0.5 * rho_kgPerM3 * s_m2 * cd0 - a_kgPerM;
const h_kgM3PerS4 = (m_kg, s_m2, rho_kgPerM3, k) => (2 * k * (m_kg * g_mps2) ** 2) / (rho_kgPerM3 * s_m2);

export const algebraic = {
  'flight-path.best-rate-speed': (m_kg, t0_N, a_kgPerM, s_m2, rho_kgPerM3, cd0, k) => {
    const kk = k_kgPerM(a_kgPerM, s_m2, rho_kgPerM3, cd0);
    const h = h_kgM3PerS4(m_kg, s_m2, rho_kgPerM3, k);
    return (Math.sqrt((t0_N + Math.sqrt(t0_N ** 2 + 12 * kk * h)) / (6 * kk)) * 3600) / 1852;
  },
  'flight-path.rate-from-thrust': (m_kg, t0_N, a_kgPerM, s_m2, rho_kgPerM3, cd0, k, _stall_kt, v_kt) => {
    const v_mps = mps(v_kt);
    const drag_N = k_kgPerM(a_kgPerM, s_m2, rho_kgPerM3, cd0) * v_mps ** 2;
    const excess_N = t0_N - drag_N - h_kgM3PerS4(m_kg, s_m2, rho_kgPerM3, k) / v_mps ** 2;
    return ftPerMin((excess_N * v_mps) / (m_kg * g_mps2));
  },
  'flight-path.absolute-ceiling': (r0_ftPerMin, hs_ft) => (hs_ft * r0_ftPerMin) / (r0_ftPerMin - 100),
  'flight-path.service-ceiling': (r0_ftPerMin, top_ft) => top_ft * (1 - 100 / r0_ftPerMin),
  'flight-path.rate-at-density-altitude': (r0_ftPerMin, top_ft, h_ft) => r0_ftPerMin * (1 - h_ft / top_ft),
  'flight-path.climb-gradient': (roc_ftPerMin, gs_kt) => climb_mps(roc_ftPerMin) / mps(gs_kt),
  'flight-path.crossover-wind': (vx_kt, rx_ftPerMin, vy_kt, ry_ftPerMin) =>
    (ry_ftPerMin * vx_kt - rx_ftPerMin * vy_kt) / (ry_ftPerMin - rx_ftPerMin),
  'flight-path.height-at-distance': (roc_ftPerMin, gs_kt, d_m) => (climb_mps(roc_ftPerMin) / mps(gs_kt)) * d_m,
  'flight-path.lateral-semi-width': (b_m, d_m) => (b_m < 60 ? b_m / 2 + 60 : 90) + 0.125 * d_m,
  'flight-path.latest-path-start': (top_m, c_m, screen_m, d_m, gradient, slope) =>
    (gradient * d_m + screen_m - top_m - c_m) / (gradient - slope),
  'flight-path.obstacle-clearance': (top_m, start_m, d_m, gradient) => start_m + gradient * d_m - top_m,
  'flight-path.procedure-climb-gradient-civil': (o_ft, e_ft, d_NM) => (o_ft - e_ft) / (0.76 * d_NM),
  'flight-path.procedure-climb-gradient-military': (o_ft, e_ft, d_NM) => (48 * d_NM + o_ft - e_ft) / d_NM,
  'flight-path.altitude-restriction-gradient': (a_ft, e_ft, d_NM) => (a_ft - e_ft) / d_NM,
  'flight-path.procedure-design-gradient': (h_m, d_m) => 0.008 + (h_m - 5) / d_m,
  'flight-path.procedure-gradient-rounded-up': (gradient_ftPerNM, step_ftPerNM) =>
    Math.ceil(gradient_ftPerNM / step_ftPerNM - 1e-9) * step_ftPerNM + 0,
  'flight-path.rate-for-gradient': (gradient, gs_kt) => ftPerMin(gradient * mps(gs_kt)),
  'flight-path.required-gradient': (top_m, c_m, start_m, d_m) => (top_m + c_m - start_m) / d_m,
  'flight-path.height-for-speed-gain': (from_kt, to_kt) => (mps(to_kt) ** 2 - mps(from_kt) ** 2) / (2 * g_mps2),
};

export const transcendental = {
  'flight-path.aiming-point-distance': (h_m, angle_deg) => h_m / Math.tan(rad(angle_deg)),
  'flight-path.aiming-point-past-threshold': (h_m, c_m, d_m, angle_deg) => (h_m + c_m) / Math.tan(rad(angle_deg)) - d_m,
  'flight-path.landing-distance-lost': (h_m, c_m, screen_m, d_m, angle_deg, slope_percent) => {
    const descent = Math.tan(rad(angle_deg));
    return Math.max(0, (h_m + c_m - screen_m - d_m * descent) / (descent - slope_percent / 100));
  },
  'flight-path.best-angle-speed': (m_kg, _t0_N, a_kgPerM, s_m2, rho_kgPerM3, cd0, k) => {
    const h = h_kgM3PerS4(m_kg, s_m2, rho_kgPerM3, k);
    return ((h / k_kgPerM(a_kgPerM, s_m2, rho_kgPerM3, cd0)) ** (1 / 4) * 3600) / 1852;
  },
  'flight-path.time-to-climb': (r0_ftPerMin, top_ft, h1_ft, h2_ft) =>
    (top_ft / r0_ftPerMin) * Math.log((top_ft - h1_ft) / (top_ft - h2_ft)),
  'flight-path.gradient-angle': (gradient) => deg(Math.atan(gradient)),
  'flight-path.gradient-from-angle': (angle_deg) => Math.tan(rad(angle_deg)),
  'flight-path.path-angle-for-clearance': (h_m, c_m, d_m) => deg(Math.atan((h_m + c_m) / d_m)),
  'flight-path.steepest-path': (gs_kt, rod_ftPerMin) => deg(Math.atan(climb_mps(rod_ftPerMin) / mps(gs_kt))),
  'flight-path.rate-of-descent': (gs_kt, angle_deg) => ftPerMin(mps(gs_kt) * Math.tan(rad(angle_deg))),
  'flight-path.rate-of-descent-along-path': (v_kt, angle_deg) => ftPerMin(mps(v_kt) * Math.sin(rad(angle_deg))),
  'flight-path.still-air-gradient': (roc_ftPerMin, v_kt) => Math.tan(Math.asin(climb_mps(roc_ftPerMin) / mps(v_kt))),
};

export const notByHand = {
  'flight-path.best-angle-speed-in-wind': 'a search by halving, whose cost is its number of steps',
};
