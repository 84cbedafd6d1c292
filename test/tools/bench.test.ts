import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { prepareTakeoff } from '../../src/index.ts';
import { formulaRecords } from '../../src/register/index.ts';
import type { FormulaRecord } from '../../src/sources/index.ts';
// @ts-expect-error a tool without types
import { takeoffByHand } from '../../tools/bench/by-hand/takeoff.mjs';
// @ts-expect-error a tool without types
import { inputsOf } from '../../tools/bench/formula-inputs.mjs';
// @ts-expect-error a tool without types
import { demandAgreement, formulasByHand } from '../../tools/bench/formulas-by-hand.mjs';
// @ts-expect-error a tool without types
import { demandSameCriteria, exampleRequest, weathers } from '../../tools/bench/weathers.mjs';

// What the benchmark compares must be the same; how long it takes is no matter of a test.

interface ByHand {
  readonly record: FormulaRecord;
  readonly byHand: (...inputs: unknown[]) => unknown;
}

const formulas: readonly ByHand[] = formulasByHand(formulaRecords);

describe('the formulas by hand', () => {
  it.each(formulas.map((formula) => [formula.record.id, formula] as const))(
    '%s: the same as the formula on every input',
    (_id, formula) => {
      const inputs = inputsOf(formula.record);
      expect(inputs).toHaveLength(1000);
      expect(demandAgreement(formula, inputs).size).toBeGreaterThan(0);
    },
  );

  it('would be found out if one differed by more than the last bits', () => {
    const [first] = formulas as readonly [ByHand];
    const wrong = { ...first, byHand: (...inputs: unknown[]) => Number(first.byHand(...inputs)) * (1 + 1e-11) };
    expect(() => demandAgreement(wrong, inputsOf(first.record))).toThrow(first.record.id);
  });

  it('leave no formula out without a reason', () => {
    const [first] = formulaRecords as readonly [FormulaRecord];
    expect(() => formulasByHand([...formulaRecords, { ...first, id: 'wind.of-tomorrow' }])).toThrow('wind.of-tomorrow');
    expect(() => formulasByHand(formulaRecords.slice(1))).toThrow(first.id);
  });
});

describe('the take-off by hand', () => {
  const data = JSON.parse(readFileSync('examples/performance-data/corran-four.json', 'utf8'));

  it.each(['28', '10'])('towards %s finds the criteria of the prepared one in a thousand weathers', (end) => {
    const prepared = prepareTakeoff(exampleRequest(`takeoff-${end}`));
    if (!prepared.ok) throw new Error(JSON.stringify(prepared.faults));
    const { compare } = prepared.value;
    const verdicts = new Set(weathers.map((weather: Parameters<typeof compare>[0]) => compare(weather).verdict));
    // Every kind of answer occurs among the weathers.
    expect(verdicts).toEqual(new Set(['within', 'outside']));
    demandSameCriteria(compare, takeoffByHand(data, end));
  });
});
