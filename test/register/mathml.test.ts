import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { formulaMathml, formulaRecords } from '../../src/register/index.ts';
// @ts-expect-error a tool without types
import { mathmlFile } from '../../tools/mathml.mjs';

describe('the MathML of the formula records', () => {
  it('is what `npm run mathml` writes today', () => {
    const file = readFileSync(new URL('../../src/register/mathml.json', import.meta.url), 'utf8');
    expect(mathmlFile(formulaRecords) === file, 'run `npm run mathml`').toBe(true);
  });

  it('has every equation and every symbol, and nothing that is not MathML', () => {
    for (const { equation, inputs, outputs } of formulaRecords) {
      const symbols = [...Object.values(inputs), ...Object.values(outputs)].map(({ symbol }) => symbol);
      for (const tex of [equation, ...symbols]) expect(formulaMathml[tex], tex).toMatch(/^<math>.+<\/math>$/);
    }
    for (const mathml of Object.values(formulaMathml)) {
      expect(mathml).not.toMatch(/<annotation|<span|<script|\bon\w+=|href|\bstyle=|katex/);
      const opened = [...mathml.matchAll(/<(\w+)(?:\s[^>]*?)?(?<!\/)>/g)].map(([, name]) => name).sort();
      const closed = [...mathml.matchAll(/<\/(\w+)>/g)].map(([, name]) => name).sort();
      expect(opened).toEqual(closed);
    }
  });
});
