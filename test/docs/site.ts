import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import axe from 'axe-core';
import type { BrowserContext, Page } from 'playwright-core';
import { browser } from '../browser.ts';

const kinds: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css',
  '.js': 'text/javascript',
  '.svg': 'image/svg+xml',
  '.json': 'application/json',
};

/** Hands out the files of the built site and nothing else. */
async function serveSite(): Promise<{ origin: string; stop: () => Promise<void> }> {
  const server = createServer((request, response) => {
    const file = join('site', decodeURI(new URL(request.url ?? '/', 'http://site').pathname));
    if (!existsSync(file) || !statSync(file).isFile()) {
      // Browsers ask for it unbidden.
      response.writeHead(file.endsWith('favicon.ico') ? 204 : 404).end();
      return;
    }
    response.writeHead(200, { 'content-type': kinds[extname(file)] ?? 'text/plain' }).end(readFileSync(file));
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  const stop = () =>
    new Promise<void>((done) => {
      server.close(() => done());
      server.closeAllConnections();
    });
  return { origin, stop };
}

/** The built site behind a file server, and a browser with an empty profile. */
export interface Site {
  readonly context: BrowserContext;
  readonly origin: string;
  readonly close: () => Promise<void>;
}

export async function openSite(): Promise<Site> {
  if (!existsSync('site/index.html')) throw new Error('no site to test: npm run docs');
  const { origin, stop } = await serveSite();
  const opened = await browser();
  const context = await opened.newContext();
  const close = async () => {
    await opened.close();
    await stop();
  };
  return { context, origin, close };
}

/** Opens a page of the site; what goes wrong while it is open is noted, and so is any request to elsewhere. */
export async function openPage(site: Site, address: string): Promise<{ page: Page; troubles: string[] }> {
  const page = await site.context.newPage();
  const troubles: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') troubles.push(message.text());
  });
  page.on('pageerror', (error) => troubles.push(error.message));
  page.on('requestfailed', (request) => troubles.push(`not loaded: ${request.url()}`));
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(site.origin) && !url.startsWith('data:')) troubles.push(`asks for ${url}`);
  });
  await page.goto(`${site.origin}/${address}`);
  // The theme shows a page only when its scripts have run.
  await page.locator('body').waitFor({ state: 'visible' });
  return { page, troubles };
}

interface AxeResult {
  readonly id: string;
  readonly nodes: readonly { readonly target: readonly unknown[]; readonly html: string }[];
}

/**
 * What axe objects to in a part of a page: rule and element of each fault, in the light page, and in the dark one
 * where its colours fail. Only what is ours is looked at: `others` leave the page first, which is also much faster.
 */
export async function axeFaults(page: Page, part: string, others: string): Promise<string[]> {
  await page.evaluate(`document.querySelectorAll(${JSON.stringify(others)}).forEach((element) => element.remove())`);
  await page.evaluate(axe.source);
  const faults = async (options: object) => {
    const context = { include: [part] };
    const run = `axe.run(${JSON.stringify(context)}, ${JSON.stringify({ ...options, preload: false })})`;
    const violations = await page.evaluate<readonly AxeResult[]>(`${run}.then((result) => result.violations)`);
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target, html }) => `${id}: ${target.join(' ')}: ${html.slice(0, 120)}`),
    );
  };
  await page.emulateMedia({ colorScheme: 'light' });
  const light = await faults({ resultTypes: ['violations'] });
  await page.emulateMedia({ colorScheme: 'dark' });
  return [...light, ...(await faults({ runOnly: ['color-contrast'] }))];
}
