import { describe, expect, it } from 'vitest';
import { type RunwayDistanceTable, runwayDistanceTable } from '../../src/study/index.ts';
import { runwayDistanceTableCsv, runwayDistanceTableMarkdown } from '../../src/worksheet/index.ts';
import { landingRequest, takeoffRequest } from '../assessment/scenario.ts';
import { namedThroughout } from './hostile.ts';

function tableOf(result: ReturnType<typeof runwayDistanceTable>): RunwayDistanceTable {
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

const degC = (...values: number[]) => values.map((value) => ({ value, unit: 'degC' as const }));
const table = tableOf(
  runwayDistanceTable(takeoffRequest('takeoff-28'), {
    masses: [
      { mass: { value: 940, unit: 'kg' }, loading: 'two up, "full" | tanks' },
      { mass: { value: 1050, unit: 'kg' } },
    ],
    temperatures: degC(26, 45),
  }),
);
const winds = tableOf(
  runwayDistanceTable(landingRequest('landing-10'), {
    headwinds: [
      { value: 10, unit: 'kt' },
      { value: -4, unit: 'kt' },
    ],
    temperatures: degC(20),
  }),
);

/** A reader of comma-separated values after RFC 4180. */
function parsed(text: string): string[][] {
  const rows: string[][] = [[]];
  const fields = /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n|$)/y;
  while (fields.lastIndex < text.length) {
    const [, quoted, plain, end] = fields.exec(text) as RegExpExecArray;
    rows.at(-1)?.push(quoted === undefined ? (plain as string) : quoted.replaceAll('""', '"'));
    if (end === '\r\n') rows.push([]);
  }
  return rows.slice(0, -1);
}

describe('as Markdown', () => {
  const lines = runwayDistanceTableMarkdown(table).split('\n');

  it('says first what it is valid for, then the grid', () => {
    expect(lines[0]).toBe('# Take-off on 28 at Vesikorpi, Corran Four');
    expect(lines[2]).toMatch(/^Valid only if the aeroplane is Corran Four /);
    expect(lines[4]).toBe('| mass | 26 °C | 45 °C | speeds |');
    expect(lines[6]).toBe(
      '| 940 kg (two up, "full" \\| tanks) | 771 m, 59 m to spare | undetermined | lift-off 48 KIAS, at 50 ft 57 KIAS |',
    );
    expect(lines[7]).toMatch(
      /^\| 1\u00a0050 kg \| \d+ m|\| 1\u00a0050 kg \| 1\u00a0\d+ m, outside limits \| undetermined/,
    );
  });

  it('heads a column with the temperature that was put in', () => {
    const axes = { masses: [{ mass: { value: 899.6, unit: 'kg' } }], temperatures: degC(20.6) } as const;
    const text = runwayDistanceTableMarkdown(tableOf(runwayDistanceTable(takeoffRequest('takeoff-28'), axes)));
    expect(text).toContain('| mass | 20.6 °C | speeds |');
    expect(text).toContain('| 899.6 kg | ');
  });

  it('cannot be broken out of by a name', () => {
    const name = '<script>alert(1)</script> *x* [z](y)';
    const request = takeoffRequest('takeoff-10', namedThroughout(name));
    const axes = { masses: [{ mass: { value: 940, unit: 'kg' }, loading: name }], temperatures: degC(26) } as const;
    const text = runwayDistanceTableMarkdown(tableOf(runwayDistanceTable(request, axes)));
    expect(text).not.toMatch(/<script|[^\\]\*x|[^\\]\]\(y/);
    expect(text.split('&lt;script>alert(1)&lt;/script> \\*x\\* [z\\](y)').length).toBeGreaterThan(5);
    expect(text).toContain('| --- | ---: | --- |');
  });

  it('has the same number of cells in every line of the grid', () => {
    const grid = lines.filter((line) => line.startsWith('|'));
    expect(new Set(grid.map((line) => line.replaceAll('\\|', '').split('|').length))).toEqual(new Set([6]));
  });

  it('ends with the warmest temperatures, what is not within, and the limits of use', () => {
    const text = lines.join('\n');
    expect(text).toContain('## Warmest\n\n- 940 kg: within limits up to 35 °C.');
    expect(text).toContain('- 940 kg at 45 °C: undetermined: the take-off run.');
    expect(text).toContain('use the next warmer');
    expect(text.slice(text.indexOf('## Limits of use'))).toContain('the pilot in command decide');
  });

  it('names winds without a sign', () => {
    const text = runwayDistanceTableMarkdown(winds);
    expect(text).toContain('| wind | 20 °C | speeds |');
    expect(text).toContain('| 10 kt headwind | ');
    expect(text).toContain('| 4 kt tailwind | ');
  });
});

describe('as comma-separated values', () => {
  const rows = parsed(runwayDistanceTableCsv(table));

  it('has names in full words with their unit, and a line for each cell', () => {
    expect(rows[0]).toEqual([
      'mass_kg',
      'loading',
      'temperature_degC',
      'takeoff_distance_required_m',
      'takeoff_distance_available_m',
      'takeoff_distance_to_spare_m',
      'verdict',
      'reason',
      'speeds_kias',
      'warmest_temperature_within_degC',
      'valid_only_if',
      'limits_of_use',
    ]);
    expect(rows).toHaveLength(5);
    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([12]));
  });

  it.each(['=1+1', '+1', '-1', '@sum'])(
    'gives the loading %s as words, which no spreadsheet takes for a formula',
    (loading) => {
      const [first, ...others] = table.rows as readonly [(typeof table.rows)[number], ...typeof table.rows];
      const changed = { ...table, rows: [{ ...first, loading }, ...others] };
      expect(parsed(runwayDistanceTableCsv(changed))[1]?.[1]).toBe(`'${loading}`);
    },
  );

  it('gives figures plainly, and leaves empty what there is not', () => {
    expect(rows[1]?.slice(0, 10)).toEqual([
      '940',
      'two up, "full" | tanks',
      '26',
      '771',
      '830',
      '59',
      'within limits',
      '',
      'lift-off 48; at 50 ft 57',
      '35',
    ]);
    expect(rows[2]?.slice(2, 8)).toEqual(['45', '', '', '', 'undetermined', 'undetermined: the take-off run.']);
    expect(Number(rows[3]?.[5])).toBeLessThan(0);
  });

  it('carries in every line what it is valid for and the limits of use', () => {
    for (const row of rows.slice(1)) {
      expect(row[10]).toMatch(/^Valid only if /);
      expect(row[11]).toContain('the pilot in command decide');
    }
  });

  it('has winds along the runway, a tailwind negative', () => {
    const [head, first, second] = parsed(runwayDistanceTableCsv(winds));
    expect([head?.[0], head?.[3]]).toEqual(['headwind_kt', 'landing_distance_required_m']);
    expect([first?.[0], second?.[0]]).toEqual(['10', '-4']);
  });
});
