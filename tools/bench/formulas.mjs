// Every formula of the register against the same arithmetic by hand: plain functions of numbers, without checks.
import { formulaRecords } from 'groundroll/register';
import { notByHand } from './by-hand/index.mjs';
import { checksBeside, inputsOf } from './formula-inputs.mjs';
import { demandAgreement, formulasByHand } from './formulas-by-hand.mjs';
import { difference, interleaved, ratio, spread } from './harness.mjs';

export const gates = {
  transcendental: { most: 1.25, of: 'ratio' },
  algebraic: { most: 1.6, of: 'ns per check' },
};

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

/** What the formula checks: the quantities against their bounds, and what it looks at beside these. */
const checksOf = ({ id, domain }) => Object.keys(domain).length + (checksBeside[id] ?? 0);

/** Times all formulas; `only` keeps those whose id contains it. */
export function measureFormulas({ rounds, only = '' }) {
  // All are compiled together before any is timed: an app that uses many has the same.
  const all = formulasByHand(formulaRecords)
    .filter(({ record }) => record.id.includes(only))
    .map((formula) => ({ ...formula, inputs: inputsOf(formula.record) }));
  const prepared = all.map((formula) => ({ ...formula, pieces: pieces(formula, formula.inputs) }));
  return {
    gates,
    notByHand: Object.fromEntries(notByHand),
    formulas: prepared.map(({ record, maths, pieces: work }) => {
      const [ours, hand, control] = interleaved(work, { rounds });
      const checks = checksOf(record);
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
