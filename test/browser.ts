import { spawnSync } from 'node:child_process';
import { type Browser, chromium } from 'playwright-core';

const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** The browser found on the path. */
function executablePath(): string | undefined {
  for (const name of ['chromium', 'chromium-browser', 'google-chrome']) {
    const { stdout } = spawnSync('which', [name], { encoding: 'utf8' });
    if (stdout.trim() !== '') return stdout.trim();
  }
  return undefined;
}

/**
 * Whether there is none, so that pages cannot be looked at. With GROUNDROLL_BROWSER=required, as in CI, the tests run
 * all the same and fail; without, they are counted as not run.
 */
export const isBrowserMissing = executablePath() === undefined && process.env['GROUNDROLL_BROWSER'] !== 'required';

/** A browser with an empty profile of its own. */
export async function browser(): Promise<Browser> {
  const found = executablePath();
  if (found === undefined) throw new Error('no chromium on the path: install it to test the pages');
  return chromium.launch({ executablePath: found, args: flags, headless: true });
}
