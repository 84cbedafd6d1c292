import { describe, expect, it } from 'vitest';
import { checkValues, formulaMathml, formulaRecords } from '../../src/register/index.ts';
import { workingStepHtml, worksheet, worksheetFormula, worksheetHtml } from '../../src/worksheet/index.ts';
import { textHtml } from '../../src/worksheet/markup.ts';
import { landing, takeoff } from '../assessment/scenario.ts';

const recordOf = (id: string) => {
  const record = formulaRecords.find((each) => each.id === id);
  if (record === undefined) throw new Error(`no record ${id}`);
  return record;
};

describe.each([
  ['take-off', takeoff('takeoff-28')],
  ['landing', landing('landing-28')],
])('the steps of a %s on a page of somebody else', (_, assessment) => {
  const sheet = worksheet(assessment, formulaRecords, checkValues);
  const steps = assessment.trace.flatMap((step, i) => (step.kind === 'step' ? [{ step, i }] : []));

  it('have the formulas that a worksheet has', () => {
    for (const formula of sheet.formulas) {
      expect(worksheetFormula(recordOf(formula.id), checkValues)).toEqual(formula);
      expect(worksheetFormula(recordOf(formula.id)).checkValues).toBeUndefined();
    }
  });

  it('are those of the worksheet page, with equation, sources and check values', () => {
    const page = worksheetHtml(sheet, { mathml: formulaMathml });
    const shown = new Set<string>();
    for (const { step, i } of steps) {
      const formula = worksheetFormula(recordOf(step.record), checkValues);
      const html = workingStepHtml(step, formula, { id: `step-${i}`, mathml: formulaMathml });
      const begin = html.indexOf('<details');
      // A worksheet prints the check values of a formula once, wherever that is.
      const [way, checks] = begin < 0 ? [html, ''] : [html.slice(0, begin), html.slice(begin, -'\n</div>'.length)];
      expect(page).toContain(way);
      expect(page).toContain(checks.replace(`step-${i}-checks`, `checks-${formula.id}`));
      shown.add(formula.id);
      for (const { locator, access } of formula.citations) {
        expect(html).toContain(`${textHtml(locator)} <span class="access">(${access})`);
      }
    }
    expect(shown.size).toBeGreaterThan(5);
  });

  it('have the ids they are given, so that one step may stand on a page twice', () => {
    const [{ step } = { step: undefined }] = steps;
    if (step === undefined) throw new Error('no step');
    const formula = worksheetFormula(recordOf(step.record), checkValues);
    const html = ['a', 'b"'].map((id) => workingStepHtml(step, formula, { id })).join('');
    const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(ids).toContain('a');
    expect(ids).toContain('b&quot;');
    expect(new Set(ids).size).toBe(ids.length);
    expect(html).toContain(`<code>${textHtml(formula.equation)}</code>`);
  });
});
