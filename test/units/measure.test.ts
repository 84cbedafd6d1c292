import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ftPA, m, measure, quantityOf } from '../../src/units/index.ts';

describe('measures', () => {
  it('hold the very value and the unit word', () => {
    expect(measure(m(830), 'm')).toEqual({ value: 830, unit: 'm' });
    expect(quantityOf({ value: 1095, unit: 'ftPA' })).toBe(ftPA(1095));
  });

  it('survive the way through a document', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        const document = JSON.stringify(measure(m(value + 0), 'm'));
        expect(quantityOf(JSON.parse(document))).toBe(value + 0);
      }),
    );
  });
});
