import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { isBrowserMissing } from '../browser.ts';
import { axeFaults, openPage, openSite, type Site } from './site.ts';

/** One page of each kind. */
const kinds: readonly (readonly [kind: string, address: string, content: string])[] = [
  ['home', 'index.html', '.tsd-panel'],
  ['guide', 'guides/the-job.html', '.tsd-panel'],
  ['guide with tables', 'guides/factor-sets.html', '.tsd-panel'],
  ['figures of the speed', 'measured/speed-figures.html', '.tsd-panel'],
  ['overview of the register', 'register/index.html', '.tsd-panel'],
  ['topic of the register', 'register/flight-path.html', '.tsd-panel'],
  ['formula', 'register/formulas/wind.components.html', '.tsd-panel'],
  ['formula with many figures', 'register/formulas/airspeed.true-airspeed.html', '.tsd-panel'],
  ['sources', 'register/sources.html', '.tsd-panel'],
  ['source', 'register/sources/faa-phak.html', '.tsd-panel'],
  ['access status', 'register/access.html', '.tsd-panel'],
  ['printed register', 'media/printed-register.html', 'main'],
  ['function', 'functions/wind.windComponents.html', '.tsd-comment'],
  ['decision', 'decisions/0007-choices-in-the-kernels.html', '.tsd-panel'],
];

/** The bars of the theme, and all but the first formulas and rows of the printed register: all are made alike. */
const notOurs = [
  '.tsd-page-toolbar, .col-sidebar, footer',
  '.printed section:nth-of-type(n + 6), .printed tbody:nth-of-type(n + 12)',
].join();

let site: Site;

beforeAll(async () => {
  if (!isBrowserMissing) site = await openSite();
});
afterAll(() => site?.close());

describe.skipIf(isBrowserMissing).each(kinds)('the page of the kind: %s', (_, address, content) => {
  it('works without an error or another host, and axe finds nothing in its content, light and dark', async () => {
    const { page, troubles } = await openPage(site, address);
    expect(await axeFaults(page, content, notOurs)).toEqual([]);
    expect(await page.locator(content).first().isVisible()).toBe(true);
    expect(troubles).toEqual([]);
    await page.close();
  });

  it('is no wider than a telephone: what is wide scrolls in a box of its own', async () => {
    const { page } = await openPage(site, address);
    await page.setViewportSize({ width: 360, height: 740 });
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(360);
    await page.close();
  });
});

describe.skipIf(isBrowserMissing)('the site', () => {
  it('has the guides, the register, the functions and the decisions in its sidebar, the job first', async () => {
    const { page } = await openPage(site, 'index.html');
    const groups = page.locator('#tsd-nav-container > li');
    await groups.nth(3).waitFor();
    const titles = (await groups.allTextContents()).map((text) => text.trim());
    for (const [i, title] of ['Guides', 'Formula register', 'API', 'Decisions'].entries()) {
      expect(titles[i]).toMatch(new RegExp(`^${title}`));
    }
    expect(titles[0]).toMatch(/^Guides\s*The job/);
    await page.close();
  });

  it('finds guides, formulas and functions by their words', async () => {
    const { page } = await openPage(site, 'index.html');
    const search = async (words: string, address: string) => {
      await page.locator('#tsd-search-trigger').click();
      await page.locator('#tsd-search-input').fill(words);
      await page.locator(`#tsd-search-results a[href$="${address}"]`).waitFor({ timeout: 20_000 });
      await page.keyboard.press('Escape');
    };
    await search('crosswind component', '/register/formulas/wind.components.html');
    await search('windComponents', '/functions/wind.windComponents.html');
    await search('soft field', '/guides/soft-field.html');
    // The name of a thing leads to its formula before the types of its arguments.
    await search('density altitude', '/register/formulas/atmosphere.density-altitude.html');
    await page.locator('#tsd-search-trigger').click();
    await page.locator('#tsd-search-input').fill('density altitude');
    const first = page.locator('#tsd-search-results a').first();
    await expect.poll(() => first.getAttribute('href')).toMatch(/formulas\/atmosphere\.density-altitude\.html$/);
    await page.close();
  });

  it('leads from a function to its formula, from there to its source and back', async () => {
    const { page, troubles } = await openPage(site, 'functions/wind.windComponents.html');
    await page.locator('.tsd-tag-record p a').click();
    await page.locator('h1', { hasText: 'Headwind and crosswind component' }).waitFor();
    expect(await page.locator('.equation math').count()).toBe(1);
    await page.locator('.table a', { hasText: 'Handbook of Aeronautical Knowledge' }).first().click();
    await page.locator('.table a', { hasText: 'Headwind and crosswind component' }).first().click();
    await page.locator('.facts a', { hasText: 'windComponents' }).click();
    await page.locator('h1', { hasText: 'windComponents' }).waitFor();
    expect(troubles).toEqual([]);
    await page.close();
  });

  it('works from a folder without a server: sidebar and search have their data', async () => {
    const page = await site.context.newPage();
    await page.goto(pathToFileURL(resolve('site/register/formulas/wind.components.html')).href);
    await page.locator('#tsd-nav-container a', { hasText: 'Headwind and crosswind component' }).waitFor();
    await page.locator('#tsd-search-trigger').click();
    await page.locator('#tsd-search-input').fill('density altitude');
    await page.locator('#tsd-search-results a').first().click();
    await page.locator('h1').first().waitFor();
    expect(page.url()).toMatch(/^file:.*density/i);
    await page.close();
  });

  it('prints a page without its bars, with what is folded away', async () => {
    const { page } = await openPage(site, 'register/formulas/airspeed.true-airspeed.html');
    const row = page.locator('details tbody tr').last();
    expect(await row.isVisible()).toBe(false);
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.tsd-page-toolbar').isVisible()).toBe(false);
    expect(await page.locator('.site-menu').isVisible()).toBe(false);
    expect(await row.isVisible()).toBe(true);
    await page.close();
  });
});
