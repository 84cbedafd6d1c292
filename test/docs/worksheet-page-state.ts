import { readFileSync } from 'node:fs';
import { type FieldKey, fieldOf } from '../../docs/worksheet-page/fields.ts';
import { type PageState, startState } from '../../docs/worksheet-page/state.ts';

// biome-ignore lint/suspicious/noExplicitAny: requests of the examples as they stand in their files
export type Json = any;

/** A request of the examples with its performance data in place, and the word of its aeroplane. */
export function exampleRequest(name: string): { request: Json; aeroplane: string } {
  const request = JSON.parse(readFileSync(`examples/requests/${name}.json`, 'utf8'));
  const file = String(request.performanceData).split('/').at(-1) as string;
  const data = JSON.parse(readFileSync(`examples/performance-data/${file}`, 'utf8'));
  return { request: { ...request, performanceData: data }, aeroplane: file.replace('.json', '') };
}

/** The state that asks a request, built the other way round: only what one can say on the page. */
export function stateOf(request: Json, aeroplane: string): PageState {
  const { runway, weather, policies = {}, variation, personalLimits = {} } = request;
  const { wind, temperature, dewPoint } = weather;
  const job = request.schema.includes('takeoff') ? 'takeoff' : 'landing';
  const figure = (given: Json) => (given === undefined ? '' : String(given.value));
  const north = (given: Json) => (given.unit === 'degMagnetic' ? 'magnetic' : 'true');
  const east = variation?.value.value ?? 0;
  const values: Partial<Record<FieldKey, string>> = {
    job,
    aeroplane,
    [`${job}Configuration`]: request.configuration ?? '',
    mass: figure(request.mass),
    massUnit: request.mass.unit,
    aerodrome: runway.aerodrome,
    length: figure(runway.length),
    distanceUnit: runway.length.unit,
    runwayNorth: north(runway.ends[0].direction),
    directionFrom: runway.ends[0].directionFrom,
    weather: 'figures',
    temperature: figure(temperature),
    temperatureUnit: temperature.unit,
    dewPoint: figure(dewPoint),
    pressureKind: weather.qnh === undefined ? 'qfe' : 'qnh',
    pressure: figure(weather.qnh ?? weather.qfe),
    pressureUnit: (weather.qnh ?? weather.qfe).unit,
    windSource: wind.source,
    windKind: typeof wind.from === 'string' ? wind.from : 'from',
    windFrom: typeof wind.from === 'string' ? '' : figure(wind.from),
    windNorth: typeof wind.from === 'string' ? 'true' : north(wind.from),
    windSpeed: figure(wind.speed),
    windUnit: wind.speed.unit,
    windGust: figure(wind.gust),
    rangeFrom: figure(wind.range?.from),
    rangeTo: figure(wind.range?.to),
    variation: variation === undefined ? '' : String(Math.abs(east)),
    variationSide: east < 0 ? 'west' : 'east',
    variationSource: variation?.source ?? '',
    surface: runway.surface.kind,
    elevationUnit: runway.ends[0].elevation.unit.replace('Elevation', ''),
    liftOffSpeedAddition: figure(request.liftOffSpeedAddition),
    approachSpeedAddition: figure(request.approachSpeedAddition),
    excessHeight: figure(request.excessHeight),
    factorSet: request.factorSet,
    safetyFactor: request.safetyFactor,
    lineUpLoss: figure(request.lineUpLoss),
    brakingCoefficient: figure(request.brakingCoefficient),
    obstacles: runway.obstacles === undefined ? 'not looked for' : 'listed',
    crosswindLimit: figure(personalLimits.crosswind),
    tailwindLimit: figure(personalLimits.tailwind),
  };
  const choices: Json = { ...runway.surface, grassLength: runway.surface.length };
  for (const key of ['condition', 'grassLength', 'ground'] as const) values[key] = choices[key] ?? fieldOf(key).start;
  values.conditionCode = String(runway.surface.conditionCode ?? 'none');
  for (const key of ['verticalClearance', 'approachClearance', 'approachAngle', 'reactionTime'] as const) {
    values[key] = figure(policies[key]);
  }
  for (const key of ['headwindShare', 'tailwindShare'] as const) values[key] = figure(policies[key]);
  for (const key of ['demonstratedCrosswind', 'humidity', 'firstPrinciples'] as const) {
    values[key] = policies[key] ?? fieldOf(key).start;
  }
  for (const [i, end] of runway.ends.entries()) {
    const n = (i + 1) as 1 | 2;
    values[`designator${n}`] = end.designator;
    values[`direction${n}`] = figure(end.direction);
    values[`elevation${n}`] = figure(end.elevation);
    values[`displaced${n}`] = figure(end.displacedThreshold);
    for (const name of ['TORA', 'TODA', 'ASDA', 'LDA'] as const) {
      values[`${name}${n}`] = figure(end.declaredDistances?.[name]);
    }
  }
  const obstacles = (runway.obstacles ?? []).map((each: Json) => ({
    name: each.name,
    beyond: figure(each.beyond),
    end: each.end,
    height: figure(each.height),
    ground: figure(each.groundElevation),
    top: figure(each.topElevation),
    aside: figure(each.lateralOffset),
  }));
  const heights = (runway.obstacles ?? []).flatMap((each: Json) => each.height?.unit.replace('Height', '') ?? []);
  return { values: { ...startState.values, ...values, heightUnit: heights[0] ?? 'm' }, obstacles };
}
