// A prepared take-off against the same arithmetic by hand, in a thousand weathers; with and without its working.
import { prepareLanding, prepareTakeoff, readTakeoffRequest } from 'groundroll';
import { takeoffByHand } from './by-hand/takeoff.mjs';
import { takeoffByFormulas } from './by-hand/takeoff-by-formulas.mjs';
import { inOneGo, inPortions, interleaved, ratio, spread } from './harness.mjs';
import { demandSameCriteria, exampleRequest, json, prepared, weathers } from './weathers.mjs';

// The recorder is no part of the public interface: only the explained assessment uses it, which makes sentences as well.
const internal = (file) => import(new URL(`../../dist/internal/assessment/${file}.js`, import.meta.url).href);
const { takeoffSituationOf } = await internal('assess-takeoff');
const { takeoffFigures } = await internal('kernel/takeoff-kernel');
const { callThrough, TraceRecorder } = await internal('kernel/step');

export const gates = { ratio: { most: 1.7 }, perSecond: { least: 1_000_000 }, recorded: { least: 0.5 } };

/** The figures of a comparison, so that none of them may be left out. */
function consumed({ criteria }) {
  let sum = 0;
  for (let i = 0; i < criteria.length; i += 1) sum += criteria[i].value ?? criteria[i].limit ?? 0;
  return sum;
}

/** As many as the gate asks for in a second. */
const million = 1_000_000;
const goes = 5;

const over = (compare) => inPortions(weathers, (weather) => consumed(compare(weather)));

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

/**
 * The same computation by the kernel, calling through and noting every step: over obstacles, because where none stand
 * ahead only an explained take-off works out the climb, and the two would not do the same work.
 */
function kernel() {
  const situation = takeoffSituationOf(prepared(readTakeoffRequest(exampleRequest('takeoff-10'))));
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
  // First, while nothing else has run in this process: a planner's thread that sweeps a year of weather does only this.
  const inOneGo_ns = situations.map(({ compare }) =>
    inOneGo(weathers, (weather) => consumed(compare(weather)), million, goes),
  );
  const byFormulas = takeoffByFormulas(json('performance-data/corran-four.json'));
  demandSameCriteria(situations[0].compare, byFormulas);
  const takeoff = prepared(prepareTakeoff(exampleRequest('takeoff-28')));
  const landing = prepared(prepareLanding(exampleRequest('landing-10')));
  const work = [
    ...situations.flatMap(({ compare, byHand }) => [over(compare), over(byHand), over(byHand)]),
    over(byFormulas),
    inPortions(weathers, (weather) => takeoff.compareDistance(weather).value ?? 0),
    over((weather) => landing.compare(weather)),
    ...kernel(),
    inPortions(weathers.map(asWeather), (weather) => prepared(takeoff.assess(weather)).criteria.length, 1),
  ];
  const times = interleaved(work, { rounds });
  const takeoffs = situations.map(({ end }, i) => {
    const [ours, hand, control] = times.slice(3 * i, 3 * i + 3);
    const ns = spread(ours);
    const timesByHand = ratio(ours, hand);
    const perSecond = 1e9 / spread(inOneGo_ns[i]).median;
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
  const [formulas, distance, landings, calledThrough, recorded, explained] = times.slice(6);
  const recorderRatio = ratio(calledThrough, recorded);
  return {
    gates,
    takeoffs,
    byFormulas: { ns: spread(formulas), ratio: ratio(formulas, times[1]) },
    recorder: { ns: spread(recorded), ratio: recorderRatio, met: recorderRatio.median >= gates.recorded.least },
    distanceAlone: { ns: spread(distance) },
    landing: { ns: spread(landings) },
    explained: { ns: spread(explained) },
  };
}
