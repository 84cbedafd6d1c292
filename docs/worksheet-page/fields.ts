import { policyDefaults } from 'groundroll/assessment';

/** The sentences of the ledger, in the order in which a person works. */
export const sentenceIds = [
  'aeroplane',
  'runway',
  'air',
  'wind',
  'surface',
  'slope',
  'speed',
  'factors',
  'distances',
  'obstacles',
  'limits',
  'policies',
] as const;
export type SentenceId = (typeof sentenceIds)[number];

/** One figure, word or choice in a sentence: its key in the address of the page is its name here. */
export interface Field {
  readonly sentence: SentenceId;
  /** Where it stands in a request; empty for what only settles how others are read. */
  readonly path: string;
  /** What it is, for those who do not see the sentence around it. */
  readonly label: string;
  /** What the page starts with: the invented aeroplane at the invented field. */
  readonly start: string;
  /** A choice has these and no others. */
  readonly choices?: readonly string[];
}

const field = (sentence: SentenceId, path: string, label: string, start: string): Field => ({
  sentence,
  path,
  label,
  start,
});
const choice = (sentence: SentenceId, path: string, label: string, choices: readonly [string, ...string[]]): Field => ({
  sentence,
  path,
  label,
  start: choices[0],
  choices,
});

/** What holds for one end of the runway. */
const end = (place: 0 | 1, designator: string, direction: string, elevation: string) => {
  const path = `runway.ends[${place}]`;
  const of = `of the ${place === 0 ? 'first' : 'second'} end`;
  const declared = (name: string) =>
    field(
      'distances',
      `${path}.declaredDistances.${name}`,
      `${name} from the ${place === 0 ? 'first' : 'second'} end`,
      '830',
    );
  return {
    designator: field('runway', `${path}.designator`, `Designator ${of}`, designator),
    direction: field(
      'runway',
      `${path}.direction`,
      `Direction of the runway from the ${place === 0 ? 'first' : 'second'} end`,
      direction,
    ),
    elevation: field('slope', `${path}.elevation`, `Elevation ${of}`, elevation),
    TORA: declared('TORA'),
    TODA: declared('TODA'),
    ASDA: declared('ASDA'),
    LDA: declared('LDA'),
    displaced: field('distances', `${path}.displacedThreshold`, `Displacement of the threshold ${of}`, ''),
  };
};
const first = end(0, '10', '112', '387');
const second = end(1, '28', '292', '438');

