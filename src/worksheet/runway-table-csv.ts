import { verdictInWords } from '../assessment/index.ts';
import type { RunwayDistanceRow, RunwayDistanceTable } from '../study/index.ts';

/**
 * A runway distance table as comma-separated values after RFC 4180, one line for each cell. Every line carries what it is
 * valid for and the limits of use, so that no line is read without them.
 *
 * @param table - what `runwayDistanceTable` returned.
 * @returns lines that end in CRLF, the column names first; an empty field is a figure that there is not.
 */
export function runwayDistanceTableCsv(table: RunwayDistanceTable): string {
  const distance = table.phase === 'takeoff' ? 'takeoff_distance' : 'landing_distance';
  const [first] = table.rows;
  const row = table.rowsAlong === 'headwind' ? 'headwind_kt' : `mass_${first?.at.unit ?? 'kg'}`;
  const head = [
    row,
    'loading',
    'temperature_degC',
    `${distance}_required_m`,
    `${distance}_available_m`,
    `${distance}_to_spare_m`,
    'verdict',
    'reason',
    'speeds_kias',
    'warmest_temperature_within_degC',
    'valid_only_if',
    'limits_of_use',
  ];
  const valid = table.validOnlyIf.text;
  const limits = table.limitsOfUse.join(' ');
  const lines = table.rows.flatMap((each) => cellsOf(each).map((fields) => [...fields, valid, limits]));
  return [head, ...lines].map((fields) => `${fields.map(field).join(',')}\r\n`).join('');
}

function cellsOf({ at, loading, cells, speeds, warmest }: RunwayDistanceRow): (string | number | undefined)[][] {
  const flown = speeds.map(({ name, speed }) => `${name} ${speed.value}`).join('; ');
  return cells.map(({ temperature, required, available, spare, verdict, sentence }) => [
    at.value,
    loading,
    temperature.value,
    required?.value,
    available?.value,
    spare?.value,
    verdictInWords(verdict),
    verdict === 'within' ? undefined : sentence.text,
    flown,
    warmest.value?.value,
  ]);
}

/**
 * Quoted where a comma, a quote or a line end would end the field; spaces and signs are plain ones. Words that a spreadsheet
 * would take for a formula begin with an apostrophe.
 */
function field(value: string | number | undefined): string {
  if (value === undefined) return '';
  const words = String(value).replaceAll('\u00a0', ' ').replaceAll('\u2212', '-');
  const plain = typeof value === 'string' && /^[=+\-@\t\r]/.test(words) ? `'${words}` : words;
  return /[",\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
}
