import { describe, expect, it } from 'vitest';
import type { Verdict } from '../../src/assessment/index.ts';
import type { StudyInput } from '../../src/study/inputs/study-input.ts';
import { type Question, type SolvedLimit, solve } from '../../src/study/solve.ts';
import { assessed, type Limits, questionOf } from './stand-in-input.ts';

/** The search over a figure that has nothing but a verdict, which is known beforehand at every value. */
function search(verdictAt: (value: number) => Verdict | 'unreadable', limits: Limits): SolvedLimit {
  const asked: number[] = [];
  const found = solve(
    questionOf((value) => {
      asked.push(value);
      return verdictAt(value);
    }, limits),
  );
  expect(asked.every(Number.isFinite)).toBe(true);
  const tried = found.working.map(({ at }) => at);
  // Nothing is tried outside of what was asked, nothing twice, and no figure is a minus zero.
  const ends = [limits.from, limits.to, limits.today ?? limits.from];
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  expect(tried.filter((at) => !(at >= low && at <= high))).toEqual([]);
  expect(new Set(tried).size).toBe(tried.length);
  expect(found.evaluations).toBe(tried.length);
  expect([...asked, ...tried, found.range.from.value, found.range.to.value].some((each) => Object.is(each, -0))).toBe(
    false,
  );
  for (const { at, verdict } of found.working) expect(verdict, `at ${at}`).toBe(assessed(verdictAt(at)));
  expect(found.limitedBy.every(({ verdict }) => verdict !== 'within')).toBe(true);
  return found;
}

const upTo = (last: number) => (value: number) => (value <= last ? 'within' : 'outside');
const kilograms = (value: number) => ({ value, unit: 'kg' });

describe('the search for the last value that is within', () => {
  it('ends on the last whole step upwards, even where the verdict turns on it', () => {
    for (const last of [500, 500.4, 500.9995]) {
      const found = search(upTo(last), { from: 0, to: 900 });
      expect(found, `${last}`).toMatchObject({ answer: 'value', value: kilograms(500), tolerance: 1 });
      expect(found.range).toEqual({ from: kilograms(0), to: kilograms(900) });
      expect(found.limitedBy[0]).toMatchObject({ id: 'crosswind', verdict: 'outside' });
      expect(found.sentence.text).toMatch(
        /^Figure: within limits up to 500 kg; beyond that the crosswind, 12 kt short\.$/,
      );
    }
  });

  it('ends on the last whole step downwards, and says so', () => {
    for (const last of [300, 299.1]) {
      const found = search((value) => (value >= last ? 'within' : 'outside'), { from: 900, to: 0 });
      expect(found, `${last}`).toMatchObject({ answer: 'value', value: kilograms(300) });
      expect(found.sentence.text).toMatch(/^Figure: within limits down to 300 kg; beyond that the crosswind/);
    }
  });

  it('passes nothing on its way down, which is neither positive nor negative', () => {
    const least = (last: number) => (value: number) => (value >= last ? 'within' : 'outside');
    expect(search(least(0), { from: 16, to: -16 }).value).toEqual(kilograms(0));
    expect(search(least(1), { from: 16, to: -16 }).value).toEqual(kilograms(1));
    expect(search(least(-16), { from: 16, to: -16 }).answer).toBe('withinThroughoutRange');
  });

  it('takes the step that it is given', () => {
    const found = search(upTo(5.37), { from: 0, to: 8, step: 0.1 });
    expect(found).toMatchObject({ value: { value: expect.closeTo(5.3, 9) }, tolerance: 0.1 });
    expect(found.sentence.text).toContain('up to 5.3 kg');
  });

  it('finds the first place where the verdict turns, not just any', () => {
    const twice = (value: number) => (value <= 40 || value >= 60 ? 'within' : 'outside');
    expect(search(twice, { from: 0, to: 100 })).toMatchObject({ answer: 'value', value: kilograms(40) });
    // The other way round it begins above the gap.
    expect(search(twice, { from: 100, to: 0 })).toMatchObject({ answer: 'value', value: kilograms(60) });
  });

  it('tries the very ends, whole steps or not', () => {
    const found = search(upTo(100.5), { from: 0.2, to: 100.7 });
    expect(found).toMatchObject({ answer: 'value', value: kilograms(100) });
    expect(found.range).toEqual({ from: kilograms(0.2), to: kilograms(100.7) });
    const tried = found.working.map(({ at }) => at);
    expect(tried).toContain(0.2);
    expect(tried).toContain(100.7);
    // Whole steps between them, which are none below a begin that is not whole.
    expect(search(upTo(2), { from: 0.2, to: 2 }).working.map(({ at }) => at)).toEqual([0.2, 1, 2]);
  });

  it('begins where it is within, if that is not at the favourable end', () => {
    const band = (value: number) => (value >= 30 && value <= 60 ? 'within' : 'outside');
    const found = search(band, { from: 0, to: 100 });
    expect(found).toMatchObject({ answer: 'value', value: kilograms(60) });
    expect(found.range.from.value).toBeGreaterThanOrEqual(30);
    expect(found.range.to).toEqual(kilograms(100));
  });
});

