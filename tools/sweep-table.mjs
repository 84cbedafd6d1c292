// The table of the guide to many runways, made of docs/measurements/sweep.json.
export const file = 'docs/measurements/sweep.json';
export const guide = 'docs/guides/many-runways.md';

const begin = '<!-- Of docs/measurements/sweep.json, by npm run sweep -- --write -->';
const end = '<!-- End of what is measured -->';

const count = (n) => Math.round(n).toLocaleString('en').replaceAll(',', '\u00a0');
/** Three digits say as much as one run knows. */
const seconds = (s) => `${Number(s.toPrecision(3))}\u00a0s`;
const rate = (n, s) => count(Number((n / s).toPrecision(3)));

const formulaNames = {
  wind: 'Wind components',
  air: 'Density altitude',
  variation: 'Variation, every row another place',
};

/** What was measured, in Markdown. */
export function tableOf({ cpu, cores, node, commit, date, takeoffs, formulas }) {
  const [{ evaluations, runways, within, outside, undetermined, refused }] = takeoffs;
  const rows = [
    ...takeoffs.map((each) => [`Take-offs ${each.name}`, each.evaluations, each]),
    ...formulas.map((each) => [formulaNames[each.name], each.rows, each]),
  ].map(
    ([name, n, each]) =>
      `| ${name} | ${count(n)} | ${seconds(each.seconds)} | ${seconds(each.processorSeconds)} | ${rate(n, each.seconds)} |`,
  );
  return [
    `Measured on ${date} with Node ${node} on ${cpu} (${cores} cores), at commit ${commit}:`,
    '',
    '| what | rows | by the clock | time of processors | rows a second |',
    '|---|---|---|---|---|',
    ...rows,
    '',
    `The ${count(evaluations)} take-offs are those of ${count(runways)} runway ends: ${count(within)} within limits, ${count(outside)} outside, ${count(undetermined)} undetermined, of these ${count(refused)} refused for want of a temperature.`,
  ].join('\n');
}

/** The guide with its table renewed. */
export function withTable(text, measured) {
  const [before, rest] = text.split(begin);
  const after = rest?.split(end)[1];
  if (after === undefined) throw new Error(`${guide}: no place for the table`);
  return `${before}${begin}\n\n${tableOf(measured)}\n\n${end}${after}`;
}
