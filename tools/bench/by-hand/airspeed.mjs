// The formulas of `src/airspeed` by hand: arguments in the order of the record's inputs, no checks, the same arithmetic.
// A calibrated airspeed is defined by the pressure and the speed of sound of the standard atmosphere at mean sea level.

const P0_hPa = 1013.25;
const T0_K = 288.15;
const Ti_K = 273.15;
const L_KPerFt = 0.0065 * 0.3048;
const exponent = 9.80665 / (287.05287 * 0.0065);
const a0_kt = Math.sqrt(1.4 * 287.05287 * T0_K) / (1852 / 3600);

const sound_kt = (t_degC) => Math.sqrt(1.4 * 287.05287 * (t_degC + Ti_K)) / (1852 / 3600);
const delta = (hp_ft) => (P0_hPa * (1 - (L_KPerFt * hp_ft) / T0_K) ** exponent) / P0_hPa;
const sigma = (hp_ft, t_degC) => delta(hp_ft) * (T0_K / (t_degC + Ti_K));
const impactRatio = (mach) => Math.expm1(3.5 * Math.log1p(0.2 * mach ** 2));
const machOfImpactRatio = (ratio) => Math.sqrt(5 * Math.expm1((2 / 7) * Math.log1p(ratio)));
const machOfCalibrated = (vc_kt, delta) => machOfImpactRatio(impactRatio(vc_kt / a0_kt) / delta);
const calibratedOfMach = (mach, delta) => a0_kt * machOfImpactRatio(delta * impactRatio(mach));
const equivalentOfMach = (mach, delta) => mach * a0_kt * Math.sqrt(delta);

export const algebraic = {
  'airspeed.gust-increment': (mean_kt, gust_kt) => gust_kt - mean_kt,
  'airspeed.approach-speed': (published_kt, increment_kt) => published_kt + increment_kt / 2,
  'airspeed.stall-speed-multiple': (vs_kt, k) => k * vs_kt,
  'airspeed.stall-speed-at-load-factor': (vs_kt, n) => vs_kt * Math.sqrt(n),
  'airspeed.load-factor-at-stall': (v_kt, vs_kt) => (v_kt / vs_kt) ** 2,
  'airspeed.manoeuvring-speed': (vRef_kt, mRef_kg, m_kg) => vRef_kt * Math.sqrt(m_kg / mRef_kg),
  'airspeed.half-gust-increment': (mean_kt, gust_kt) => (gust_kt - mean_kt) / 2,
  'airspeed.quarter-mean-or-half-increment': (mean_kt, gust_kt) =>
    mean_kt <= 16 ? 0 : Math.max(mean_kt / 4, (gust_kt - mean_kt) / 2),
  'airspeed.mach-number-from-true': (v_kt, t_degC) => v_kt / sound_kt(t_degC),
  'airspeed.true-airspeed-from-mach': (mach, t_degC) => mach * sound_kt(t_degC),
};

export const transcendental = {
  'airspeed.load-factor-in-turn': (bank_deg) => 1 / Math.cos((bank_deg * Math.PI) / 180),
  'airspeed.stall-speed': (vRef_kt, mRef_kg, m_kg, bank_deg) =>
    vRef_kt * Math.sqrt(m_kg / mRef_kg) * Math.sqrt(1 / Math.cos((bank_deg * Math.PI) / 180)),
  'airspeed.impact-pressure': (vc_kt) => P0_hPa * impactRatio(vc_kt / a0_kt),
  'airspeed.calibrated-airspeed-from-impact-pressure': (qc_hPa) => a0_kt * machOfImpactRatio(qc_hPa / P0_hPa),
  'airspeed.mach-number-from-calibrated': (vc_kt, hp_ft) => machOfCalibrated(vc_kt, delta(hp_ft)),
  'airspeed.mach-number-from-equivalent': (ve_kt, hp_ft) => ve_kt / equivalentOfMach(1, delta(hp_ft)),
  'airspeed.calibrated-airspeed-from-mach': (mach, hp_ft) => calibratedOfMach(mach, delta(hp_ft)),
  'airspeed.calibrated-airspeed-from-equivalent': (ve_kt, hp_ft) => {
    const d = delta(hp_ft);
    return calibratedOfMach(ve_kt / equivalentOfMach(1, d), d);
  },
  'airspeed.calibrated-airspeed-from-true': (v_kt, hp_ft, t_degC) =>
    calibratedOfMach(v_kt / sound_kt(t_degC), delta(hp_ft)),
  'airspeed.equivalent-airspeed-from-calibrated': (vc_kt, hp_ft) => {
    const d = delta(hp_ft);
    return equivalentOfMach(machOfCalibrated(vc_kt, d), d);
  },
  'airspeed.equivalent-airspeed-from-mach': (mach, hp_ft) => equivalentOfMach(mach, delta(hp_ft)),
  'airspeed.equivalent-airspeed-from-true': (v_kt, hp_ft, t_degC) => v_kt * Math.sqrt(sigma(hp_ft, t_degC)),
  'airspeed.compressibility-factor': (vc_kt, hp_ft) => {
    const d = delta(hp_ft);
    return equivalentOfMach(machOfCalibrated(vc_kt, d), d) / vc_kt;
  },
  'airspeed.true-airspeed': (vc_kt, hp_ft, t_degC) => machOfCalibrated(vc_kt, delta(hp_ft)) * sound_kt(t_degC),
  'airspeed.true-airspeed-from-equivalent': (ve_kt, hp_ft, t_degC) => ve_kt / Math.sqrt(sigma(hp_ft, t_degC)),
  'airspeed.true-airspeed-incompressible': (vc_kt, hp_ft, t_degC) => vc_kt / Math.sqrt(sigma(hp_ft, t_degC)),
  'airspeed.calibrated-airspeed-incompressible': (v_kt, hp_ft, t_degC) => v_kt * Math.sqrt(sigma(hp_ft, t_degC)),
};
