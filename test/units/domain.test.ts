import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError, demand, demandEach, demandWord, ft, inconsistent } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';
import { detailOf } from '../refusal.ts';

const bound = { unit: 'kt', min: 0, max: 200, source: 'library range' } as const;

describe('demand', () => {
  it('accepts everything from bound to bound, both included', () => {
    fc.assert(fc.property(evenly(0, 200), (value) => demand('speed', value, bound)));
    demand('speed', 0, bound);
    demand('speed', 200, bound);
  });

  it.each([
    [-Number.MIN_VALUE, 'out-of-range'],
    [200.00000000000003, 'out-of-range'],
    [Number.NaN, 'not-finite'],
    [Number.POSITIVE_INFINITY, 'not-finite'],
    [Number.NEGATIVE_INFINITY, 'not-finite'],
    ['100', 'not-a-number'],
    [undefined, 'not-a-number'],
    [null, 'not-a-number'],
    [{}, 'not-a-number'],
  ])('refuses %o', (value, code) => {
    const detail = detailOf(() => demand('speed', value as number, bound));
    expect(detail).toMatchObject({ code, parameter: 'speed', unit: 'kt', min: 0, max: 200, source: 'library range' });
  });

  it('names parameter, value, bounds, unit and source in one line', () => {
    expect(() => demand('speed', 201, bound)).toThrow('speed: 201 kt is not within 0 to 200 kt (library range)');
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, undefined, null, 'x', -1])(
    'gives a detail that JSON keeps whole for %o',
    (value) => {
      const detail = detailOf(() => demand('speed', value as number, bound));
      expect(JSON.parse(JSON.stringify(detail))).toEqual(detail);
      expect(Object.values(detail)).not.toContain(null);
    },
  );
});

describe('demandWord', () => {
  const words = ['left', 'right'];

  it('accepts the words of the list and nothing else', () => {
    for (const word of words) demandWord('circuit', word, words, 'side');
    fc.assert(
      fc.property(fc.string(), (word) => {
        fc.pre(!words.includes(word));
        expect(detailOf(() => demandWord('circuit', word, words, 'side')).code).toBe('unknown-word');
      }),
    );
  });

  it('names parameter, word and the words to choose from, in a line and as data', () => {
    const call = () => demandWord('circuit', 'up', words, 'the side of the turns');
    expect(call).toThrow(/^circuit: "up" is none of "left", "right" \(the side of the turns\)$/);
    expect(detailOf(call)).toEqual({
      code: 'unknown-word',
      parameter: 'circuit',
      received: 'up',
      unit: 'text',
      min: 'left',
      max: 'right',
      words,
      source: 'the side of the turns',
    });
    expect(detailOf(() => demandWord('circuit', undefined, words, 'side')).received).toBe('undefined');
  });
});

describe('the message', () => {
  const detail = { code: 'out-of-range', parameter: 'to', received: 5, unit: 'ftPA', source: 'printed axis' } as const;

  it.each([
    [{ min: 6, max: 9 }, 'to: 5 ftPA is not within 6 to 9 ftPA (printed axis)'],
    [{ min: 6, max: 9, code: 'inconsistent' }, 'to: 5 ftPA is inconsistent with 6 to 9 ftPA (printed axis)'],
  ] as const)('reads well for %o', (bounds, message) => {
    expect(new DomainError({ ...detail, ...bounds }).message).toBe(message);
  });

  it.each([
    [Number.NaN, 'ft: NaN is not a finite number (every quantity is one)'],
    [undefined, 'ft: undefined is not a finite number (every quantity is one)'],
    ['600', 'ft: 600 is not a finite number (every quantity is one)'],
  ])('reads well for the quantity made of %o', (value, message) => {
    expect(() => ft(value as never)).toThrow(message);
  });
});

describe('demandEach', () => {
  it('accepts a list within the bound, and an empty one', () => {
    demandEach('factors', [0, 100, 200], bound);
    demandEach('factors', [], bound);
  });

  it('names the place of the first that is not', () => {
    expect(() => demandEach('factors', [1, 2, -3, Number.NaN], bound)).toThrow(/^factors\[2\]: -3 kt/);
    expect(detailOf(() => demandEach('factors', [Number.NaN], bound)).code).toBe('not-finite');
  });

  it('refuses a hole in the list and anything but a list', () => {
    expect(detailOf(() => demandEach('factors', new Array<number>(2), bound))).toMatchObject({
      code: 'not-a-number',
      parameter: 'factors[0]',
    });
    expect(detailOf(() => demandEach('factors', 5 as never, bound))).toMatchObject({
      code: 'not-a-number',
      parameter: 'factors',
    });
  });
});

describe('a value that another one contradicts', () => {
  it('is refused with what the other leaves', () => {
    const detail = { parameter: 'gust', received: 5, unit: 'kt', min: 9, max: 200, source: 'no gust below the mean' };
    expect(inconsistent('gust', 5, 'kt', 9, 200, 'no gust below the mean').detail).toEqual({
      code: 'inconsistent',
      ...detail,
    });
  });
});
