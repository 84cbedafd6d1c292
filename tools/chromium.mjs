import { spawnSync } from 'node:child_process';

/** A browser that looks at our pages alone and asks nobody for anything. */
export const chromiumFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** The browser found on the path. @returns {string | undefined} */
export function chromiumPath() {
  for (const name of ['chromium', 'chromium-browser', 'google-chrome']) {
    const { stdout } = spawnSync('which', [name], { encoding: 'utf8' });
    if (stdout.trim() !== '') return stdout.trim();
  }
  return undefined;
}
