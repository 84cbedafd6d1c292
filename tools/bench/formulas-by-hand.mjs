// Which formulas are written by hand, and whether they agree with ours.
import { algebraic, notByHand, transcendental } from './by-hand/index.mjs';

const agreement = 1e-12;

/** The formulas as they are measured; throws where one is neither by hand nor listed with a reason. */
export function formulasByHand(records) {
  const ids = new Set(records.map(({ id }) => id));
  for (const id of [...algebraic.keys(), ...transcendental.keys(), ...notByHand.keys()]) {
    if (!ids.has(id)) throw new Error(`${id}: no such record`);
  }
  return records.flatMap((record) => {
    const byHand = algebraic.get(record.id) ?? transcendental.get(record.id);
    if ((byHand === undefined) !== notByHand.has(record.id)) {
      throw new Error(`${record.id}: write it by hand in tools/bench/by-hand, or say there why not, and not both`);
    }
    if (byHand === undefined) return [];
    return [{ record, byHand, maths: algebraic.has(record.id) ? 'algebraic' : 'transcendental' }];
  });
}

const resultsOf = (answer) => (typeof answer === 'object' ? answer : { result: answer });

/** Throws unless the formula and its form by hand agree on every input; gives the names of the numbers they answer. */
export function demandAgreement({ record, byHand }, inputs) {
  const names = Object.keys(record.inputs);
  const numeric = new Map();
  for (const input of inputs) {
    const ours = resultsOf(record.formula(input));
    const hand = resultsOf(byHand(...names.map((name) => input[name])));
    for (const name of new Set([...Object.keys(ours), ...Object.keys(hand)])) {
      if (typeof ours[name] === 'number') numeric.set(name, (numeric.get(name) ?? 0) + 1);
      if (agree(ours[name], hand[name])) continue;
      throw new Error(`${record.id}, ${name}: ${ours[name]}, by hand ${hand[name]}, of ${JSON.stringify(input)}`);
    }
  }
  return numeric;
}

function agree(ours, hand) {
  if (typeof ours !== 'number' || typeof hand !== 'number') return ours === hand;
  return Math.abs(ours - hand) <= agreement * Math.max(1, Math.abs(ours));
}
