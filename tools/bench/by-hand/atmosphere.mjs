// The formulas of `src/atmosphere` by hand: arguments in the order of the record's inputs, no checks, the same
// arithmetic.

const P0_hPa = 1013.25;
const T0_K = 288.15;
const Ti_K = 273.15;
const g0_mPerS2 = 9.80665;
const R_JPerKgK = 287.05287;
const r_m = 6356766;
const kt_mPerS = 1852 / 3600;
const L_KPerFt = 0.0065 * 0.3048;
const l0_degCPerFt = 0.00198;
const exponent = g0_mPerS2 / (R_JPerKgK * 0.0065);
const epsilon = 0.62198;
const n = 0.1902595366409528;

/** Temperature lapse of each layer, and temperature and pressure at its base. */
const layers = [
  { H_m: 0, T_K: 288.15, beta_KPerM: -0.0065 },
  { H_m: 11000, T_K: 216.65, beta_KPerM: 0 },
  { H_m: 20000, T_K: 216.65, beta_KPerM: 0.001 },
  { H_m: 32000, T_K: 228.65, beta_KPerM: 0.0028 },
  { H_m: 47000, T_K: 270.65, beta_KPerM: 0 },
  { H_m: 51000, T_K: 270.65, beta_KPerM: -0.0028 },
  { H_m: 71000, T_K: 214.65, beta_KPerM: -0.002 },
];
layers.reduce((p_hPa, layer, i) => {
  layer.p_hPa = p_hPa;
  return i + 1 < layers.length ? pressureIn(layer, layers[i + 1].H_m) : p_hPa;
}, P0_hPa);

function pressureIn({ H_m: base_m, T_K, beta_KPerM, p_hPa }, H_m) {
  if (beta_KPerM === 0) return p_hPa * Math.exp((-g0_mPerS2 * (H_m - base_m)) / (R_JPerKgK * T_K));
  return p_hPa * (1 + (beta_KPerM * (H_m - base_m)) / T_K) ** (-g0_mPerS2 / (beta_KPerM * R_JPerKgK));
}

const densityOf = (p_hPa, T_K) => (100 * p_hPa) / (R_JPerKgK * T_K);

function altitudeOfPressureAnywhere_m(p_hPa) {
  let i = 0;
  while (i < 6 && p_hPa <= layers[i + 1].p_hPa) i += 1;
  const { H_m, T_K, beta_KPerM, p_hPa: pb_hPa } = layers[i];
  if (beta_KPerM === 0) return H_m - ((R_JPerKgK * T_K) / g0_mPerS2) * Math.log(p_hPa / pb_hPa);
  return H_m + (T_K / beta_KPerM) * ((p_hPa / pb_hPa) ** (-(beta_KPerM * R_JPerKgK) / g0_mPerS2) - 1);
}

function altitudeOfDensityAnywhere_m(rho_kgPerM3) {
  let i = 0;
  while (i < 6 && rho_kgPerM3 <= densityOf(layers[i + 1].p_hPa, layers[i + 1].T_K)) i += 1;
  const { H_m, T_K, beta_KPerM, p_hPa: pb_hPa } = layers[i];
  const ratio = rho_kgPerM3 / densityOf(pb_hPa, T_K);
  if (beta_KPerM === 0) return H_m - ((R_JPerKgK * T_K) / g0_mPerS2) * Math.log(ratio);
  return H_m + (T_K / beta_KPerM) * (ratio ** (-1 / (g0_mPerS2 / (beta_KPerM * R_JPerKgK) + 1)) - 1);
}

const viscosity_PaS = (T_K) => (1.458e-6 * T_K ** 1.5) / (T_K + 110.4);
const viscosityAtSeaLevel_PaS = viscosity_PaS(T0_K);

