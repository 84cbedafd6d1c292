// The formulas of `src/distance` by hand: arguments in the order of the record's inputs, no checks, the same arithmetic.

const rad = (angle_deg) => (angle_deg * Math.PI) / 180;

export const algebraic = {
  'distance.acceleration-check-speed': (vlof_kt, w_kt, x_m, roll_m) =>
    Math.max(0.7 * vlof_kt, w_kt + (vlof_kt - w_kt) * Math.sqrt(x_m / roll_m)),
  'distance.corrected-distance': (distance_m, factors) => {
    let corrected_m = distance_m;
    for (let i = 0; i < factors.length; i += 1) corrected_m *= factors[i];
    return corrected_m;
  },
  'distance.hydroplaning-speed': (p_psi) => 9 * Math.sqrt(p_psi),
  'distance.hydroplaning-speed-at-touchdown': (p_psi) => 7.7 * Math.sqrt(p_psi),
  'distance.hydroplaning-speed-earlier-handbook': (p_psi) => 8.6 * Math.sqrt(p_psi),
  'distance.latest-lift-off': (available_m, airborne_m) => available_m - airborne_m,
  'distance.latest-touchdown-point': (available_m, roll_m, increments_m) => available_m - (roll_m + increments_m),
  'distance.printed-law-factor': (percentPerStep, steps) => 1 + (percentPerStep * steps) / 100,
  'distance.slope-factor': (slope_percent, percentPerPercent) => 1 + (percentPerPercent * slope_percent) / 100,
  'distance.wind-factor': (wind_kt, percentPerKnot) => 1 + (percentPerKnot * wind_kt) / 100,
  'distance.latest-reject-point': (roll_m, v_kt, t_s, mu, asda_m) => {
    const v_mps = (v_kt * 1852) / 3600;
    const a = 1 + v_mps ** 2 / (2 * mu * 9.80665 * roll_m);
    const b = (t_s * v_mps) / Math.sqrt(roll_m);
    const y = (Math.sqrt(b ** 2 + 4 * a * asda_m) - b) / (2 * a);
    return Math.min(roll_m, y ** 2);
  },
  'distance.roll-with-surface': (roll_m, distance_m, factor) => roll_m + (factor - 1) * distance_m,
  'distance.speed-factor': (v_kt, vt_kt) => (v_kt / vt_kt) ** 2,
};

export const transcendental = {
  'distance.excess-height': (h_m, angle_deg) => h_m / Math.tan(rad(angle_deg)),
  'distance.pro-rated-factor': (factorPerStep, steps) => {
    const linear = 1 + (factorPerStep - 1) * steps;
    return steps <= 1 ? linear : Math.max(linear, factorPerStep ** steps);
  },
};
