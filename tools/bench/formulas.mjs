// Every formula of the register against the same arithmetic by hand: plain functions of numbers, without checks.
import { formulaRecords } from 'groundroll/register';
import { algebraic, notByHand, transcendental } from './by-hand/index.mjs';
import { inputsOf } from './formula-inputs.mjs';
import { difference, interleaved, ratio, spread } from './harness.mjs';

const agreement = 1e-12;

export const gates = {
  transcendental: { most: 1.25, of: 'ratio' },
  algebraic: { most: 1.6, of: 'ns per check' },
};

/** The formulas as they are measured; throws where one is neither by hand nor listed with a reason. */
export function formulasByHand(records = formulaRecords) {
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

let loops = 0;

/**
 * A loop over the inputs that sums up the results. Each formula gets a loop of its own, as in an app's code: one loop
 * for all would be compiled for none of them. Its text has a number of its own, since the engine knows loops by theirs.
 */
function loop(called, call, answer, inputs, numeric) {
  loops += 1;
  const share = ([name, times]) => (times === inputs.length ? `r.${name}` : `(r.${name} ?? 0)`);
  const sum = typeof answer === 'number' ? 'r' : [...numeric].map(share).join(' + ');
  const body = `/* ${loops} */ let sum = 0;
    for (let i = 0; i < inputs.length; i += 1) { const x = inputs[i]; const r = f(${call}); sum += ${sum}; }
    return sum;`;
  return new Function('f', 'inputs', `/* ${loops} */ return () => { ${body} };`)(called, inputs);
}

function pieces(formula, inputs) {
  const { record, byHand } = formula;
  const numeric = demandAgreement(formula, inputs);
  const names = Object.keys(record.inputs);
  const answer = record.formula(inputs[0]);
  const ours = loop(record.formula, 'x', answer, inputs, numeric);
  const hand = loop(byHand, names.map((name) => `x.${name}`).join(', '), answer, inputs, numeric);
  const control = loop(byHand, names.map((name) => `x.${name}`).join(', '), answer, inputs, numeric);
  return [ours, hand, control].map((run) => ({ run, per: inputs.length }));
}

/** Quantities that the formula checks: those with bounds of their own, each entry of a list, each number of the others. */
function checksOf(record, input) {
  const quantities = Object.keys(record.domain);
  const rest = Object.entries(input).filter(([name]) => !quantities.includes(name));
  const numbersIn = (value) =>
    typeof value === 'number' ? 1 : Object.values(Object(value)).flatMap((v) => [v]).length;
  return (
    quantities.length + rest.reduce((sum, [, value]) => sum + (typeof value === 'string' ? 1 : numbersIn(value)), 0)
  );
}

/** Times all formulas; `only` keeps those whose id contains it. */
export function measureFormulas({ rounds, only = '' }) {
  // All are compiled together before any is timed: an app that uses many has the same.
  const all = formulasByHand()
    .filter(({ record }) => record.id.includes(only))
    .map((formula) => ({ ...formula, inputs: inputsOf(formula.record) }));
  const prepared = all.map((formula) => ({ ...formula, pieces: pieces(formula, formula.inputs) }));
  return {
    gates,
    notByHand: Object.fromEntries(notByHand),
    formulas: prepared.map(({ record, maths, inputs, pieces: work }) => {
      const [ours, hand, control] = interleaved(work, { rounds });
      const checks = checksOf(record, inputs[0]);
      const times = { ours_ns: spread(ours).median, byHand_ns: spread(hand).median };
      const perCheck_ns = difference(ours, hand).median / checks;
      const timesByHand = ratio(ours, hand);
      const met =
        maths === 'algebraic' ? perCheck_ns <= gates.algebraic.most : timesByHand.median <= gates.transcendental.most;
      return {
        id: record.id,
        maths,
        checks,
        ...times,
        ratio: timesByHand,
        control: ratio(control, hand),
        perCheck_ns,
        met,
      };
    }),
  };
}
