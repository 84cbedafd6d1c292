import { describe, expect, it } from 'vitest';
import { checkValues, compareCheckValues, formulaRecords } from '../../src/register/index.ts';

const rows = compareCheckValues(formulaRecords, checkValues);

describe('published check values', () => {
  it.each(rows.map((row) => [row.record, row.checkValue, row.output, row] as const))(
    '%s, %s: %s',
    (_record, _checkValue, _output, row) => {
      // A tie of the printed rounding (1172.5 printed as 1173) must not fail on the last bit of a double.
      expect(row.share, `${row.published} ${row.unit} published, ${row.ours} ours`).toBeLessThanOrEqual(1 + 1e-9);
    },
  );

  it('exist for every record that promises them, and for no other', () => {
    const promised = formulaRecords.filter((record) => record.checkValues === 'published').map((record) => record.id);
    const given = new Set(checkValues.map((checkValue) => checkValue.record));
    expect([...given].sort()).toEqual([...promised].sort());
  });

  it('have ids of their own', () => {
    const ids = checkValues.map((checkValue) => `${checkValue.record} ${checkValue.id}`);
    expect(new Set(ids).size).toBe(ids.length);
  });
});
