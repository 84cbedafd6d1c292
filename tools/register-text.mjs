// One formula of the register as text for a terminal.

const measure = (value) =>
  typeof value === 'object' && value !== null && 'value' in value && 'unit' in value
    ? `${value.value} ${value.unit}`
    : JSON.stringify(value);
const list = (entries) => entries.map(([name, value]) => `${name} ${measure(value)}`).join(', ');

/** Title, equation, symbols, sources and every figure beside ours. */
export function formulaText(formula, { sources }) {
  const { id, title, equation, homogeneous, inputs, outputs, citations, checkValues, nonePublished, files } = formula;
  const symbols = [
    ...Object.entries(inputs).map(([name, { symbol, meaning, unit, min, max, bounds }]) => {
      const range = min === undefined ? '' : `, ${min} to ${max} ${unit} (${bounds})`;
      return `  ${name} (${symbol}): ${meaning}${range}`;
    }),
    ...Object.entries(outputs).map(
      ([name, { symbol, meaning, unit }]) => `  -> ${name} (${symbol}): ${meaning}, ${unit}`,
    ),
  ];
  const figures = checkValues.flatMap(({ id: value, inputs: given, origin, citation, figures: compared }) => [
    `  ${value}: ${list(Object.entries(given))}`,
    `    ${sources[citation.source].title}, ${citation.locator}; ${origin}, ${citation.access}`,
    ...compared.map(
      ({ output, published, ours, unit, residual, tolerance, share }) =>
        `    ${output}: theirs ${published} ${unit}, ours ${ours}, residual ${residual}, tolerance ${tolerance}, share ${share.toFixed(3)}`,
    ),
  ]);
  return [
    `${id}  ${title}`,
    `  ${equation}`,
    ...symbols,
    `  holds in ${homogeneous ? 'any consistent units' : 'the units stated only'}; ${files.code}`,
    ...citations.map(({ source, locator, access }) => `  source: ${sources[source].title}, ${locator} (${access})`),
    ...(nonePublished === undefined ? figures : [`  no check values: ${nonePublished}`]),
    '',
  ].join('\n');
}
