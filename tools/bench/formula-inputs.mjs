// Inputs for every formula that is also written by hand: a thousand draws over the whole domain, always the same ones.
// What is no quantity, and where most of the domain would be refused, is arranged here.
import { shares } from './harness.mjs';

const count = 1000;
const mostDraws = 200_000;

/** @type {Record<string, (x: any, share: () => number) => object>} */
const arranged = {
  'aircraft.climb-increment': (_x, share) => {
    const atLower = 20 * share();
    return { atLower, atUpper: atLower + 20 * share(), factor: 1 + share() };
  },
  'aircraft.interpolate-cell': (_x, share) => ({
    lower: [850, 2000],
    upper: [950, 4000],
    at: [850 + 100 * share(), 2000 + 2000 * share()],
    corners: [200 + 100 * share(), 300 + 100 * share(), 250 + 100 * share(), 350 + 100 * share()],
  }),
  'aircraft.interpolate-curves': (_x, share) => ({
    along: 20 + 10 * share(),
    at: 2000 + 2000 * share(),
    lower: { at: 2000, from: [20, 200 + 50 * share()], to: [30, 300 + 50 * share()] },
    upper: { at: 4000, from: [20, 300 + 50 * share()], to: [30, 400 + 50 * share()] },
  }),
  'distance.corrected-distance': (x, share) => ({ ...x, factors: [1.15 + share(), 1.05, 0.9, 1 + share(), 1.25] }),
  'study.combined-standard-uncertainty': (_x, share) => ({
    sensitivityCoefficients: [share(), -20 * share(), 3 * share(), share(), share()],
    standardUncertainties: [20 * share(), share(), share(), 3, 10],
  }),
  'study.lognormal-moments': (_x, share) => ({ standardDeviation: 2 * share() }),
  'study.normal-deviate': (_x, share) => ({ first: share(), second: share() }),
  'study.rectangular-standard-uncertainty': (_x, share) => ({ halfWidth: 100 * share() }),
  'wind.base-to-final-turn': (x, share) => ({ ...x, circuit: share() < 0.5 ? 'left' : 'right' }),
  'wind.base-to-final-bank': (x, share) => ({ ...x, circuit: share() < 0.5 ? 'left' : 'right' }),
  'wind.circuit-leg': (x, share) => ({
    leg: ['upwind', 'crosswind', 'downwind', 'base', 'final'][Math.floor(5 * share())],
    circuit: share() < 0.5 ? 'left' : 'right',
    ...x,
  }),
  'wind.reported': (x, share) => ({
    from: x.from,
    speed: x.speed,
    gust: x.speed + (200 - x.speed) * share(),
    range: { from: 360 * share(), to: 360 * share() },
    direction: x.direction,
  }),
  'dynamics.ground-roll': (x, share) => aeroplane(x, share),
  // One light aeroplane on two surfaces, so that there is a roll on either.
  'dynamics.roll-ratio': (x, share) => ({
    ...x,
    groundRoll: 150 + 100 * share(),
    liftOffSpeed: 50 + 10 * share(),
    mass: 900,
    otherMass: 900 + 100 * share(),
    leastFriction: 0.02,
    greatestFriction: 0.02 + 0.03 * share(),
    otherLeastFriction: 0.05,
    otherGreatestFriction: 0.05 + 0.03 * share(),
    slope: 2 * share(),
    otherSlope: 2 * share(),
    headwind: 5 * share(),
    otherHeadwind: 5 * share(),
  }),
};

