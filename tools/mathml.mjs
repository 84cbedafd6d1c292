// Writes src/register/mathml.json: every equation and symbol of the formula records as MathML, by its TeX.
// Run it after a change of a record's TeX; a test compares the file with what it would write.
import fs from 'node:fs';
import katex from 'katex';
import { bundled } from './bundled.mjs';

const target = 'src/register/mathml.json';

/**
 * MathML of one expression, without the TeX that the renderer repeats in it; throws where the TeX does not parse. Parts
 * that are set apart by a wide space become elements of their own, so that a narrow page can break between them.
 */
function mathmlOf(tex) {
  return partsOf(tex).map(oneMath).join('');
}

function oneMath(tex) {
  const { content } = /<math[^>]*><semantics>(?<content>[\s\S]*)<annotation/.exec(
    katex.renderToString(tex, { output: 'mathml', throwOnError: true, strict: 'error' }),
  ).groups;
  return `<math>${content}</math>`;
}

/** Splits at `\\quad` and `\\qquad` outside of braces, brackets of `\\left` and environments. */
function partsOf(tex) {
  const parts = [''];
  let depth = 0;
  for (const [token] of tex.matchAll(/\\(?:[a-zA-Z]+|.)|[{}]|[^\\{}]+/g)) {
    if (token === '{' || token === '\\left' || token === '\\begin') depth += 1;
    if (token === '}' || token === '\\right' || token === '\\end') depth -= 1;
    if (depth === 0 && (token === '\\quad' || token === '\\qquad')) parts.push('');
    else parts[parts.length - 1] += token;
  }
  return parts;
}

/** All TeX of the records, sorted so that a change shows as a change of its own lines. */
function texOf(records) {
  const all = records.flatMap(({ equation, inputs, outputs }) => [
    equation,
    ...[...Object.values(inputs), ...Object.values(outputs)].map(({ symbol }) => symbol),
  ]);
  return [...new Set(all)].sort();
}

/** The file's text for these records. */
export function mathmlFile(records) {
  const entries = texOf(records).map((tex) => [tex, mathmlOf(tex)]);
  return `${JSON.stringify(Object.fromEntries(entries), null, 1)}\n`;
}

if (process.argv[1] === import.meta.filename) {
  const { formulaRecords } = await bundled('records', `export * from './register/records.ts';`);
  fs.writeFileSync(target, mathmlFile(formulaRecords));
  console.log(`${target}: ${texOf(formulaRecords).length} expressions`);
}
