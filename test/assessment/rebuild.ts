// The worked cases put together again from the formula folders, with rounding by hand. Of the assessment only the types
// of its requests are used; which factors apply and in which order is said by the caller, case by case.
import { readFileSync } from 'node:fs';
import { calibrationTable, type Figures, interpolateTable, type Table } from '../../src/aircraft/index.ts';
import { approachSpeed, gustIncrement, trueAirspeed } from '../../src/airspeed/index.ts';
import type { LandingRequest, TakeoffRequest } from '../../src/assessment/index.ts';
import { densityAltitude, pressureAltitude } from '../../src/atmosphere/index.ts';
import { factorSets, speedFactor, windFactor } from '../../src/distance/index.ts';
import { effectiveThrust, rollingFriction, standardGravity } from '../../src/dynamics/index.ts';
import {
  climbGradient,
  landingDistanceLost,
  obstacleClearance,
  requiredGradient,
} from '../../src/flight-path/index.ts';
import {
  type CalibratedAirspeed,
  degC,
  degrees,
  degTrue,
  ftElevation,
  hPa,
  kg,
  kias,
  kt,
  m,
  mHeight,
  percent,
  ratio,
} from '../../src/units/index.ts';
import { groundSpeed, reportedWindComponents, windUsed } from '../../src/wind/index.ts';

type AnyRequest = TakeoffRequest | LandingRequest;

const foot = 0.3048;
const screen_m = 50 * foot;

/** Required figures round up, available ones down; the last bits of a double are neither. */
export const up = (value: number, perUnit = 1) => Math.ceil(value * perUnit - 1e-9) / perUnit;
export const down = (value: number, perUnit = 1) => Math.floor(value * perUnit + 1e-9) / perUnit;
/** Totals of the stairs are shown in tenths of a metre. */
export const tenth = (metres: number) => Number(metres.toFixed(1));

/** A case as it stands in the examples, with its performance data. */
export function caseOf<T extends AnyRequest>(name: string): T {
  const requests = new URL('../../examples/requests/', import.meta.url);
  const read = (file: string) => JSON.parse(readFileSync(new URL(file, requests), 'utf8'));
  const request = read(`case-${name}.json`);
  return { ...request, performanceData: read(request.performanceData) };
}

