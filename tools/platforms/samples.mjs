// Runs on every platform alike, bundled: the same inputs through every formula and every example. Nothing here may
// depend on the platform; the inputs come from whole numbers alone.
import { assessLanding, assessTakeoff } from 'groundroll';
import { checkValues, compareCheckValues, formulaRecords } from 'groundroll/register';
import { runwayDistanceTable, uncertainty } from 'groundroll/study';

/** Numbers from 0 up to, not including, 1, by whole-number arithmetic. */
function shares(seed) {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 0x2c1b3c6d);
    mixed = Math.imul(mixed ^ (mixed >>> 12), 0x297a2d39);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 2 ** 32;
  };
}

/** What the domain of a record does not state and no check value shows. */
const others = {
  'magnetism.designator-direction': (share) => ({ designator: String(1 + Math.floor(36 * share())).padStart(2, '0') }),
  'wind.runway-order': (share) => ({
    wind: { from: 360 * share(), speed: 5 + 15 * share(), gust: 20 + 10 * share() },
    runways: Array.from({ length: 4 }, (_, i) => ({ name: String(i), direction: 360 * share() })),
    by: share() < 0.5 ? 'along' : 'across',
  }),
  'aircraft.interpolate-curves': (share) => {
    const piece = (at) => ({ at, from: [0, 300 + 100 * share()], to: [20, 500 + 100 * share()] });
    return { along: 20 * share(), at: 2000 * share(), lower: piece(0), upper: piece(2000) };
  },
  'study.lognormal-moments': (share) => ({ standardDeviation: 0.5 * share() }),
  'study.normal-deviate': (share) => ({ first: 1 - share(), second: share() }),
  'study.rectangular-standard-uncertainty': (share) => ({ halfWidth: 10 * share() }),
};

/** Which quantities a call of a formula has, and its other inputs: those of the published examples. */
function callsOf(record) {
  const examples = checkValues.filter((each) => each.record === record.id).map(({ inputs }) => inputs);
  if (examples.length === 0) return [{ quantities: Object.keys(record.domain), rest: {} }];
  return examples.map((inputs) => {
    const isQuantity = (name) => name in record.domain && inputs[name]?.unit !== undefined;
    const names = Object.keys(inputs);
    return {
      quantities: names.filter(isQuantity),
      rest: Object.fromEntries(names.filter((name) => !isQuantity(name)).map((name) => [name, inputs[name]])),
    };
  });
}

/** One input: evenly within the bounds of each quantity, every third call near the lower end, where most flying is. */
function inputsOf(record, call, share) {
  const quantities = call.quantities.map((name) => {
    const { min, max } = record.domain[name];
    return [name, min + share() * (max - min) * (share() < 1 / 3 ? 0.1 : 1)];
  });
  return { ...Object.fromEntries(quantities), ...call.rest, ...others[record.id]?.(share) };
}

/** Every number and every text in a result, in order. */
function leaves(value, found) {
  if (typeof value === 'object' && value !== null) for (const part of Object.values(value)) leaves(part, found);
  else if (value !== undefined) found.push(value);
  return found;
}

function resultsOf(record, count) {
  const calls = callsOf(record);
  const share = shares([...record.id].reduce((sum, letter) => Math.imul(sum, 31) + letter.charCodeAt(0), 7));
  return Array.from({ length: count }, (_, i) => {
    try {
      return leaves(record.formula(inputsOf(record, calls[i % calls.length], share)), []);
    } catch (error) {
      // A refusal is a result: it must be one everywhere.
      return [`refused: ${error.name} ${error.detail?.parameter}`];
    }
  });
}

/** An example under other temperatures and winds; all numbers and sentences of the assessment. */
function assessmentsOf(request, count) {
  const share = shares(20260714);
  const assess = request.schema.startsWith('groundroll/takeoff') ? assessTakeoff : assessLanding;
  const asItIs = [leaves(assess(request), [])];
  return asItIs.concat(
    Array.from({ length: count }, () => {
      const { weather } = request;
      const { dewPoint: _, ...air } = weather;
      const wind = { source: 'METAR', from: { value: 10 * (1 + Math.floor(36 * share())), unit: 'degTrue' } };
      const speed = { value: 1 + Math.floor(15 * share()), unit: 'kt' };
      const temperature = { value: Math.floor(45 * share()) - 5, unit: 'degC' };
      return leaves(assess({ ...request, weather: { ...air, temperature, wind: { ...wind, speed } } }), []);
    }),
  );
}

/**
 * @param {number} count of inputs for each formula
 * @param {readonly any[]} requests the example requests with their performance data
 * @returns {Record<string, (number | string | boolean)[][]>} results by formula or example
 */
export function results(count, requests) {
  const published = compareCheckValues(formulaRecords, checkValues);
  const byFormula = formulaRecords.map((record) => {
    const printed = published.filter((row) => row.record === record.id).map(({ ours }) => [ours]);
    return [record.id, [...resultsOf(record, count), ...printed]];
  });
  const assessments = requests.map(({ name, request }) => [
    `assessment of ${name}`,
    assessmentsOf(request, count / 20),
  ]);
  const [{ request }] = requests.filter(({ name }) => name === 'takeoff-28');
  const temperatures = [0, 10, 20, 30].map((value) => ({ value, unit: 'degC' }));
  const masses = [850, 940].map((value) => ({ mass: { value, unit: 'kg' } }));
  const studies = [runwayDistanceTable(request, { masses, temperatures }), uncertainty(request, { cases: 1000 })];
  return Object.fromEntries([
    ...byFormula,
    ...assessments,
    ['studies of takeoff-28', studies.map((study) => leaves(study, []))],
  ]);
}
