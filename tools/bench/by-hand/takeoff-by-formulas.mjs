// The take-off by hand towards 28 once more, but with the library's own formulas called where they stand: what checked
// formulas cost by themselves, before anything is prepared, chosen, refused or noted.
import { interpolateCell } from 'groundroll/aircraft';
import { pressureAltitude } from 'groundroll/atmosphere';
import { correctedDistance, rollWithSurface, windFactor } from 'groundroll/distance';
import { reportedWindComponents, windUsed } from 'groundroll/wind';
import { below } from './below.mjs';
import { atMost, open, overall } from './takeoff.mjs';

const mass_kg = 940;
const available_m = 830;

/** The take-off towards 28; the performance data give the tables. */
export function takeoffByFormulas(performanceData) {
  const [{ groundRoll, distance }] = performanceData.takeoff;
  const axes = distance.axes.map(({ values }) => Float64Array.from(values));
  const [rolls, distances] = [groundRoll, distance].map(({ cells }) => Float64Array.from(cells.flat(2)));
  const alongTemperature = axes[2].length;
  const alongMass = axes[1].length * alongTemperature;
  const [lower, upper, at] = [new Float64Array(3), new Float64Array(3), new Float64Array(3)];
  const [ofRoll, ofDistance] = [new Float64Array(8), new Float64Array(8)];

  function place(axis, value) {
    const i = below(axes[axis], value);
    lower[axis] = axes[axis][i];
    upper[axis] = axes[axis][i + 1];
    at[axis] = value;
    return i;
  }

  return ({ from_deg, speed_kt, gust_kt, temperature_degC, pressure: { qnh_hPa } }) => {
    const hp_ft = pressureAltitude({ elevation: 438, qnh: qnh_hPa });
    const wind = { from: from_deg, speed: speed_kt, gust: gust_kt, range: undefined, direction: 292 };
    const { leastHeadwind, leastHeadwindAtGust, crosswindFromLeft, crosswindFromRight } = reportedWindComponents(wind);
    const shares = { headwindShare: 0.5, tailwindShare: 1.5 };
    const usedFully_kt = windUsed({ leastHeadwind, leastHeadwindAtGust, ...shares });
    const used_kt = Math.abs(usedFully_kt) < 1e-9 ? 0 : Math.min(usedFully_kt, 15);
    const tailwind_kt = Math.max(0, -used_kt);
    const crosswind_kt = Math.max(crosswindFromLeft, crosswindFromRight);

    const corner = place(0, mass_kg) * alongMass + place(1, hp_ft) * alongTemperature + place(2, temperature_degC);
    for (let n = 0; n < 8; n += 1) {
      const cell = corner + (n & 4 ? alongMass : 0) + (n & 2 ? alongTemperature : 0) + (n & 1);
      ofRoll[n] = rolls[cell];
      ofDistance[n] = distances[cell];
    }
    const law = used_kt >= 0 ? { wind: used_kt, percentPerKnot: -1 } : { wind: tailwind_kt, percentPerKnot: 4.5 };
    const factors = [windFactor(law)];
    const windRoll_m = correctedDistance({ distance: interpolateCell({ lower, upper, at, corners: ofRoll }), factors });
    const windDistance_m = correctedDistance({
      distance: interpolateCell({ lower, upper, at, corners: ofDistance }),
      factors,
    });
    const distance_m = correctedDistance({ distance: windDistance_m, factors: [1.2] });
    const roll_m = rollWithSurface({ groundRoll: windRoll_m, distance: windDistance_m, factor: 1.2 });
    const factored_m = correctedDistance({ distance: distance_m, factors: [1.25] });

    const isBeyondManual = tailwind_kt > 8;
    const criteria = [
      atMost('mass', mass_kg, 1050),
      isBeyondManual ? open('takeoff-run', available_m) : atMost('takeoff-run', roll_m * 1.25, available_m),
      isBeyondManual ? open('takeoff-distance', available_m) : atMost('takeoff-distance', factored_m, available_m),
      atMost('crosswind', crosswind_kt, 19),
      atMost('crosswind', crosswind_kt, 18),
      atMost('tailwind', tailwind_kt, 8),
      atMost('tailwind', tailwind_kt, 5),
    ];
    return { verdict: overall(criteria), criteria };
  };
}