describe('today', () => {
  const band = (value: number) => (value >= 35 && value <= 60 ? 'within' : 'outside');

  it('is where the search begins if it is within', () => {
    const found = search(band, { from: 0, to: 100, today: 36 });
    expect(found.range.from).toEqual(kilograms(36));
    expect(found.value).toEqual(kilograms(60));
    expect(found.working[0]).toEqual({ at: 36, verdict: 'within' });
  });

  it('is not where the search begins if it is not, or lies beyond the adverse end', () => {
    expect(search(band, { from: 50, to: 100, today: 20.5 }).range.from).toEqual(kilograms(50));
    const beyond = solve(questionOf(() => 'within', { from: 0, to: 100, today: 120 }));
    expect(beyond).toMatchObject({
      answer: 'withinThroughoutRange',
      range: { from: kilograms(0), to: kilograms(100) },
    });
    expect(beyond.working.every(({ at }) => at <= 100)).toBe(true);
  });

  it('may be the adverse end itself', () => {
    const found = search(() => 'within', { from: 0, to: 100, today: 100 });
    expect(found).toMatchObject({ answer: 'withinThroughoutRange', range: { from: kilograms(100) } });
  });

  it('need not be a whole step: the answer is the one that needs less, where that is within', () => {
    expect(search(upTo(35.8), { from: 0, to: 100, today: 35.5 }).value).toEqual(kilograms(35));
    // Where it is not, today's own value is the last that is within.
    const narrow = (value: number) => (value >= 35.2 && value <= 35.8 ? 'within' : 'outside');
    expect(search(narrow, { from: 0, to: 100, today: 35.5 }).value).toEqual(kilograms(35.5));
  });
});

describe('without a value', () => {
  it('is within throughout with nothing that turns', () => {
    for (const ends of [
      { from: 0, to: 100 },
      { from: 100, to: 0 },
    ]) {
      const found = search(() => 'within', ends);
      expect(found).toMatchObject({ answer: 'withinThroughoutRange', limitedBy: [] });
      expect(found).not.toHaveProperty('value');
      expect(found.sentence.parameters).not.toHaveProperty('value');
      expect(found.sentence.text).toBe(`Figure: within limits throughout the range, ${ends.from} kg to ${ends.to} kg.`);
    }
  });

  it('is outside throughout only if it is everywhere, and says what is not within at the favourable end', () => {
    for (const ends of [
      { from: 0, to: 100 },
      { from: 100, to: 0 },
      { from: 0, to: -100 },
    ]) {
      const found = search(() => 'outside', ends);
      expect(found).toMatchObject({ answer: 'outsideThroughoutRange' });
      expect(found.limitedBy[0]).toMatchObject({ id: 'crosswind', verdict: 'outside' });
      expect(found.sentence.text).toMatch(
        new RegExp(
          `^Figure: outside limits throughout the range, ${ends.from} kg to ${ends.to} kg: the crosswind, `.replace(
            '-',
            '\u2212',
          ),
        ),
      );
    }
    const partly = search((value) => (value > 50 ? 'undetermined' : 'outside'), { from: 0, to: 100 });
    expect(partly.answer).toBe('undetermined');
    expect(partly.sentence.text).toContain('not within limits anywhere in the range, 0 kg to 100 kg');
  });

  it('rounds what was searched towards the search, and never to more than it', () => {
    expect(search(() => 'within', { from: 0.4, to: 99.6 }).sentence.text).toContain('1 kg to 99 kg');
    expect(search(() => 'within', { from: 99.6, to: 0.4 }).sentence.text).toContain('99 kg to 1 kg');
  });
});

it('what cannot be read is undetermined, and the fault is what is said of it', () => {
  const found = search((value) => (value <= 40 ? 'within' : 'unreadable'), { from: 0, to: 100, changes: 'request' });
  expect(found).toMatchObject({ answer: 'value', value: kilograms(40), limitedBy: [] });
  expect(found.working.some(({ verdict }) => verdict === 'undetermined')).toBe(true);
  expect(found.sentence.text).toMatch(/^Figure: within limits up to 40 kg; beyond that mass\.value\b/);
});

it('is the same search for any figure that is named', () => {
  const { input, ...question }: Question = questionOf(upTo(7), { from: 0, to: 10 });
  const feet: StudyInput = { ...input, quantity: 'height of pines', unit: 'ftHeight' };
  expect(solve({ ...question, input: feet })).toMatchObject({
    quantity: 'height of pines',
    value: { value: 7, unit: 'ftHeight' },
    sentence: { text: expect.stringMatching(/^Height of pines: within limits up to 7 ft/) },
  });
});