function standardAir(H_m) {
  let i = 0;
  while (i < 6 && H_m >= layers[i + 1].H_m) i += 1;
  const layer = layers[i];
  const T_K = layer.T_K + layer.beta_KPerM * (H_m - layer.H_m);
  const p_hPa = pressureIn(layer, H_m);
  const rho_kgPerM3 = densityOf(p_hPa, T_K);
  const mu_PaS = viscosity_PaS(T_K);
  const sigma = rho_kgPerM3 / 1.225;
  return {
    temperature: T_K - Ti_K,
    pressure: p_hPa,
    density: rho_kgPerM3,
    speedOfSound: Math.sqrt(1.4 * R_JPerKgK * T_K) / kt_mPerS,
    dynamicViscosity: mu_PaS,
    kinematicViscosity: mu_PaS / rho_kgPerM3,
    freeFall: g0_mPerS2 * (r_m / (r_m + (r_m * H_m) / (r_m - H_m))) ** 2,
    temperatureRatio: T_K / T0_K,
    pressureRatio: p_hPa / P0_hPa,
    densityRatio: sigma,
    rootOfDensityRatio: Math.sqrt(sigma),
    viscosityRatio: mu_PaS / viscosityAtSeaLevel_PaS,
  };
}

const pressure_hPa = (H_ft) => P0_hPa * (1 - (L_KPerFt * H_ft) / T0_K) ** exponent;
const altitude_ft = (p_hPa) => (T0_K / L_KPerFt) * (1 - (p_hPa / P0_hPa) ** (1 / exponent));
const lower_hPa = (p_hPa, lower_ft) =>
  P0_hPa * ((p_hPa / P0_hPa) ** (1 / exponent) + (L_KPerFt * lower_ft) / T0_K) ** exponent;
const sigmaOf = (p_hPa, T_K) => (p_hPa / P0_hPa) * (T0_K / T_K);
const altitudeOfSigma_ft = (sigma) => (T0_K / L_KPerFt) * (1 - sigma ** (1 / (exponent - 1)));
const bolton_hPa = (t_degC) => 6.112 * Math.exp((17.67 * t_degC) / (t_degC + 243.5));
const wmo_hPa = (t_degC) => 6.112 * Math.exp((17.62 * t_degC) / (t_degC + 243.12));
const moistWmo_hPa = (t_degC, p_hPa) => (1.0016 + 3.15e-6 * p_hPa - 0.074 / p_hPa) * wmo_hPa(t_degC);
const virtual_K = (hp_ft, t_degC, td_degC) =>
  (t_degC + Ti_K) / (1 - (1 - epsilon) * (bolton_hPa(td_degC) / pressure_hPa(hp_ft)));
const raised = (p, r, power) => p * (1 + r / p ** power) ** (1 / power);
const lowering = (station_m) => ((1013.25 ** n * 0.0065) / 288) * station_m;
const cold_ft = (h_ft, t_degC, hss_ft) => {
  const t0_degC = t_degC + l0_degCPerFt * hss_ft;
  return (h_ft * (15 - t0_degC)) / (273 + t0_degC - 0.5 * l0_degCPerFt * (h_ft + hss_ft));
};

export const algebraic = {
  'atmosphere.speed-of-sound': (t_degC) => Math.sqrt(1.4 * R_JPerKgK * (t_degC + Ti_K)) / kt_mPerS,
  'atmosphere.standard-temperature': (hp_ft) => T0_K - L_KPerFt * hp_ft - Ti_K,
  'atmosphere.isa-deviation': (t_degC, hp_ft) => t_degC - (T0_K - L_KPerFt * hp_ft - Ti_K),
  'atmosphere.geopotential-altitude': (h_m) => (r_m * h_m) / (r_m + h_m),
  'atmosphere.geometric-altitude': (H_m) => (r_m * H_m) / (r_m - H_m),
  'atmosphere.density-altitude-near-standard': (hp_ft, deviation_degC) =>
    hp_ft + deviation_degC / (L_KPerFt * (exponent - 1)),
  'atmosphere.air-density': (p_hPa, t_degC) => (100 * p_hPa) / (R_JPerKgK * (t_degC + Ti_K)),
  'atmosphere.virtual-temperature-from-specific-humidity': (t_degC, q) =>
    (t_degC + Ti_K) * (1 + (1 / epsilon - 1) * q) - Ti_K,
  'atmosphere.virtual-temperature-from-mixing-ratio': (t_degC, r) =>
    ((t_degC + Ti_K) * (1 + r / epsilon)) / (1 + r) - Ti_K,
  'atmosphere.cold-temperature-correction': cold_ft,
  'atmosphere.tabulated-cold-temperature-correction': (h_ft, t_degC) =>
    Math.ceil(cold_ft(h_ft, t_degC, 0) / 10 - 1e-9) * 10 + 0,
};

