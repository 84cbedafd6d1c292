// A prepared take-off by hand: the arithmetic of the criteria of examples/requests/takeoff-28.json and takeoff-10.json in
// one function, for these two situations alone. Tables lie flat, and one bracket serves those with the same axes.
// Nothing is checked, nothing is refused, nothing is noted, and there are no reasons, edges, axes or laws but these.
import { below } from './below.mjs';

const P0_hPa = 1013.25;
const T0_K = 288.15;
const L_KPerFt = 0.0065 * 0.3048;
const exponent = 9.80665 / (287.05287 * 0.0065);
const a0_kt = Math.sqrt(1.4 * 287.05287 * T0_K) / (1852 / 3600);

const mass_kg = 940;
const climb_kcas = 57.8;
const available_m = 830;
const verticalClearance_m = 50 * 0.3048;
const screen_m = 50 * 0.3048;

/** What differs between the two directions; elevations of the runway's ends in feet. */
const situations = {
  10: { direction: 112, start_ft: 387, slope_percent: (100 * (438 - 387) * 0.3048) / 830, beyond_m: 25 },
  28: { direction: 292, start_ft: 438, slope_percent: (100 * (387 - 438) * 0.3048) / 830, beyond_m: undefined },
};
const pinesTop_m = 438 * 0.3048 + 28;

const upwards = (value, perUnit) => Math.ceil(value * perUnit - 1e-9) / perUnit;
const downwards = (value, perUnit) => Math.floor(value * perUnit + 1e-9) / perUnit;
const near = (value, limit) => Math.abs(value - limit) <= 1e-9 * Math.max(1, Math.abs(limit));

export function atMost(id, value, limit) {
  const shown = near(value, limit) ? limit : upwards(value, 1);
  const verdict = shown <= limit ? 'within' : 'outside';
  return {
    id,
    verdict,
    value: shown,
    limit,
    margin: limit - shown,
    unroundedValue: value,
    unroundedMargin: limit - value,
  };
}

function atLeast(id, value, limit, perUnit) {
  const shown = downwards(value, perUnit);
  const bound = near(value, limit) ? shown : upwards(limit, perUnit);
  const margin = Math.round((shown - bound) * perUnit) / perUnit;
  const verdict = shown >= bound ? 'within' : 'outside';
  return { id, verdict, value: shown, limit: bound, margin, unroundedValue: value, unroundedMargin: value - limit };
}

export const open = (id, limit) => ({
  id,
  verdict: 'undetermined',
  value: undefined,
  limit,
  margin: undefined,
  unroundedValue: undefined,
  unroundedMargin: undefined,
});

