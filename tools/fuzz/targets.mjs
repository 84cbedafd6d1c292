// What is read, from which inputs, and what must hold for every one of them.
import fs from 'node:fs';
import * as aircraft from 'groundroll/aircraft';
import * as assessment from 'groundroll/assessment';
import * as study from 'groundroll/study';
import * as weatherReport from 'groundroll/weather-report';
import { entries } from '../entries.mjs';
import { aroundExamples } from './documents.mjs';
import { report, soundReport } from './reports.mjs';

const folder = new URL('../../examples/', import.meta.url);
const json = (name) => JSON.parse(fs.readFileSync(new URL(name, folder), 'utf8'));
const requests = fs.readdirSync(new URL('requests/', folder)).map((name) => {
  const request = json(`requests/${name}`);
  return { ...request, performanceData: json(`requests/${request.performanceData}`) };
});
const takeoffs = requests.filter(({ schema }) => schema === 'groundroll/takeoff-request/1');
const landings = requests.filter(({ schema }) => schema === 'groundroll/landing-request/1');
const performanceData = fs
  .readdirSync(new URL('performance-data/', folder))
  .map((name) => json(`performance-data/${name}`));
const [takeoff] = takeoffs;
const [landing] = landings;

const schema = 'groundroll/departure-and-arrival-request/1';
const { mass: _, performanceData: __, ...arrival } = landing;
const bothEnds = [
  { schema, sequence: 'departure then arrival', departure: takeoff, arrival },
  {
    schema,
    sequence: 'departure then arrival',
    departure: takeoff,
    arrival,
    fuelBurnt: { value: 20, unit: 'kg' },
  },
  {
    schema,
    sequence: 'arrival then departure',
    arrival: landing,
    departure: { schema: takeoff.schema, runwayInUse: takeoff.runwayInUse, configuration: takeoff.configuration },
    departureTemperature: { value: 33, unit: 'degC' },
  },
];

const degC = (value) => ({ value, unit: 'degC' });
const axes = [
  { masses: [850, 940].map((value) => ({ mass: { value, unit: 'kg' } })), temperatures: [0, 26, 45].map(degC) },
  { headwinds: [-5, 0, 10].map((value) => ({ value, unit: 'kt' })), temperatures: [10, 30].map(degC) },
];
const tables = axes.flatMap((each) => {
  const table = study.runwayDistanceTable(takeoff, each);
  return table.ok ? [JSON.parse(JSON.stringify(table.value))] : [];
});

/** Version 0 of a performance data document stated a law for one knot. */
function asVersion0(document) {
  const tables = (phase) =>
    phase.map(({ corrections = {}, ...table }) => ({
      ...table,
      corrections: { ...corrections, headwind: { percentPerKnot: -1, upTo: { value: 20, unit: 'kt' } } },
    }));
  const { takeoff: out, landing: back, ...rest } = document;
  return { ...rest, schema: 'groundroll/performance-data/0', takeoff: tables(out), landing: tables(back) };
}

const charts = performanceData
  .flatMap(({ takeoff: out, landing: back }) => [...out, ...back])
  .flatMap((table) => [table.groundRoll, table.distance])
  .filter((each) => each !== undefined && 'panels' in each);
const readings = ['read-at-edge', 'refuse'].flatMap((favourableEdge) =>
  ['interpolate', 'next-worse'].flatMap((between) =>
    ['greater', 'less'].map((worse) => ({ favourableEdge, between, worse, highIsFavourable: ['headwind'] })),
  ),
);
const extreme = [Number.NaN, Number.POSITIVE_INFINITY, -1e308, 1e308, 0, undefined];

/** A point on a chart that was read: near its scales, seldom far off. */
function chartPoint(choices) {
  const point = {
    mass: choices.within(690, 910),
    pressureAltitude: choices.within(-100, 6100),
    densityAltitude: choices.within(-100, 6100),
    temperature: choices.within(-12, 52),
    headwind: choices.within(-7, 22),
    height: choices.within(0, 16),
    slope: choices.within(-2, 2),
  };
  if (choices.oneIn(4)) point[choices.of(Object.keys(point))] = choices.of(extreme);
  return { chart: choices.of(charts), point, mode: choices.of(readings) };
}

/**
 * @typedef {object} Target
 * @property {(choices: import('./random.mjs').Choices) => unknown} input
 * @property {(input: any) => unknown} read
 * @property {boolean} [valueIsNotRead] what it gives may still hold anything
 * @property {(input: any, result: any) => string | undefined} [problem] what must hold besides, in words if it does not
 */

/** By the name of the public function. @type {Readonly<Record<string, Target>>} */
export const targets = {
  readPerformanceData: { input: aroundExamples(performanceData), read: aircraft.readPerformanceData },
  migratePerformanceData: {
    input: aroundExamples([...performanceData.map(asVersion0), ...performanceData]),
    read: aircraft.migratePerformanceData,
    // It changes the shape alone; what is wrong with the figures is for readPerformanceData to say.
    valueIsNotRead: true,
  },
  readChart: {
    input: chartPoint,
    read: ({ chart, point, mode }) => aircraft.readChart(chart, point, mode),
  },
  readTakeoffRequest: { input: aroundExamples(takeoffs), read: assessment.readTakeoffRequest },
  readLandingRequest: { input: aroundExamples(landings), read: assessment.readLandingRequest },
  readWeather: { input: aroundExamples(requests.map(({ weather }) => weather)), read: assessment.readWeather },
  readDepartureAndArrivalRequest: { input: aroundExamples(bothEnds), read: study.readDepartureAndArrivalRequest },
  readRunwayDistanceTable: { input: aroundExamples(tables), read: study.readRunwayDistanceTable },
  readMetar: { input: report, read: weatherReport.readMetar },
  weatherFromMetar: {
    input: (choices) => weatherReport.readMetar(soundReport(choices)),
    read: (reading) => (reading.ok ? assessment.weatherFromMetar(reading.value) : reading),
    problem: (_reading, result) =>
      result.ok && !assessment.readWeather(result.value).ok ? 'gives a weather that is not read' : undefined,
  },
  assessTakeoff: { input: aroundExamples(takeoffs), read: assessment.assessTakeoff },
  assessLanding: { input: aroundExamples(landings), read: assessment.assessLanding },
};

/** Every public function that takes what somebody else wrote; found in the build, so that none is forgotten. */
export async function publicReaders() {
  const names = new Set();
  for (const { specifier } of entries) {
    for (const [name, value] of Object.entries(await import(specifier))) {
      if (typeof value === 'function' && /^(read|migrate|parse)[A-Z]|FromMetar$/.test(name)) names.add(name);
    }
  }
  return [...names].sort();
}
