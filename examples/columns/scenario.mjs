// Invented weather over invented runways, the same in every run and in every thread: all of it is drawn from seeds.

import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

export const hoursOfYear = 8760;
const stations = 40;

const json = (name) => JSON.parse(readFileSync(new URL(name, import.meta.url), 'utf8'));
const pattern = json('../requests/takeoff-28.json');
pattern.performanceData = json('../performance-data/corran-four.json');

/** `--evaluations n`: how many take-offs are asked for; `--json` prints the result for a program. */
export function options() {
  const { values } = parseArgs({
    options: { evaluations: { type: 'string', default: '100000' }, json: { type: 'boolean', default: false } },
  });
  const evaluations = Number(values.evaluations);
  if (!Number.isSafeInteger(evaluations) || evaluations < 1) throw new Error('--evaluations: a whole number from 1');
  return { evaluations, json: values.json };
}

/** The sweep in parts: each runway end in one year of the weather of its station, the last as far as is asked for. */
export function partsOf(evaluations) {
  return Array.from({ length: Math.ceil(evaluations / hoursOfYear) }, (_, runway) => {
    const first = runway * hoursOfYear;
    return { runway, station: runway % stations, first, end: Math.min(first + hoursOfYear, evaluations) };
  });
}

/** Even shares from 0 to below 1. */
export function shares(seed) {
  const generator = xoroshiro128plus(seed);
  generator.jump();
  return () => uniformFloat64(generator);
}

/** A take-off of the invented aeroplane on one of the invented runways. */
export function requestOf(runway) {
  const share = shares(1_000_000 + runway);
  const among = (from, to) => from + Math.round((to - from) * share());
  const painted = 1 + Math.floor(18 * share());
  const direction = { value: 10 * painted, unit: 'degTrue' };
  const length = { value: 10 * among(50, 140), unit: 'm' };
  const elevation_ft = among(0, 3500);
  const end = (designator, value, feet) => ({
    designator: String(designator).padStart(2, '0'),
    direction: { ...direction, value },
    elevation: { value: feet, unit: 'ftElevation' },
  });
  const near = end(painted, direction.value, elevation_ft);
  const far = end(painted + 18, direction.value + 180, elevation_ft + among(-20, 20));
  const grass = { kind: 'grass', condition: share() < 0.5 ? 'dry' : 'wet', length: 'up to 20 cm', ground: 'firm' };
  const surface = share() < 0.5 ? { kind: 'paved', condition: 'dry' } : grass;
  const { variation: _, ...request } = pattern;
  return {
    ...request,
    mass: { value: among(850, 1000), unit: 'kg' },
    runway: { aerodrome: `Field ${runway + 1}`, length, surface, ends: [near, far], obstacles: [] },
    runwayInUse: near.designator,
  };
}

/**
 * A year of hourly reports of each station. One report in a thousand has no temperature, as happens; seven in ten have no
 * gust. `allocate` says in which memory they lie.
 */
export function weatherOfStations(allocate = (bytes) => new ArrayBuffer(bytes)) {
  return Array.from({ length: stations }, (_, station) => {
    const share = shares(1 + station);
    const column = (unit) => ({ unit, values: new Float64Array(allocate(8 * hoursOfYear)) });
    const weather = {
      from: column('degTrue'),
      speed: column('kt'),
      gust: column('kt'),
      temperature: column('degC'),
      qnh: column('hPa'),
    };
    // A day or two of the same weather: each hour keeps most of the hour before.
    let [warmer, windier, higher, veered] = [0, 0, 0, 360 * share()];
    for (let hour = 0; hour < hoursOfYear; hour += 1) {
      warmer = 0.97 * warmer + 2 * (share() - 0.5);
      windier = 0.95 * windier + 4 * (share() - 0.5);
      higher = 0.99 * higher + 2.5 * (share() - 0.5);
      veered = (veered + 30 * (share() - 0.5) + 360) % 360;
      const season = Math.cos((2 * Math.PI * (hour / 24 - 200)) / 365);
      const day = Math.cos((2 * Math.PI * (hour - 14)) / 24);
      const speed = Math.max(0, Math.round(7 + 2 * day + windier));
      weather.from.values[hour] = speed === 0 ? 0 : 10 * Math.max(1, Math.round(veered / 10));
      weather.speed.values[hour] = speed;
      const isGusty = share() < 0.3;
      weather.gust.values[hour] = isGusty && speed > 0 ? speed + 10 : Number.NaN;
      weather.temperature.values[hour] = share() < 0.001 ? Number.NaN : Math.round(12 + 10 * season + 5 * day + warmer);
      weather.qnh.values[hour] = Math.round(1013 + higher);
    }
    return weather;
  });
}

/** The first hours of a year, in the same memory. */
export function firstHours(weather, hours) {
  const first = ({ unit, values }) => ({ unit, values: values.subarray(0, hours) });
  return Object.fromEntries(Object.entries(weather).map(([name, column]) => [name, first(column)]));
}

/** The prepared value, or an error with the faults. */
export function prepared(result) {
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}