export const transcendental = {
  'atmosphere.density-ratio': (hp_ft, t_degC) => sigmaOf(pressure_hPa(hp_ft), t_degC + Ti_K),
  'atmosphere.density-altitude': (hp_ft, t_degC) => altitudeOfSigma_ft(sigmaOf(pressure_hPa(hp_ft), t_degC + Ti_K)),
  'atmosphere.virtual-temperature': (hp_ft, t_degC, td_degC) => virtual_K(hp_ft, t_degC, td_degC) - Ti_K,
  'atmosphere.humid-density-altitude': (hp_ft, t_degC, td_degC) => {
    const p_hPa = pressure_hPa(hp_ft);
    const Tv_K = (t_degC + Ti_K) / (1 - (1 - epsilon) * (bolton_hPa(td_degC) / p_hPa));
    return altitudeOfSigma_ft(sigmaOf(p_hPa, Tv_K));
  },
  'atmosphere.pressure-altitude': (elevation_ft, qnh_hPa) => elevation_ft + altitude_ft(qnh_hPa),
  'atmosphere.pressure-altitude-from-qfe': altitude_ft,
  'atmosphere.standard-pressure': pressure_hPa,
  'atmosphere.saturation-vapour-pressure': bolton_hPa,
  'atmosphere.standard-atmosphere': standardAir,
  'atmosphere.standard-atmosphere-at-geometric-altitude': (h_m) => standardAir((r_m * h_m) / (r_m + h_m)),
  'atmosphere.standard-atmosphere-at-pressure-altitude': (hp_ft) => standardAir(hp_ft * 0.3048),
  'atmosphere.standard-atmosphere-at-pressure': (p_hPa) => standardAir(altitudeOfPressureAnywhere_m(p_hPa)),
  'atmosphere.pressure-altitude-from-pressure': (p_hPa) => altitudeOfPressureAnywhere_m(p_hPa) / 0.3048,
  'atmosphere.density-altitude-from-density': (rho_kgPerM3) => altitudeOfDensityAnywhere_m(rho_kgPerM3) / 0.3048,
  'atmosphere.qnh-from-qfe': (qfe_hPa, elevation_ft) => lower_hPa(qfe_hPa, elevation_ft),
  'atmosphere.qfe-from-qnh': (qnh_hPa, elevation_ft) => lower_hPa(qnh_hPa, -elevation_ft),
  'atmosphere.qnh-from-station-pressure': (p_hPa, station_ft) => lower_hPa(p_hPa, station_ft),
  'atmosphere.station-pressure-from-qnh': (qnh_hPa, station_ft) => lower_hPa(qnh_hPa, -station_ft),
  'atmosphere.qfe-from-station-pressure': (p_hPa, station_ft, elevation_ft) =>
    lower_hPa(p_hPa, station_ft - elevation_ft),
  'atmosphere.station-pressure-from-qfe': (qfe_hPa, elevation_ft, station_ft) =>
    lower_hPa(qfe_hPa, elevation_ft - station_ft),
  'atmosphere.qnh-from-pressure-altitude': (hp_ft, elevation_ft) => pressure_hPa(hp_ft - elevation_ft),
  'atmosphere.altimeter-setting-asos': (p_inHg, station_ft) => (p_inHg ** 0.1903 + 1.313e-5 * station_ft) ** 5.255,
  'atmosphere.altimeter-setting-awos': (p_inHg, station_ft) =>
    (p_inHg ** 0.1903 + 1.313e-5 * station_ft) ** (1 / 0.1903),
  'atmosphere.station-pressure-awos': (a_inHg, station_ft) =>
    (a_inHg ** 0.1903 - 1.313e-5 * station_ft) ** (1 / 0.1903),
  'atmosphere.altimeter-setting-smithsonian': (p_hPa, station_m) => raised(p_hPa - 0.3, lowering(station_m), n),
  'atmosphere.station-pressure-smithsonian': (a_hPa, station_m) => (a_hPa ** n - lowering(station_m)) ** (1 / n) + 0.3,
  'atmosphere.altimeter-setting-noaa': (p_hPa, station_m) => raised(p_hPa - 0.3, 8.42288069e-5 * station_m, 0.190284),
  'atmosphere.altimeter-setting-madis': (p_hPa, station_m) =>
    raised(p_hPa - 0.3, 8.4184960528e-5 * station_m, 0.190284),
  'atmosphere.altimeter-setting-iom-19': (p_inHg, station_m) => raised(p_inHg - 0.01, 4.30899e-5 * station_m, 0.190284),
  'atmosphere.indicated-altitude': (hp_ft, qnh_hPa) => hp_ft - altitude_ft(qnh_hPa),
  'atmosphere.indicated-height': (hp_ft, qfe_hPa) => hp_ft - altitude_ft(qfe_hPa),
  'atmosphere.pressure-altitude-nws': (elevation_ft, a_hPa) =>
    elevation_ft + 145366.45 * (1 - (a_hPa / 1013.25) ** 0.190284),
  'atmosphere.density-altitude-nws': (p_inHg, Tv_degR) => 145366 * (1 - ((17.326 * p_inHg) / Tv_degR) ** 0.235),
  'atmosphere.humid-air-density': (p_hPa, t_degC, td_degC) =>
    (100 * (p_hPa - (1 - epsilon) * bolton_hPa(td_degC))) / (R_JPerKgK * (t_degC + Ti_K)),
  'atmosphere.humid-density-ratio': (p_hPa, t_degC, u_percent) =>
    sigmaOf(p_hPa - (1 - epsilon) * (u_percent / 100) * bolton_hPa(t_degC), t_degC + Ti_K),
  'atmosphere.relative-humidity': (t_degC, td_degC) => (100 * bolton_hPa(td_degC)) / bolton_hPa(t_degC),
  'atmosphere.dew-point': (t_degC, u_percent) => {
    const w = Math.log(u_percent / 100) + (17.67 * t_degC) / (t_degC + 243.5);
    return Math.max(-40, Math.min(t_degC, (243.5 * w) / (17.67 - w)));
  },
  'atmosphere.saturation-vapour-pressure-tetens': (t_degC) => 6.1078 * 10 ** ((7.5 * t_degC) / (t_degC + 237.3)),
  'atmosphere.saturation-vapour-pressure-nws': (t_degC) => 6.11 * 10 ** ((7.5 * t_degC) / (t_degC + 237.7)),
  'atmosphere.saturation-vapour-pressure-buck-1981': (t_degC) =>
    6.1121 * Math.exp((17.502 * t_degC) / (t_degC + 240.97)),
  'atmosphere.saturation-vapour-pressure-buck-1996': (t_degC) =>
    6.1121 * Math.exp(((18.678 - t_degC / 234.5) * t_degC) / (t_degC + 257.14)),
  'atmosphere.saturation-vapour-pressure-wmo': wmo_hPa,
  'atmosphere.saturation-vapour-pressure-of-moist-air-wmo': moistWmo_hPa,
  'atmosphere.relative-humidity-wmo': (t_degC, p_hPa, r) =>
    (100 * ((r * p_hPa) / (epsilon + r))) / moistWmo_hPa(t_degC, p_hPa),
  'atmosphere.cold-temperature-correction-hydrostatic': (h_ft, t_degC, hss_ft) => {
    const Ts_K = T0_K - L_KPerFt * hss_ft;
    const deviation_K = t_degC + Ti_K - Ts_K;
    let d_ft = h_ft;
    for (let i = 0; i < 8; i += 1) {
      const T_K = Ts_K - L_KPerFt * d_ft;
      d_ft -= (d_ft - (deviation_K / L_KPerFt) * Math.log(T_K / Ts_K) - h_ft) / (1 + deviation_K / T_K);
    }
    return d_ft - h_ft;
  },
};