/** The take-off by hand towards one end; the performance data give the tables. */
export function takeoffByHand(performanceData, designator) {
  const { direction, start_ft, slope_percent, beyond_m } = situations[designator];
  const [{ groundRoll, distance }] = performanceData.takeoff;
  const climb = performanceData.climb.find(({ use }) => use === 'initial');
  const [masses, altitudes, temperatures] = distance.axes.map(({ values }) => Float64Array.from(values));
  const [rolls, distances, rates] = [groundRoll, distance, climb.rateOfClimb].map(({ cells }) =>
    Float64Array.from(cells.flat(2)),
  );
  const alongTemperature = temperatures.length;
  const alongMass = altitudes.length * temperatures.length;

  /** A figure of a flat table, from the corner below the point and the shares of the way to the one above. */
  function figure(cells, corner, m, p, t) {
    const at = (i) => cells[i] + (cells[i + 1] - cells[i]) * t;
    const light = at(corner) + (at(corner + alongTemperature) - at(corner)) * p;
    const next = corner + alongMass;
    const heavy = at(next) + (at(next + alongTemperature) - at(next)) * p;
    return light + (heavy - light) * m;
  }

  return ({ from_deg, speed_kt, gust_kt, temperature_degC, pressure: { qnh_hPa } }) => {
    const hp_ft = 438 + (T0_K / L_KPerFt) * (1 - (qnh_hPa / P0_hPa) ** (1 / exponent));

    const angle_rad = ((from_deg - direction) * Math.PI) / 180;
    const ahead = Math.cos(angle_rad);
    const crosswind_kt = gust_kt * Math.abs(Math.sin(angle_rad));
    const mean_kt = speed_kt * ahead;
    const usedFully_kt = mean_kt >= 0 ? 0.5 * mean_kt : -Math.max(1.5 * -mean_kt, -gust_kt * ahead);
    const used_kt = Math.abs(usedFully_kt) < 1e-9 ? 0 : Math.min(usedFully_kt, 15);
    const tailwind_kt = Math.max(0, -used_kt);

    const i = below(masses, mass_kg);
    const j = below(altitudes, hp_ft);
    const k = below(temperatures, temperature_degC);
    const corner = i * alongMass + j * alongTemperature + k;
    const m = (mass_kg - masses[i]) / (masses[i + 1] - masses[i]);
    const p = (hp_ft - altitudes[j]) / (altitudes[j + 1] - altitudes[j]);
    const t = (temperature_degC - temperatures[k]) / (temperatures[k + 1] - temperatures[k]);

    const wind = used_kt >= 0 ? 1 - used_kt / 100 : 1 - (4.5 * used_kt) / 100;
    const windRoll_m = figure(rolls, corner, m, p, t) * wind;
    const windDistance_m = figure(distances, corner, m, p, t) * wind;
    const onGrass_m = windDistance_m * 1.2;
    const uphill = slope_percent > 0 ? 1 + (5 * slope_percent) / 100 : 1;
    const distance_m = onGrass_m * uphill;
    const roll_m = windRoll_m + (1.2 - 1) * windDistance_m + (uphill - 1) * onGrass_m;
    const factored_m = distance_m * 1.25;

    const isBeyondManual = tailwind_kt > 8;
    const criteria = [
      atMost('mass', mass_kg, 1050),
      isBeyondManual ? open('takeoff-run', available_m) : atMost('takeoff-run', roll_m * 1.25, available_m),
      isBeyondManual ? open('takeoff-distance', available_m) : atMost('takeoff-distance', factored_m, available_m),
    ];

    if (beyond_m !== undefined) {
      const top_m = pinesTop_m - start_ft * 0.3048;
      const end_m = (slope_percent / 100) * available_m;
      const distanceToPines_m = available_m + beyond_m - factored_m;
      if (isBeyondManual) criteria.push(open('obstacle', undefined));
      else if (distanceToPines_m < 1) {
        // Before the 50 ft point the aeroplane is at best 49 ft high.
        criteria.push(atLeast('obstacle', 49, (top_m - end_m + verticalClearance_m) / 0.3048, 1));
      } else {
        const delta = (1 - (L_KPerFt * hp_ft) / T0_K) ** exponent;
        const impact = Math.expm1(3.5 * Math.log1p(0.2 * (climb_kcas / a0_kt) ** 2)) / delta;
        const mach = Math.sqrt(5 * Math.expm1((2 / 7) * Math.log1p(impact)));
        const v_kt = (mach * Math.sqrt(1.4 * 287.05287 * (temperature_degC + 273.15))) / (1852 / 3600);
        const rate_mps = (figure(rates, corner, m, p, t) * 0.3048) / 60;
        const gradient = rate_mps / (((v_kt - used_kt) * 1852) / 3600);
        const surface_m = factored_m < available_m ? (slope_percent / 100) * factored_m : end_m;
        const required = (top_m + verticalClearance_m - (screen_m + surface_m)) / distanceToPines_m;
        criteria.push(atLeast('obstacle', gradient * 100, required * 100, 10));
      }
    }

    criteria.push(
      atMost('crosswind', crosswind_kt, 19),
      atMost('crosswind', crosswind_kt, 18),
      atMost('tailwind', tailwind_kt, 8),
      atMost('tailwind', tailwind_kt, 5),
    );
    return { verdict: overall(criteria), criteria };
  };
}

export function overall(criteria) {
  let verdict = 'within';
  for (let i = 0; i < criteria.length; i += 1) {
    if (criteria[i].verdict === 'outside') return 'outside';
    if (criteria[i].verdict === 'undetermined') verdict = 'undetermined';
  }
  return verdict;
}
