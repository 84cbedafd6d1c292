// A prepared take-off against the same arithmetic by hand, in a thousand weathers; with and without its working.
import fs from 'node:fs';
import { prepareLanding, prepareTakeoff, readTakeoffRequest } from 'groundroll';
import { takeoffByHand } from './by-hand/takeoff.mjs';
import { interleaved, ratio, shares, spread } from './harness.mjs';

// The recorder is no part of the public interface: only the explained assessment uses it, which makes sentences as well.
const internal = (file) => import(new URL(`../../dist/internal/assessment/${file}.js`, import.meta.url).href);
const { takeoffSituationOf } = await internal('assess-takeoff');
const { takeoffFigures } = await internal('kernel/takeoff-kernel');
const { callThrough, TraceRecorder } = await internal('kernel/step');

export const gates = { ratio: { most: 1.7 }, perSecond: { least: 1_000_000 }, recorded: { least: 0.5 } };

const agreement = 1e-12;
const json = (file) => JSON.parse(fs.readFileSync(`examples/${file}`, 'utf8'));

/** An example request with its performance data in place. */
export const exampleRequest = (name) => ({
  ...json(`requests/${name}.json`),
  performanceData: json('performance-data/corran-four.json'),
});

/** Weathers within the manual's tables; every wind has a direction, and some a gust. */
export const weathers = (() => {
  const share = shares(5);
  return Array.from({ length: 1000 }, (_, i) => {
    const speed_kt = 3 + Math.floor(12 * share());
    const gust_kt = i % 3 === 0 ? speed_kt + 10 : speed_kt;
    return {
      from_deg: 1 + Math.floor(360 * share()),
      speed_kt,
      gust_kt,
      gustReported: gust_kt > speed_kt,
      range_deg: undefined,
      temperature_degC: 1 + Math.floor(38 * share()),
      dewPoint_degC: undefined,
      pressure: { qnh_hPa: 980 + Math.floor(45 * share()) },
    };
  });
})();

/** The prepared value, or an error with the faults. */
export function prepared(result) {
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

const numbers = ['value', 'limit', 'margin', 'unroundedValue', 'unroundedMargin'];

/** Throws unless both find the same criteria with the same figures in every weather. */
export function demandSameCriteria(compare, byHand) {
  for (const weather of weathers) {
    const ours = compare(weather);
    const hand = byHand(weather);
    const words = ({ verdict, criteria }) => JSON.stringify([verdict, criteria.map((each) => [each.id, each.verdict])]);
    if (words(ours) !== words(hand)) {
      throw new Error(`${JSON.stringify(weather)}: ${words(ours)}, by hand ${words(hand)}`);
    }
    for (const [i, criterion] of ours.criteria.entries()) {
      for (const name of numbers) {
        const [a, b] = [criterion[name], hand.criteria[i][name]];
        if (a === b || Math.abs(a - b) <= agreement * Math.max(1, Math.abs(a))) continue;
        throw new Error(`${JSON.stringify(weather)}: ${criterion.id}, ${name}: ${a}, by hand ${b}`);
      }
    }
  }
}

/** The figures of a comparison, so that none of them may be left out. */
function consumed({ criteria }) {
  let sum = 0;
  for (let i = 0; i < criteria.length; i += 1) sum += criteria[i].value ?? criteria[i].limit ?? 0;
  return sum;
}

const over = (compare) => () => {
  let sum = 0;
  for (let i = 0; i < weathers.length; i += 1) sum += consumed(compare(weathers[i]));
  return sum;
};

const asWeather = ({ from_deg, speed_kt, gust_kt, temperature_degC, pressure }) => ({
  wind: {
    source: 'METAR',
    from: { value: from_deg, unit: 'degTrue' },
    speed: { value: speed_kt, unit: 'kt' },
    ...(gust_kt > speed_kt ? { gust: { value: gust_kt, unit: 'kt' } } : {}),
  },
  temperature: { value: temperature_degC, unit: 'degC' },
  qnh: { value: pressure.qnh_hPa, unit: 'hPa' },
});

/** The same computation by the kernel, calling through and noting every step. */
function kernel() {
  const situation = takeoffSituationOf(prepared(readTakeoffRequest(exampleRequest('takeoff-28'))));
  const calledThrough = (weather) => ({ criteria: takeoffFigures(callThrough, situation, weather).judged });
  const recorded = (weather) => ({ criteria: takeoffFigures(new TraceRecorder(), situation, weather).judged });
  return [over(calledThrough), over(recorded)];
}

/** Times prepared take-offs and landings. */
export function measureAssessment({ rounds }) {
  const situations = ['28', '10'].map((end) => {
    const compare = prepared(prepareTakeoff(exampleRequest(`takeoff-${end}`))).compare;
    const byHand = takeoffByHand(json('performance-data/corran-four.json'), end);
    demandSameCriteria(compare, byHand);
    return { end, compare, byHand };
  });
  const takeoff = prepared(prepareTakeoff(exampleRequest('takeoff-28')));
  const landing = prepared(prepareLanding(exampleRequest('landing-10')));
  const few = weathers.slice(0, 20).map(asWeather);
  const explain = () => few.reduce((sum, each) => sum + prepared(takeoff.assess(each)).criteria.length, 0);
  const distanceAlone = () => weathers.reduce((sum, each) => sum + (takeoff.compareDistance(each).value ?? 0), 0);
  const work = [
    ...situations.flatMap(({ compare, byHand }) => [over(compare), over(byHand), over(byHand)]),
    distanceAlone,
    over((weather) => landing.compare(weather)),
    ...kernel(),
  ].map((run) => ({ run, per: weathers.length }));
  const times = interleaved([...work, { run: explain, per: few.length }], { rounds });
  const takeoffs = situations.map(({ end }, i) => {
    const [ours, hand, control] = times.slice(3 * i, 3 * i + 3);
    const ns = spread(ours);
    const timesByHand = ratio(ours, hand);
    const perSecond = 1e9 / ns.median;
    return {
      end,
      ns,
      byHand_ns: spread(hand),
      ratio: timesByHand,
      control: ratio(control, hand),
      perSecond,
      met: { ratio: timesByHand.median <= gates.ratio.most, perSecond: perSecond >= gates.perSecond.least },
    };
  });
  const [distance, landings, calledThrough, recorded, explained] = times.slice(6);
  const recorderRatio = ratio(calledThrough, recorded);
  return {
    gates,
    takeoffs,
    recorder: { ns: spread(recorded), ratio: recorderRatio, met: recorderRatio.median >= gates.recorded.least },
    distanceAlone: { ns: spread(distance) },
    landing: { ns: spread(landings) },
    explained: { ns: spread(explained) },
  };
}
