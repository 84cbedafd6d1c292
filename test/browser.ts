import { type Browser, chromium } from 'playwright-core';
// @ts-expect-error a tool without types
import { chromiumFlags, chromiumPath } from '../tools/chromium.mjs';

/**
 * Whether there is none, so that pages cannot be looked at. With GROUNDROLL_BROWSER=required, as in CI, the tests run
 * all the same and fail; without, they are counted as not run.
 */
export const isBrowserMissing = chromiumPath() === undefined && process.env['GROUNDROLL_BROWSER'] !== 'required';

/** A browser with an empty profile of its own. */
export async function browser(): Promise<Browser> {
  const found: string | undefined = chromiumPath();
  if (found === undefined) throw new Error('no chromium on the path: install it to test the pages');
  return chromium.launch({ executablePath: found, args: chromiumFlags, headless: true });
}
