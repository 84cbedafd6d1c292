import type { FieldKey } from './fields.ts';
import { fieldOf } from './fields.ts';
import { confirmationsOf } from './recalled.ts';
import type { ObstacleState, PageState } from './state.ts';
import { surfaceOf } from './surface.ts';

/** The two ends of the runway, by their place in the request. */
export type EndPlace = 0 | 1;

/** The end as its column is headed. */
export function designatorAt({ values }: PageState, place: EndPlace): string {
  return place === 0 ? values.designator1 : values.designator2;
}

type Json = Readonly<Record<string, unknown>>;

/**
 * The request that a state asks, from one end of the runway. It holds what was typed, as a number where it is one; the
 * library reads it and says what is wrong with it.
 *
 * @param data - the performance data as JSON.
 * @param weather - of a report that was read; the figures of the sentences where there is none.
 */
export function requestOf(state: PageState, place: EndPlace, data: unknown, weather?: unknown): Json {
  const { values: v } = state;
  const isTakeoff = v.job === 'takeoff';
  const common = {
    schema: `groundroll/${v.job}-request/1`,
    performanceData: data,
    mass: measured(v.mass, v.massUnit),
    ...given('configuration', isTakeoff ? v.takeoffConfiguration : v.landingConfiguration),
    runway: runwayOf(state),
    runwayInUse: designatorAt(state, place),
    weather: weather ?? weatherOf(state),
    ...variationOf(state),
    factorSet: v.factorSet,
    safetyFactor: v.safetyFactor,
    ...limitsOf(state),
    ...policiesOf(state),
  };
  if (isTakeoff) {
    return {
      ...common,
      ...optional('lineUpLoss', v.lineUpLoss, v.distanceUnit),
      ...optional('liftOffSpeedAddition', v.liftOffSpeedAddition, 'kt'),
      ...optional('brakingCoefficient', v.brakingCoefficient, 'ratio'),
    };
  }
  return {
    ...common,
    ...optional('approachSpeedAddition', v.approachSpeedAddition, 'kt'),
    ...optional('excessHeight', v.excessHeight, 'ftHeight'),
  };
}

/** A number where the text is one; else the text itself, or nothing, for the library to refuse. */
function read(typed: string): number | string | undefined {
  const text = typed.trim().replace(/^\u2212/, '-');
  if (text === '') return undefined;
  return /^[+-]?(\d+(\.\d*)?|\.\d+)$/.test(text) ? Number(text) : text;
}

function measured(typed: string, unit: string): Json {
  const value = read(typed);
  return value === undefined ? { unit } : { value, unit };
}

/** Nothing where the figure is left empty. */
function optional(key: string, typed: string, unit: string): Json {
  return read(typed) === undefined ? {} : { [key]: measured(typed, unit) };
}

function given(key: string, text: string): Json {
  return text === '' ? {} : { [key]: text };
}

const north = (word: string) => (word === 'magnetic' ? 'degMagnetic' : 'degTrue');

function runwayOf({ values: v, obstacles }: PageState): Json {
  const unit = v.distanceUnit;
  const ends = ([1, 2] as const).map((n) => {
    const declared = {
      ...optional('TORA', v[`TORA${n}`], unit),
      ...optional('TODA', v[`TODA${n}`], unit),
      ...optional('ASDA', v[`ASDA${n}`], unit),
      ...optional('LDA', v[`LDA${n}`], unit),
    };
    return {
      designator: v[`designator${n}`],
      direction: measured(v[`direction${n}`], north(v.runwayNorth)),
      directionFrom: v.directionFrom,
      elevation: measured(v[`elevation${n}`], `${v.elevationUnit}Elevation`),
      ...(Object.keys(declared).length === 0 ? {} : { declaredDistances: declared }),
      ...optional('displacedThreshold', v[`displaced${n}`], unit),
    };
  });
  return {
    aerodrome: v.aerodrome,
    length: measured(v.length, unit),
    surface: surfaceOf(v),
    ends,
    ...(v.obstacles === 'listed' ? { obstacles: obstacles.map((each) => obstacleOf(each, v)) } : {}),
  };
}

type Values = PageState['values'];

function obstacleOf({ name, end, beyond, ground, height, top, aside }: ObstacleState, v: Values): Json {
  return {
    name,
    end,
    beyond: measured(beyond, v.distanceUnit),
    ...optional('groundElevation', ground, `${v.elevationUnit}Elevation`),
    ...optional('height', height, `${v.heightUnit}Height`),
    ...optional('topElevation', top, `${v.elevationUnit}Elevation`),
    ...optional('lateralOffset', aside, v.distanceUnit),
  };
}

function weatherOf({ values: v }: PageState): Json {
  const direction = (typed: string) => measured(typed, north(v.windNorth));
  const hasRange = read(v.rangeFrom) !== undefined || read(v.rangeTo) !== undefined;
  return {
    wind: {
      source: v.windSource,
      from: v.windKind === 'from' ? direction(v.windFrom) : v.windKind,
      speed: measured(v.windSpeed, v.windUnit),
      ...optional('gust', v.windGust, v.windUnit),
      ...(hasRange ? { range: { from: direction(v.rangeFrom), to: direction(v.rangeTo) } } : {}),
    },
    temperature: measured(v.temperature, v.temperatureUnit),
    ...optional('dewPoint', v.dewPoint, v.temperatureUnit),
    [v.pressureKind]: measured(v.pressure, v.pressureUnit),
  };
}

function variationOf({ values: v }: PageState): Json {
  const value = read(v.variation);
  if (value === undefined) return {};
  const signed = typeof value === 'number' && v.variationSide === 'west' ? 0 - value : value;
  return { variation: { value: { value: signed, unit: 'degEast' }, source: v.variationSource } };
}

function limitsOf({ values: v }: PageState): Json {
  const limits = { ...optional('crosswind', v.crosswindLimit, 'kt'), ...optional('tailwind', v.tailwindLimit, 'kt') };
  return Object.keys(limits).length === 0 ? {} : { personalLimits: limits };
}

const chosenPolicies = [
  'demonstratedCrosswind',
  'favourableSlope',
  'favourableEdge',
  'betweenPrintedValues',
  'humidity',
  'unreportedGust',
  'speedAdditionInDistance',
  'firstPrinciples',
] as const satisfies readonly FieldKey[];

/** Only what differs from the library's own defaults is asked for. */
function policiesOf(state: PageState): Json {
  const { values: v } = state;
  const confirmations = confirmationsOf(state);
  const policies = {
    ...optional('headwindShare', v.headwindShare, 'ratio'),
    ...optional('tailwindShare', v.tailwindShare, 'ratio'),
    ...optional('verticalClearance', v.verticalClearance, 'ftHeight'),
    ...(v.job === 'landing' ? optional('approachClearance', v.approachClearance, 'ftHeight') : {}),
    ...(v.job === 'landing' ? optional('approachAngle', v.approachAngle, 'deg') : {}),
    ...(v.job === 'takeoff' ? optional('reactionTime', v.reactionTime, 's') : {}),
    ...Object.fromEntries(chosenPolicies.filter((key) => v[key] !== fieldOf(key).start).map((key) => [key, v[key]])),
    ...(confirmations.length === 0 ? {} : { confirmations }),
  };
  return Object.keys(policies).length === 0 ? {} : { policies };
}
