import { consistencyFaults } from '../aircraft/index.ts';
import { factorSets, type PhaseCorrections } from '../distance/index.ts';
import type { Fault } from '../documents/index.ts';
import { convert } from '../units/unit-table.ts';
import type { LandingRequest, Obstacle, Runway, RunwayEnd, TakeoffRequest, Weather } from './request.ts';

/** What no schema of single values can see in a request; all of it at once. */
export function requestFaults(request: TakeoffRequest | LandingRequest): Fault[] {
  const { performanceData, runway, weather } = request;
  return [
    ...consistencyFaults(performanceData).map(({ path, message }) => ({ path: `performanceData.${path}`, message })),
    ...configurationFaults(request),
    ...runwayFaults(runway, request.runwayInUse),
    ...weatherFaults(weather).map(({ path, message }) => ({ path: `weather.${path}`, message })),
    ...northFaults(request),
    ...confirmationFaults(request),
  ];
}

function configurationFaults(request: TakeoffRequest | LandingRequest): Fault[] {
  const phase = phaseOf(request);
  const ofPhase = request.performanceData.configurations
    .filter((candidate) => candidate.phase === phase)
    .map(({ id }) => id);
  const { configuration } = request;
  const choices = ofPhase.map((id) => `"${id}"`).join(', ');
  if (configuration === undefined) {
    if (ofPhase.length === 1) return [];
    return [
      { path: 'configuration', message: `none is named, and the data have ${ofPhase.length} for ${phase}: ${choices}` },
    ];
  }
  if (ofPhase.includes(configuration)) return [];
  return [
    { path: 'configuration', message: `"${configuration}" is not a ${phase} configuration of these data: ${choices}` },
  ];
}

/** The phase of flight that a request is about. */
export function phaseOf(request: TakeoffRequest | LandingRequest): 'takeoff' | 'landing' {
  return request.schema === 'groundroll/takeoff-request/1' ? 'takeoff' : 'landing';
}

function runwayFaults(runway: Runway, inUse: string): Fault[] {
  const faults: Fault[] = [];
  const [a, b] = runway.ends;
  const painted = [a.designator, b.designator];
  if (a.designator === b.designator)
    faults.push({ path: 'runway.ends', message: `both ends are painted ${a.designator}` });
  if (!painted.includes(inUse))
    faults.push({ path: 'runwayInUse', message: `${inUse} is not painted at either end (${painted.join(', ')})` });
  faults.push(...reciprocalFaults(a, b));
  const length_m = convert(runway.length.value, runway.length.unit, 'm') as number;
  const elevations = runway.ends.map(
    ({ elevation }) => convert(elevation.value, elevation.unit, 'mElevation') as number,
  );
  const slope = (Math.abs((elevations[1] as number) - (elevations[0] as number)) / length_m) * 100;
  if (slope > 10)
    faults.push({
      path: 'runway.ends',
      message: `the elevations of the ends make a slope of ${slope.toFixed(1)} percent; at most 10 percent`,
    });
  const highest = runway.aerodromeElevation;
  if (
    highest !== undefined &&
    (convert(highest.value, highest.unit, 'mElevation') as number) < Math.max(...elevations) - 0.5
  ) {
    faults.push({
      path: 'runway.aerodromeElevation',
      message: `${highest.value} ${highest.unit} is below an end of the runway; the highest point of the aerodrome is wanted`,
    });
  }
  for (const [i, end] of runway.ends.entries()) faults.push(...declaredFaults(end, `runway.ends[${i}]`, length_m));
  for (const [i, obstacle] of (runway.obstacles ?? []).entries())
    faults.push(...obstacleFaults(obstacle, painted, `runway.obstacles[${i}]`));
  return faults;
}

function reciprocalFaults(a: RunwayEnd, b: RunwayEnd): Fault[] {
  if (a.direction.unit !== b.direction.unit) {
    return [
      { path: 'runway.ends', message: `one end is stated in ${a.direction.unit}, the other in ${b.direction.unit}` },
    ];
  }
  const apart = Math.abs(((((a.direction.value - b.direction.value) % 360) + 360) % 360) - 180);
  if (apart <= 1) return [];
  return [
    {
      path: 'runway.ends',
      message: `${a.direction.value} and ${b.direction.value} ${a.direction.unit} are not opposite directions`,
    },
  ];
}

function declaredFaults(end: RunwayEnd, path: string, length_m: number): Fault[] {
  const faults: Fault[] = [];
  const metres = (key: 'TORA' | 'TODA' | 'ASDA' | 'LDA') => {
    const declared = end.declaredDistances?.[key];
    return declared === undefined ? undefined : (convert(declared.value, declared.unit, 'm') as number);
  };
  const run = metres('TORA') ?? length_m;
  for (const key of ['TODA', 'ASDA'] as const) {
    const distance = metres(key);
    if (distance !== undefined && distance < run) {
      faults.push({
        path: `${path}.declaredDistances.${key}`,
        message: `${distance} m is less than the TORA, ${run} m`,
      });
    }
  }
  const displaced = end.displacedThreshold;
  if (displaced !== undefined && (convert(displaced.value, displaced.unit, 'm') as number) >= length_m) {
    faults.push({
      path: `${path}.displacedThreshold`,
      message: `${displaced.value} ${displaced.unit} is not within the runway of ${length_m} m`,
    });
  }
  return faults;
}

