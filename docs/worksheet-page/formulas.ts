import type { MathmlByTex, WorksheetFormula } from 'groundroll/worksheet';

/** One formula of the register with what a reader needs to follow it; in a file of its own beside the page. */
export interface FormulaOnPage {
  readonly formula: WorksheetFormula;
  readonly mathml: MathmlByTex;
}

declare global {
  interface Window {
    /** Called by each of those files: a script works from a folder too, where nothing can be fetched. */
    worksheetPageFormula?: (found: FormulaOnPage) => void;
  }
}

const folder = new URL('formulas/', (document.currentScript as HTMLScriptElement).src);
const arrived = new Map<string, FormulaOnPage>();
const asked = new Map<string, Promise<FormulaOnPage>>();

window.worksheetPageFormula = (found) => {
  arrived.set(found.formula.id, found);
};

/** A formula, loaded when it is first asked for. */
export function formulaOf(id: string): Promise<FormulaOnPage> {
  const known = asked.get(id);
  if (known !== undefined) return known;
  const loading = new Promise<FormulaOnPage>((resolve, reject) => {
    const script = document.createElement('script');
    script.src = new URL(`${id}.js`, folder).href;
    script.onload = () => {
      const found = arrived.get(id);
      if (found === undefined) reject(new Error(`${id} is not in its file`));
      else resolve(found);
    };
    script.onerror = () => {
      asked.delete(id);
      reject(new Error(`the formula ${id} could not be loaded`));
    };
    document.head.append(script);
  });
  asked.set(id, loading);
  return loading;
}