/** Every field of version 1 of the page's address, in the order in which they are written. */
export const fields = {
  job: choice('aeroplane', '', 'What I want to do', ['takeoff', 'landing']),
  aeroplane: choice('aeroplane', 'performanceData', 'Aeroplane', [
    'corran-four',
    'linnet-two',
    'plover-two',
    'skerry-two',
    'own',
  ]),
  takeoffConfiguration: field('aeroplane', 'configuration', 'Configuration at take-off', 'flap-15'),
  landingConfiguration: field('aeroplane', 'configuration', 'Configuration for landing', 'flap-35'),
  mass: field('aeroplane', 'mass', 'Mass', '940'),
  massUnit: choice('aeroplane', '', 'Unit of the mass', ['kg', 'lb']),

  aerodrome: field('runway', 'runway.aerodrome', 'Aerodrome', 'Vesikorpi'),
  length: field('runway', 'runway.length', 'Length of the runway', '830'),
  distanceUnit: choice('runway', '', 'Unit of distances along the ground', ['m', 'ft']),
  designator1: first.designator,
  designator2: second.designator,
  direction1: first.direction,
  direction2: second.direction,
  runwayNorth: choice('runway', '', 'North of the runway directions', ['true', 'magnetic']),
  directionFrom: choice('runway', 'runway.ends[0].directionFrom', 'Where the directions come from', [
    'survey',
    'designator',
  ]),

  weather: choice('air', '', 'Where the weather comes from', ['figures', 'METAR']),
  metar: field('air', 'metar', 'METAR or SPECI', ''),
  temperature: field('air', 'weather.temperature', 'Temperature', '26'),
  dewPoint: field('air', 'weather.dewPoint', 'Dew point', '16'),
  temperatureUnit: choice('air', '', 'Unit of the temperatures', ['degC', 'degF']),
  pressureKind: choice('air', '', 'Kind of pressure', ['qnh', 'qfe']),
  pressure: field('air', 'weather.pressure', 'Pressure', '1006'),
  pressureUnit: choice('air', '', 'Unit of the pressure', ['hPa', 'inHg']),

  windSource: choice('wind', 'weather.wind.source', 'Who reports the wind', [
    'METAR',
    'TAF',
    'FAA tower',
    'FAA ATIS',
    'ICAO ATIS',
    'observed',
  ]),
  windKind: choice('wind', '', 'Whether the wind has a direction', ['from', 'variable', 'not reported']),
  windFrom: field('wind', 'weather.wind.from', 'Direction from which the wind blows', '190'),
  windNorth: choice('wind', '', 'North of the wind directions', ['true', 'magnetic']),
  windSpeed: field('wind', 'weather.wind.speed', 'Wind speed', '7'),
  windGust: field('wind', 'weather.wind.gust', 'Gusts', '17'),
  windUnit: choice('wind', '', 'Unit of the wind speeds', ['kt', 'mph', 'mps']),
  rangeFrom: field('wind', 'weather.wind.range.from', 'Direction at the beginning of the range, clockwise', ''),
  rangeTo: field('wind', 'weather.wind.range.to', 'Direction at the end of the range, clockwise', ''),
  variation: field('wind', 'variation', 'Magnetic variation', '13'),
  variationSide: choice('wind', '', 'Side of the variation', ['east', 'west']),
  variationSource: field('wind', 'variation.source', 'Source of the variation', 'chart, 2026'),

  surface: choice('surface', 'runway.surface', 'Kind of surface', ['grass', 'paved', 'gravel', 'snow']),
  condition: choice('surface', 'runway.surface.condition', 'Condition of the surface', ['dry', 'wet']),
  grassLength: choice('surface', 'runway.surface.length', 'Length of the grass', [
    'up to 20 cm',
    'over 20 cm',
    'very short',
  ]),
  ground: choice('surface', 'runway.surface.ground', 'Ground under the grass', ['firm', 'soft']),
  conditionCode: choice('surface', 'runway.surface.conditionCode', 'Runway condition code', [
    'none',
    '0',
    '1',
    '2',
    '3',
    '4',
    '5',
    '6',
  ]),

  elevation1: first.elevation,
  elevation2: second.elevation,
  elevationUnit: choice('slope', '', 'Unit of the elevations', ['ft', 'm']),

  liftOffSpeedAddition: field('speed', 'liftOffSpeedAddition', 'Knots above the lift-off speed of the manual', ''),
  approachSpeedAddition: field('speed', 'approachSpeedAddition', 'Knots above the approach speed of the manual', ''),
  excessHeight: field('speed', 'excessHeight', 'Feet above the height at which the threshold should be passed', ''),

  factorSet: choice('factors', 'factorSet', 'Factor set', [
    'easa-class-b',
    'uk-light-aeroplane-leaflet',
    'part-nco',
    'faa-handbook',
    'manufacturer-only',
  ]),
  safetyFactor: choice('factors', 'safetyFactor', 'Safety factor', ['of the set', 'none']),
  compared: field(
    'factors',
    'policies.confirmations[0].factorId',
    'Whether the recalled factors have been compared with a printed edition',
    '',
  ),
  comparedEdition: field('factors', 'policies.confirmations[0].edition', 'Edition that they were compared with', ''),
  comparedDate: field('factors', 'policies.confirmations[0].date', 'Date of the comparison', ''),

  TORA1: first.TORA,
  TODA1: first.TODA,
  ASDA1: first.ASDA,
  LDA1: first.LDA,
  displaced1: first.displaced,
  TORA2: second.TORA,
  TODA2: second.TODA,
  ASDA2: second.ASDA,
  LDA2: second.LDA,
  displaced2: second.displaced,
  lineUpLoss: field('distances', 'lineUpLoss', 'Runway used up in lining up', '0'),

  obstacles: choice('obstacles', 'runway.obstacles', 'Whether anybody has looked for obstacles', [
    'listed',
    'not looked for',
  ]),
  heightUnit: choice('obstacles', '', 'Unit of the heights of obstacles', ['m', 'ft']),
  verticalClearance: field(
    'obstacles',
    'policies.verticalClearance',
    'Feet to spare over obstacles when climbing',
    '50',
  ),
  approachClearance: field(
    'obstacles',
    'policies.approachClearance',
    'Feet to spare over obstacles on the approach',
    '30',
  ),
  approachAngle: field('obstacles', 'policies.approachAngle', 'Angle of the approach in degrees', '3'),

  crosswindLimit: field('limits', 'personalLimits.crosswind', 'My limit of crosswind in knots', '18'),
  tailwindLimit: field('limits', 'personalLimits.tailwind', 'My limit of tailwind in knots', '5'),
  brakingCoefficient: field('limits', 'brakingCoefficient', 'Braking coefficient', '0.2'),

  headwindShare: field('policies', 'policies.headwindShare', 'Share of a headwind that is used', ''),
  tailwindShare: field('policies', 'policies.tailwindShare', 'Share of a tailwind that is used', ''),
  reactionTime: field('policies', 'policies.reactionTime', 'Reaction time in seconds', ''),
  demonstratedCrosswind: choice(
    'policies',
    'policies.demonstratedCrosswind',
    'Demonstrated crosswind',
    policyDefaults.demonstratedCrosswind.options,
  ),
  favourableSlope: choice(
    'policies',
    'policies.favourableSlope',
    'Favourable slope',
    policyDefaults.favourableSlope.options,
  ),
  favourableEdge: choice(
    'policies',
    'policies.favourableEdge',
    'Beyond the favourable edge of a table',
    policyDefaults.favourableEdge.options,
  ),
  betweenPrintedValues: choice(
    'policies',
    'policies.betweenPrintedValues',
    'Between printed values',
    policyDefaults.betweenPrintedValues.options,
  ),
  humidity: choice('policies', 'policies.humidity', 'Humidity', policyDefaults.humidity.options),
  unreportedGust: choice(
    'policies',
    'policies.unreportedGust',
    'Gust that is not reported',
    policyDefaults.unreportedGust.options,
  ),
  speedAdditionInDistance: choice(
    'policies',
    'policies.speedAdditionInDistance',
    'Speed addition in the distance',
    policyDefaults.speedAdditionInDistance.options,
  ),
  firstPrinciples: choice(
    'policies',
    'policies.firstPrinciples',
    'What first principles say',
    policyDefaults.firstPrinciples.options,
  ),
} as const satisfies Record<string, Field>;

export type FieldKey = keyof typeof fields;
export const fieldKeys = Object.keys(fields) as FieldKey[];
export const fieldOf = (key: FieldKey): Field => fields[key];

/** What is said of one obstacle; the keys stand behind `obstacle1.` and so on in the address. */
export const obstacleFields = {
  name: { path: 'name', label: 'Name', start: '' },
  beyond: { path: 'beyond', label: 'Distance beyond the end', start: '' },
  end: { path: 'end', label: 'Designator of the end beyond which it stands', start: '' },
  height: { path: 'height', label: 'Height', start: '' },
  ground: { path: 'groundElevation', label: 'Elevation of the ground on which it stands', start: '' },
  top: { path: 'topElevation', label: 'Elevation of the top', start: '' },
  aside: { path: 'lateralOffset', label: 'Distance from the extended centreline', start: '' },
} as const;
export type ObstacleKey = keyof typeof obstacleFields;
export const obstacleKeys = Object.keys(obstacleFields) as ObstacleKey[];
