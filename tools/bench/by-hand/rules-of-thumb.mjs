// The rules of `src/rules-of-thumb` by hand: arguments in the order of the record's inputs, no checks.

export const algebraic = {
  'rules-of-thumb.density-altitude': (hp_ft, deviation_degC) => hp_ft + 120 * deviation_degC,
  'rules-of-thumb.standard-temperature': (hp_ft) => 15 - (2 * hp_ft) / 1000,
  'rules-of-thumb.pressure-altitude': (elevation_ft, qnh_hPa, k_ftPerHPa) =>
    elevation_ft + k_ftPerHPa * (1013.25 - qnh_hPa),
  'rules-of-thumb.pressure-altitude-by-inch': (elevation_ft, a_inHg) => elevation_ft + 1000 * (29.92 - a_inHg),
  'rules-of-thumb.true-airspeed': (vc_kt, hp_ft, q_percent) => vc_kt * (1 + ((q_percent / 100) * hp_ft) / 1000),
  'rules-of-thumb.crosswind-by-clock-rule': (wind_kt, angle_deg) => wind_kt * Math.min(angle_deg / 60, 1),
  'rules-of-thumb.crosswind-by-angle-plus-twenty': (wind_kt, angle_deg) =>
    wind_kt * Math.min((angle_deg + 20) / 100, 1),
  'rules-of-thumb.track-error-by-one-in-sixty': (off_NM, along_NM) => (60 * off_NM) / along_NM,
  'rules-of-thumb.drift-by-one-in-sixty': (crosswind_kt, v_kt) => (60 * crosswind_kt) / v_kt,
  'rules-of-thumb.descent-distance': (height_ft) => height_ft / 300,
  'rules-of-thumb.rate-of-descent': (gs_kt) => 5 * gs_kt,
  'rules-of-thumb.rate-of-climb': (gradient_percent, gs_kt) => gradient_percent * gs_kt,
  'rules-of-thumb.acceleration-check': (vlof_kt) => 0.7 * vlof_kt,
  'rules-of-thumb.roll-factor-by-wind-square': (w_kt, v_kt) => (1 - w_kt / v_kt) ** 2,
  'rules-of-thumb.roll-factor-by-mass-square': (m_kg, m0_kg) => (m_kg / m0_kg) ** 2,
};

export const transcendental = {};