/** The printed factor with this id in one of the sets. */
export function printedFactor(set: keyof typeof factorSets, phase: 'takeoff' | 'landing', id: string): number {
  const found = factorSets[set][phase].surfaces.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no ${id} in ${set}`);
  return found.factor;
}

/** Air, wind and the lie of the runway, as a case states them: metres, feet, kilograms, knots and degrees true. */
export function foundation(request: AnyRequest) {
  const { runway, runwayInUse, weather, performanceData: data } = request;
  const { wind, temperature, qnh } = weather;
  const here = runway.ends.find(({ designator }) => designator === runwayInUse);
  const there = runway.ends.find(({ designator }) => designator !== runwayInUse);
  if (here === undefined || there === undefined || qnh === undefined) throw new Error('not a case of this kind');
  if (typeof wind.from === 'string') throw new Error('a wind with a direction');
  const t = degC(temperature.value);
  const altitude = pressureAltitude({
    elevation: ftElevation(Math.max(here.elevation.value, there.elevation.value)),
    qnh: hPa(qnh.value),
  });
  const { range } = wind;
  const parts = reportedWindComponents({
    from: degTrue(wind.from.value),
    speed: kt(wind.speed.value),
    gust: kt(wind.gust?.value ?? wind.speed.value),
    range: range && { from: degTrue(range.from.value), to: degTrue(range.to.value) },
    direction: degTrue(here.direction.value),
  });
  const { leastHeadwind, leastHeadwindAtGust } = parts;
  const used = windUsed({
    leastHeadwind,
    leastHeadwindAtGust,
    headwindShare: ratio(0.5),
    tailwindShare: ratio(1.5),
  });
  const table = request.configuration;
  const length_m: number = runway.length.value;
  const slope_percent = (100 * (there.elevation.value - here.elevation.value) * foot) / length_m;
  const at = { mass: kg(request.mass.value), pressureAltitude: altitude, temperature: t };
  const density = densityAltitude({ pressureAltitude: altitude, temperature: t });
  return {
    data,
    at: { ...at, densityAltitude: density },
    pressureAltitude_ft: altitude as number,
    densityAltitude_ft: density as number,
    used,
    crosswind: Math.max(parts.crosswindFromLeft, parts.crosswindFromRight),
    length_m,
    slope_percent,
    startElevation_ft: here.elevation.value as number,
    configuration: table as string,
    obstacles: (end: 'ahead' | 'before') =>
      (runway.obstacles ?? [])
        .filter((each) => each.end === (end === 'ahead' ? there : here).designator)
        .map(({ name, beyond, groundElevation, height }) => ({
          name,
          beyond_m: beyond.value as number,
          top_m: (groundElevation as { value: number }).value * foot + (height as { value: number }).value,
        })),
  };
}

type Foundation = ReturnType<typeof foundation>;

const figure = (figures: Figures<'m' | 'ft'>, { at }: Foundation): number =>
  interpolateTable({ table: figures as Table<'m'>, at, worse: 'greater' });

const calibrated = ({ data }: Foundation, flap: string, indicated: number): CalibratedAirspeed =>
  interpolateTable({
    table: calibrationTable(data, flap) as Table<'kcas'>,
    at: { indicatedAirspeed: kias(indicated) },
    worse: 'greater',
  });

/** The manual's speed for this mass, flown at the next whole knot. */
const flown = (speeds: Table<'kias'>, { at }: Foundation) =>
  up(interpolateTable({ table: speeds, at, worse: 'greater' }));

/** The climb of the configuration over the ground: its rate and its speed from one row. */
function climbOverGround(base: Foundation): number {
  const row = base.data.climb?.find((each) => each.configuration === base.configuration);
  if (row === undefined) throw new Error('no climb');
  const rate = interpolateTable({ table: row.rateOfClimb as Table<'ftPerMin'>, at: base.at, worse: 'less' });
  const trueSpeed = trueAirspeed({
    calibratedAirspeed: calibrated(base, row.flap, flown(row.speed as Table<'kias'>, base)),
    ...base.at,
  });
  return climbGradient({
    rateOfClimb: rate,
    groundSpeed: groundSpeed({ trueAirspeed: trueSpeed, headwind: base.used }),
  });
}

/** What a case says of its corrections, by hand. */
export interface Corrections {
  /** The surface factors that apply, multiplied. */
  readonly surface: number;
  readonly safety: number;
  /** Of uphill slope: so many percent of distance or ground roll for each percent. */
  readonly slope: { readonly percent: number; readonly of: 'distance' | 'ground roll' };
  readonly lineUp_m?: number;
}

/** A take-off with a headwind, uphill, 50 ft asked over every obstacle ahead. */
export function rebuildTakeoff(request: TakeoffRequest, { surface, safety, slope, lineUp_m = 0 }: Corrections) {
  const base = foundation(request);
  const table = base.data.takeoff?.find((each) => each.configuration === base.configuration);
  const law = table?.corrections.headwind;
  if (table === undefined || law === undefined) throw new Error('no table with a headwind law');
  const manual = figure(table.distance, base);
  const inWind = windFactor({ wind: base.used, percentPerKnot: percent(law.change.value / law.per.value) });
  const wind = manual * inWind;
  const rollInWind = figure(table.groundRoll, base) * inWind;
  const onSurface = wind * surface;
  // What surface and slope add lies on the ground.
  const rollOnSurface = rollInWind + (onSurface - wind);
  const share = (slope.percent / 100) * base.slope_percent;
  const onSlope = onSurface + share * (slope.of === 'distance' ? onSurface : rollOnSurface);
  const roll = rollOnSurface + (onSlope - onSurface);
  const required = onSlope * safety;
  const gradient = climbOverGround(base);
  const rise = base.slope_percent / 100;
  const start_mElevation = base.startElevation_ft * foot + rise * lineUp_m;
  const over = base.obstacles('ahead').map(({ name, beyond_m, top_m }) => {
    const path = (from_m: number) => ({
      obstacleTop: mHeight(top_m - start_mElevation),
      startHeight: mHeight(screen_m + rise * Math.min(from_m, base.length_m - lineUp_m)),
      distance: m(base.length_m + beyond_m - lineUp_m - from_m),
    });
    const clearance = (from_m: number) => obstacleClearance({ ...path(from_m), gradient: ratio(gradient) }) / foot;
    return {
      name,
      required_percent: 100 * requiredGradient({ ...path(required), clearance: mHeight(50 * foot) }),
      factored_ft: down(clearance(required)),
      unfactored_ft: down(clearance(onSlope)),
    };
  });
  return {
    ...base,
    stairs: { manual, wind, surface: onSurface, slope: onSlope, 'safety factor': required },
    rollInCalm: figure(table.groundRoll, base),
    /** The one temperature that the table is printed for, or today's where that is warmer. */
    printedTemperature: degC(Math.max(base.at.temperature, table.associatedConditions.temperature?.value ?? -99)),
    rollInWind,
    roll,
    available_m: base.length_m - lineUp_m,
    achieved_percent: 100 * gradient,
    over,
    /** The greatest surface factor that the distance available still holds, found without the assessment. */
    breakEvenSurface:
      slope.of === 'distance'
        ? down((base.length_m - lineUp_m) / safety / (1 + share) / wind, 1000)
        : down(((base.length_m - lineUp_m) / safety - share * (rollInWind - wind)) / (1 + share) / wind, 1000),
    liftOff: flown(table.liftOffSpeed as Table<'kias'>, base),
    flap: base.data.configurations.find(({ id }) => id === base.configuration)?.flap as string,
  };
}

/** What soft ground may cost a take-off by first principles: the least factor on the distance, and whether there is a greatest. */
export function softGroundEstimate(request: TakeoffRequest, takeoff: ReturnType<typeof rebuildTakeoff>) {
  const speed = trueAirspeed({
    calibratedAirspeed: calibrated(takeoff, takeoff.flap, takeoff.liftOff),
    ...takeoff.at,
    temperature: takeoff.printedTemperature,
  });
  const { value: mass_kg } = request.mass;
  const soft = rollingFriction['soft ground'];
  const paved = rollingFriction['dry paved'];
  const acceleration = (manual: number, today: number) => {
    const thrust_N: number = effectiveThrust({
      groundRoll: m(takeoff.rollInCalm),
      mass: kg(mass_kg),
      liftOffSpeed: speed,
      rollingFriction: ratio(manual),
      slope: percent(0),
      headwind: kt(0),
    });
    return thrust_N / mass_kg - standardGravity * today;
  };
  const ground_mps = (speed * 1852) / 3600;
  const leastRoll = ground_mps ** 2 / (2 * acceleration(paved.high, soft.low));
  return {
    least: 1 + (leastRoll - takeoff.rollInCalm) / takeoff.stairs.manual,
    everLiftsOff: acceleration(paved.low, soft.high) > 0,
  };
}

/** A landing uphill on a dry paved runway in a headwind, with a 3° path and this many feet asked over what stands before it. */
export function rebuildLanding(
  request: LandingRequest,
  { safety, clearance_ft }: { safety: number; clearance_ft: number },
) {
  const base = foundation(request);
  const table = base.data.landing?.find((each) => each.configuration === base.configuration);
  const law = table?.corrections.headwind;
  if (table === undefined || law === undefined) throw new Error('no table with a headwind law');
  const flap = base.data.configurations.find(({ id }) => id === base.configuration)?.flap as string;
  const manual = figure(table.distance, base);
  const inWind = windFactor({ wind: base.used, percentPerKnot: percent(law.change.value / law.per.value) });
  const wind = manual * inWind;
  const published = interpolateTable({ table: table.approachSpeed as Table<'kias'>, at: base.at, worse: 'greater' });
  const { speed, gust = speed } = request.weather.wind;
  const increment = gustIncrement({ meanSpeed: kt(speed.value), gust: kt(gust.value) });
  const approach_kias = up(approachSpeed({ publishedSpeed: published, gustIncrement: increment }));
  const approach_kcas = calibrated(base, flap, approach_kias);
  const paid = speedFactor({ speed: approach_kcas, tableSpeed: calibrated(base, flap, published) });
  const withSpeed = wind * paid;
  const lost = base.obstacles('before').map(({ beyond_m, top_m }) =>
    landingDistanceLost({
      obstacleHeight: mHeight(top_m - base.startElevation_ft * foot),
      clearance: mHeight(clearance_ft * foot),
      screenHeight: mHeight(screen_m),
      distance: m(beyond_m),
      pathAngle: degrees(3),
      downslope: percent(0),
    }),
  );
  const lost_m = Math.max(0, ...lost);
  const required = withSpeed * safety;
  return {
    ...base,
    stairs: {
      manual,
      wind,
      ...(increment > 0 ? { 'speed addition': withSpeed } : {}),
      'safety factor': required,
    },
    approach_kias,
    approach_kcas: approach_kcas as number,
    lost_m,
    available_m: base.length_m - lost_m,
    latestTouchdown_m: down(base.length_m - (figure(table.groundRoll, base) * inWind + (withSpeed - wind))),
  };
}
