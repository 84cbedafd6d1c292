import { verdictInWords } from '../assessment/index.ts';
import type { RunwayDistanceCell, RunwayDistanceRow, RunwayDistanceTable } from '../study/index.ts';
import { asGiven } from '../units/as-given.ts';
import { formatValue } from '../units/index.ts';
import { textMarkdown } from './markup.ts';

/**
 * A runway distance table as Markdown: what it is valid for first, the grid with the metres to spare, the warmest
 * temperature for each row under it, and the limits of use.
 *
 * @param table - what `runwayDistanceTable` returned.
 * @returns a Markdown document.
 */
export function runwayDistanceTableMarkdown(table: RunwayDistanceTable): string {
  const { title, validOnlyIf, temperatures, rows, rowsAlong, reading } = table;
  const head = [rowsAlong === 'mass' ? 'mass' : 'wind', ...temperatures.map(asGiven), 'speeds'];
  const lines = [
    `# ${textMarkdown(title.text.replace(/\.$/, ''))}`,
    '',
    textMarkdown(validOnlyIf.text),
    '',
    line(head),
    `| ${head.map((_, i) => (i === 0 || i === head.length - 1 ? '---' : '---:')).join(' | ')} |`,
    ...rows.map((row) => line([rowHead(row), ...row.cells.map(cellText), speedsText(row)])),
    '',
    `Distance required, then the metres to spare. ${reading.text}`,
    ...list(
      'Warmest',
      rows.map(({ warmest }) => warmest.sentence.text),
    ),
    ...list('Where it is not within limits', reasons(table)),
    ...list(
      'Notes',
      table.notes.map(({ text }) => text),
    ),
    ...list('Not assessed', table.notAssessed),
    ...list('Limits of use', table.limitsOfUse),
  ];
  return `${lines.join('\n')}\n`;
}

/** Cells of a Markdown table may not hold bars either. */
function line(cells: readonly string[]): string {
  return `| ${cells.map((cell) => textMarkdown(cell).replaceAll('|', '\\|')).join(' | ')} |`;
}

function rowHead({ words, loading }: RunwayDistanceRow): string {
  return loading === undefined ? words : `${words} (${loading})`;
}

function cellText({ verdict, required, spare }: RunwayDistanceCell): string {
  const shown = required === undefined ? '' : `${formatValue(required.value, 'm')}, `;
  if (verdict !== 'within' || spare === undefined) return `${shown}${verdictInWords(verdict)}`;
  return `${shown}${formatValue(spare.value, 'm')} to spare`;
}

function speedsText({ speeds }: RunwayDistanceRow): string {
  return speeds.map(({ name, speed }) => `${name} ${formatValue(speed.value, 'kias')}`).join(', ');
}

/** One line for each cell that is not within, in words. */
function reasons({ rows }: RunwayDistanceTable): string[] {
  return rows.flatMap(({ words, cells }) =>
    cells
      .filter(({ verdict }) => verdict !== 'within')
      .map(({ temperature, sentence }) => `${words} at ${asGiven(temperature)}: ${sentence.text}`),
  );
}

function list(title: string, entries: readonly string[]): string[] {
  return entries.length === 0 ? [] : ['', `## ${title}`, '', ...entries.map((entry) => `- ${textMarkdown(entry)}`)];
}