/** Checks beside the bounds of the quantities: one input against another, words, entries of lists and their number. */
export const checksBeside = {
  'aircraft.climb-increment': 3,
  'aircraft.interpolate-cell': 4,
  'aircraft.interpolate-curves': 3,
  'airspeed.calibrated-airspeed-from-equivalent': 1,
  'airspeed.calibrated-airspeed-from-true': 1,
  'airspeed.compressibility-factor': 1,
  'airspeed.equivalent-airspeed-from-calibrated': 1,
  'airspeed.gust-increment': 1,
  'airspeed.half-gust-increment': 1,
  'airspeed.mach-number-from-calibrated': 1,
  'airspeed.mach-number-from-equivalent': 1,
  'airspeed.mach-number-from-true': 1,
  'airspeed.quarter-mean-or-half-increment': 1,
  'airspeed.true-airspeed': 1,
  'airspeed.true-airspeed-from-equivalent': 1,
  'atmosphere.altimeter-setting-asos': 1,
  'atmosphere.altimeter-setting-awos': 1,
  'atmosphere.altimeter-setting-iom-19': 1,
  'atmosphere.altimeter-setting-madis': 1,
  'atmosphere.altimeter-setting-noaa': 1,
  'atmosphere.altimeter-setting-smithsonian': 1,
  'atmosphere.cold-temperature-correction': 1,
  'atmosphere.cold-temperature-correction-hydrostatic': 1,
  'atmosphere.dew-point': 1,
  'atmosphere.humid-air-density': 1,
  'atmosphere.humid-density-altitude': 1,
  'atmosphere.qfe-from-station-pressure': 1,
  'atmosphere.qnh-from-pressure-altitude': 1,
  'atmosphere.qnh-from-qfe': 1,
  'atmosphere.qnh-from-station-pressure': 1,
  'atmosphere.relative-humidity': 1,
  'atmosphere.relative-humidity-wmo': 1,
  'atmosphere.station-pressure-from-qfe': 1,
  'atmosphere.virtual-temperature': 1,
  'distance.acceleration-check-speed': 2,
  'distance.corrected-distance': 6,
  'distance.roll-with-surface': 1,
  'distance.slope-factor': 1,
  'distance.wind-factor': 1,
  'dynamics.airborne-distance-in-arc': 1,
  'dynamics.approach-distance': 1,
  'dynamics.braked-roll': 3,
  'dynamics.effective-thrust': 1,
  'dynamics.ground-roll': 4,
  'dynamics.ground-roll-short-form': 2,
  'dynamics.roll-from-force-terms': 1,
  'dynamics.roll-ratio': 6,
  'flight-path.best-angle-speed': 2,
  'flight-path.best-rate-speed': 2,
  'flight-path.crossover-wind': 2,
  'flight-path.height-for-speed-gain': 1,
  'flight-path.landing-distance-lost': 1,
  'flight-path.latest-path-start': 1,
  'flight-path.rate-at-density-altitude': 1,
  'flight-path.rate-from-thrust': 1,
  'flight-path.still-air-gradient': 1,
  'flight-path.time-to-climb': 2,
  'rules-of-thumb.drift-by-one-in-sixty': 1,
  'rules-of-thumb.roll-factor-by-wind-square': 1,
  'rules-of-thumb.track-error-by-one-in-sixty': 1,
  'study.combined-standard-uncertainty': 11,
  'study.lognormal-moments': 1,
  'study.normal-deviate': 2,
  'study.rectangular-standard-uncertainty': 1,
  'wind.base-to-final-bank': 5,
  'wind.base-to-final-turn': 5,
  'wind.circuit-leg': 4,
  'wind.crab-angle': 1,
  'wind.ground-speed': 1,
  'wind.headwind-at-height': 1,
  'wind.reported': 3,
  'wind.sideslip-angle': 1,
  'wind.sideslip-bank': 2,
  'wind.triangle': 2,
};

/** Masses, thrusts and areas that belong to one aeroplane, of whatever size. */
function aeroplane(x, share) {
  const wingArea = x.mass / (500 + 500 * share());
  return { ...x, wingArea, staticThrust: x.mass * (2 + 2 * share()), thrustChange: (-x.mass / 2000) * share() };
}

/** One draw of all quantities, evenly over the domain. */
function drawn(record, share) {
  return Object.fromEntries(
    Object.entries(record.domain).map(([name, { min, max }]) => [name, min + (max - min) * share()]),
  );
}

/** The inputs of one formula, each accepted by it. All are objects of one kind, as a literal in an app's code makes them. */
export function inputsOf(record) {
  const share = shares(7);
  const names = Object.keys(record.inputs);
  const literal = new Function('x', `return { ${names.map((name) => `${name}: x.${name}`).join(', ')} };`);
  const inputs = [];
  for (let draws = 0; inputs.length < count; draws += 1) {
    if (draws === mostDraws) throw new Error(`${record.id}: ${inputs.length} of ${draws} draws were accepted`);
    const x = drawn(record, share);
    const input = literal(arranged[record.id]?.(x, share) ?? x);
    if (isAccepted(record, input)) inputs.push(input);
  }
  return inputs;
}

function isAccepted(record, input) {
  try {
    record.formula(input);
    return true;
  } catch (error) {
    if (error?.name === 'DomainError') return false;
    throw error;
  }
}
