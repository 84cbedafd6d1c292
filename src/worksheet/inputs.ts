import type { Obstacle, PoliciesGiven, RunwayEnd } from '../assessment/index.ts';
import { surfaceInWords } from '../distance/index.ts';
import { asGiven } from '../units/as-given.ts';
import { formatSlope, type Measure, type Percent } from '../units/index.ts';
import type { Assessment } from './ledger.ts';

/** What the assessment was given, in sentences; what was not given is named where something else stood in for it. */
export function inputLines(assessment: Assessment): string[] {
  return [
    ...aeroplaneLines(assessment),
    ...runwayLines(assessment),
    ...weatherLines(assessment),
    ...limitLines(assessment),
    ...policyLines(assessment),
  ];
}

function aeroplaneLines({ request }: Assessment): string[] {
  const { performanceData: data, mass, configuration } = request;
  const flown = data.configurations.find(({ id }) => id === configuration);
  const { document, edition } = data.provenance;
  return [
    `${data.identity.name}, ${asGiven(mass)}${flown === undefined ? '' : `, ${flown.name}`}; figures from ${document}, ${edition}.`,
  ];
}

function runwayLines({ request, slope }: Assessment): string[] {
  const { runway, runwayInUse } = request;
  const [a, b] = runway.ends;
  const [near, far] = a.designator === runwayInUse ? [a, b] : [b, a];
  const painted = near.directionFrom === 'designator' ? ' by its painted number' : '';
  return [
    `Runway ${runwayInUse} at ${runway.aerodrome}: ${asGiven(runway.length)} of ${surfaceInWords(runway.surface)}, ${formatSlope(slope.value as Percent)}, from ${asGiven(near.elevation)} to ${asGiven(far.elevation)}; direction ${asGiven(near.direction)}${painted}.`,
    declaredLine(near),
    ...(near.displacedThreshold === undefined
      ? []
      : [`The threshold is displaced by ${asGiven(near.displacedThreshold)}.`]),
    ...obstacleLines(runway.obstacles),
  ];
}

function declaredLine({ declaredDistances = {} }: RunwayEnd): string {
  const stated = Object.entries(declaredDistances).map(([name, given]) => `${name} ${asGiven(given as Measure)}`);
  if (stated.length === 0) return 'No declared distances: the length of the runway stands in for them.';
  return `${stated.join(', ')}.`;
}

function obstacleLines(obstacles: readonly Obstacle[] | undefined): string[] {
  if (obstacles === undefined) return ['No list of obstacles.'];
  if (obstacles.length === 0) return ['No obstacles, by an empty list.'];
  return obstacles.map(({ name, end, beyond, topElevation, groundElevation, height, lateralOffset }) => {
    const size =
      topElevation === undefined
        ? `${asGiven(height as Measure)} tall on ground at ${asGiven(groundElevation as Measure)}`
        : `top at ${asGiven(topElevation)}`;
    const aside = lateralOffset === undefined ? '' : `, ${asGiven(lateralOffset)} beside the extended centreline`;
    return `${name}: ${size}, ${asGiven(beyond)} beyond the ${end} end${aside}.`;
  });
}

function weatherLines({ request }: Assessment): string[] {
  const { weather, variation } = request;
  const { wind, temperature, dewPoint, qnh, qfe } = weather;
  const direction = typeof wind.from === 'string' ? wind.from : asGiven(wind.from);
  const range = wind.range === undefined ? '' : ` between ${asGiven(wind.range.from)} and ${asGiven(wind.range.to)}`;
  const gust = wind.gust === undefined ? '' : ` gusting ${asGiven(wind.gust)}`;
  const air = [
    asGiven(temperature),
    ...(dewPoint === undefined ? [] : [`dew point ${asGiven(dewPoint)}`]),
    ...(qnh === undefined ? [] : [`QNH ${asGiven(qnh)}`]),
    ...(qfe === undefined ? [] : [`QFE ${asGiven(qfe)}`]),
  ];
  return [
    `${wind.source}: wind ${direction}${range} ${asGiven(wind.speed)}${gust}; ${air.join(', ')}.`,
    ...(variation === undefined ? [] : [`Magnetic variation ${asGiven(variation.value)} (${variation.source}).`]),
  ];
}

const chosenWords: Readonly<Record<string, string>> = {
  lineUpLoss: 'Runway used up in lining up',
  liftOffSpeedAddition: 'Added to the lift-off speed',
  brakingCoefficient: 'Braking coefficient',
  approachSpeedAddition: 'Added to the approach speed',
  excessHeight: 'Above the height at which the threshold should be passed',
};

/** The factor set stands among the notes on the figures. */
function limitLines({ request }: Assessment): string[] {
  const { personalLimits, safetyFactor } = request;
  const given = request as unknown as Readonly<Record<string, Measure | undefined>>;
  const personal = Object.entries(personalLimits ?? {}).map(([name, limit]) => `${name} ${asGiven(limit as Measure)}`);
  const chosen = Object.entries(chosenWords).flatMap(([key, words]) => {
    const value = given[key];
    return value === undefined ? [] : [`${words}: ${asGiven(value)}.`];
  });
  return [
    ...(safetyFactor === 'none' ? ['The safety factor is left out.'] : []),
    ...(personal.length === 0 ? [] : [`Personal limits: ${personal.join(', ')}.`]),
    ...chosen,
  ];
}

const policyWords: Readonly<Record<Exclude<keyof PoliciesGiven, 'confirmations'>, string>> = {
  headwindShare: 'share of a headwind',
  tailwindShare: 'share of a tailwind',
  demonstratedCrosswind: 'demonstrated crosswind',
  favourableSlope: 'favourable slope',
  favourableEdge: 'favourable edge of a table',
  betweenPrintedValues: 'between printed values',
  humidity: 'humidity',
  unreportedGust: 'unreported gust',
  speedAdditionInDistance: 'speed addition in distance',
  verticalClearance: 'vertical clearance',
  approachClearance: 'approach clearance',
  approachAngle: 'approach angle',
  reactionTime: 'reaction time',
  firstPrinciples: 'first principles',
};

/** Only the policies that the request settles itself; the others are the defaults of the library. */
function policyLines({ request }: Assessment): string[] {
  const given = request.policies ?? {};
  const settled = Object.entries(policyWords).flatMap(([key, words]) => {
    const value = given[key as keyof typeof policyWords];
    return value === undefined ? [] : [`${words} ${typeof value === 'string' ? value : asGiven(value)}`];
  });
  const others = 'the other policies as by default';
  return [settled.length === 0 ? 'All policies as by default.' : `Policies: ${settled.join(', ')}; ${others}.`];
}
