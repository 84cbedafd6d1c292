import { textHtml, workingStepHtml } from 'groundroll/worksheet';
import { formulaOf } from './formulas.ts';
import type { Assessment } from './work-out.ts';

/** Fills an opened place with the steps behind a figure: formula, sources, check values, and the way to the register. */
export async function openSteps(
  place: HTMLElement,
  assessment: Assessment,
  steps: readonly number[],
  key: string,
): Promise<void> {
  const found = steps.flatMap((i) => {
    const entry = assessment.trace[i];
    return entry?.kind === 'step' ? [{ i, step: entry }] : [];
  });
  place.textContent = 'Loading the formulas.';
  try {
    const parts = await Promise.all(
      found.map(async ({ i, step }) => {
        const { formula, mathml } = await formulaOf(step.record);
        const id = `${key}-step-${i}`;
        return `${workingStepHtml(step, formula, { id, mathml })}<p class="register"><a href="../register/formulas/${textHtml(formula.id)}.html">${textHtml(formula.title)} in the formula register</a></p>`;
      }),
    );
    place.innerHTML = parts.join('');
  } catch (error) {
    place.textContent = `${(error as Error).message}.`;
  }
}