function obstacleFaults(obstacle: Obstacle, painted: readonly string[], path: string): Fault[] {
  const faults: Fault[] = [];
  if (!painted.includes(obstacle.end))
    faults.push({
      path: `${path}.end`,
      message: `${obstacle.end} is not painted at either end (${painted.join(', ')})`,
    });
  const byTop = obstacle.topElevation !== undefined;
  const byHeight = obstacle.groundElevation !== undefined && obstacle.height !== undefined;
  const half = obstacle.groundElevation !== undefined || obstacle.height !== undefined;
  if (byTop === byHeight || (byTop && half)) {
    faults.push({
      path,
      message: 'either the elevation of the top, or ground elevation and height together, is needed',
    });
  }
  return faults;
}

const northOfSource = {
  METAR: 'degTrue',
  TAF: 'degTrue',
  'FAA tower': 'degMagnetic',
  'FAA ATIS': 'degMagnetic',
} as const;

/** What is wrong with a weather report by itself. */
export function weatherFaults(weather: Weather): Fault[] {
  const faults: Fault[] = [];
  const { wind, temperature, dewPoint, qnh, qfe } = weather;
  const speed = convert(wind.speed.value, wind.speed.unit, 'kt') as number;
  if (wind.gust !== undefined && (convert(wind.gust.value, wind.gust.unit, 'kt') as number) < speed) {
    faults.push({
      path: 'wind.gust',
      message: `${wind.gust.value} ${wind.gust.unit} is below the mean, ${wind.speed.value} ${wind.speed.unit}`,
    });
  }
  const directions = [
    ...(typeof wind.from === 'string' ? [] : [{ path: 'wind.from', measure: wind.from }]),
    ...(wind.range === undefined
      ? []
      : [
          { path: 'wind.range.from', measure: wind.range.from },
          { path: 'wind.range.to', measure: wind.range.to },
        ]),
  ];
  const reported: string | undefined = northOfSource[wind.source as keyof typeof northOfSource];
  for (const { path, measure } of directions) {
    if (measure.value === 0 && speed > 0) {
      faults.push({
        path,
        message: `0 ${measure.unit} is reported for calm only; north is 360, and this wind is ${speed} kt`,
      });
    }
    if (reported !== undefined && measure.unit !== reported) {
      faults.push({ path, message: `a wind from ${wind.source} is in ${reported}, not in ${measure.unit}` });
    } else if (measure.unit !== directions[0]?.measure.unit) {
      faults.push({ path, message: `${measure.unit} beside ${directions[0]?.measure.unit} in one report` });
    }
  }
  if ((qnh === undefined) === (qfe === undefined))
    faults.push({ path: 'qnh', message: 'one of qnh and qfe is needed, by its own key' });
  if (
    dewPoint !== undefined &&
    (convert(dewPoint.value, dewPoint.unit, 'degC') as number) >
      (convert(temperature.value, temperature.unit, 'degC') as number)
  ) {
    faults.push({
      path: 'dewPoint',
      message: `${dewPoint.value} ${dewPoint.unit} is above the temperature, ${temperature.value} ${temperature.unit}`,
    });
  }
  return faults;
}

/** A wind and a runway against different norths need the variation between them; nothing is converted without one. */
function northFaults(request: TakeoffRequest | LandingRequest): Fault[] {
  const { weather, runway, variation } = request;
  const { from, range } = weather.wind;
  const windNorth = typeof from === 'string' ? range?.from.unit : from.unit;
  const runwayNorth = runway.ends[0].direction.unit;
  if (windNorth === undefined || windNorth === runwayNorth || variation !== undefined) return [];
  return [
    {
      path: 'variation',
      message: `the wind is in ${windNorth} and the runway in ${runwayNorth}; the variation between them is needed`,
    },
  ];
}

/** A confirmation of a factor that the set does not have would be lost silently. */
function confirmationFaults(request: TakeoffRequest | LandingRequest): Fault[] {
  const { takeoff, landing } = factorSets[request.factorSet];
  const ids = new Set([takeoff, landing].flatMap(factorIds));
  return (request.policies?.confirmations ?? []).flatMap(({ factorId }, i) =>
    ids.has(factorId)
      ? []
      : [
          {
            path: `policies.confirmations[${i}].factorId`,
            message: `"${factorId}" is not a factor of ${request.factorSet}`,
          },
        ],
  );
}

function factorIds(corrections: PhaseCorrections): string[] {
  const { surfaces, slope, mass, elevation, temperature, tailwind } = corrections;
  return [...surfaces, slope, mass, elevation, temperature, tailwind].flatMap((factor) =>
    factor === undefined ? [] : [factor.id],
  );
}
