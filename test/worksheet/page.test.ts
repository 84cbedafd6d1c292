import axe from 'axe-core';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { checkValues, formulaMathml, formulaRecords } from '../../src/register/index.ts';
import { worksheet, worksheetHtml } from '../../src/worksheet/index.ts';
import { landing, takeoff } from '../assessment/scenario.ts';
import { browser, isBrowserMissing } from '../browser.ts';

const cases = [
  ['take-off on 28', takeoff('takeoff-28')],
  ['take-off on 10', takeoff('takeoff-10')],
  ['landing on 28', landing('landing-28')],
  ['take-off from the quarry', takeoff('quarry-takeoff-04')],
  ['take-off without a table', takeoff('takeoff-28', { configuration: 'flap-0' })],
] as const;

const html = (i: number, options: Parameters<typeof worksheetHtml>[1] = {}) =>
  worksheetHtml(worksheet((cases[i] as (typeof cases)[number])[1], formulaRecords, checkValues), {
    mathml: formulaMathml,
    ...options,
  });

let chromium: Browser | undefined;
beforeAll(async () => {
  if (!isBrowserMissing) chromium = await browser();
});
afterAll(() => chromium?.close());

/** Shows a page, does something with it, and listens to what the browser complains of and asks for meanwhile. */
async function shown<T>(content: string, options: BrowserContextOptions, look: (page: Page) => Promise<T>) {
  const context = await (chromium as Browser).newContext(options);
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  const requests: string[] = [];
  page.on('request', (request) => requests.push(request.url()));
  try {
    await page.setContent(content);
    return { result: await look(page), complaints, requests };
  } finally {
    await context.close();
  }
}

interface AxeResult {
  readonly violations: readonly { readonly id: string; readonly nodes: readonly { readonly html: string }[] }[];
  readonly passes: readonly { readonly id: string }[];
}

/** The page's own policy lets no script in, so this one comes from outside of the page. */
async function axeFaults(page: Page): Promise<{ faults: string[]; passes: string[] }> {
  await page.evaluate(axe.source);
  const { violations, passes } = (await page.evaluate('axe.run()')) as AxeResult;
  return {
    faults: violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' | ')}`),
    passes: passes.map(({ id }) => id),
  };
}

const open = (page: Page) => page.evaluate('for (const each of document.querySelectorAll("details")) each.open = true');
const overflow = (page: Page) => page.evaluate('document.documentElement.scrollWidth - window.innerWidth');
const pagesOf = (pdf: Buffer) => pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;

describe.skipIf(isBrowserMissing).each([
  ['take-off on 10', 1, 'light'],
  ['take-off on 10', 1, 'dark'],
  ['landing on 28', 2, 'dark'],
  ['take-off without a table', 4, 'light'],
] as const)('the page of a %s', (_name, i, colorScheme) => {
  it(`has no fault that axe knows, closed and open, ${colorScheme}`, async () => {
    const viewport = { width: 1000, height: 800 };
    const { result, complaints, requests } = await shown(html(i), { colorScheme, viewport }, async (page) => {
      const closed = await axeFaults(page);
      await open(page);
      const opened = await axeFaults(page);
      return { closed, opened, paper: await page.evaluate('getComputedStyle(document.body).backgroundColor') };
    });
    expect(result.closed.faults).toEqual([]);
    expect(result.opened.faults).toEqual([]);
    expect(result.opened.passes).toEqual(expect.arrayContaining(['color-contrast', 'svg-img-alt', 'html-has-lang']));
    expect(result.paper).toBe(colorScheme === 'dark' ? 'rgb(22, 24, 27)' : 'rgb(252, 251, 248)');
    expect(complaints).toEqual([]);
    expect(requests.filter((url) => !url.startsWith('about:') && !url.startsWith('data:'))).toEqual([]);
  });
});

describe.skipIf(isBrowserMissing).each(cases.map(([name], i) => [name, i] as const))(
  'the page of a %s in a browser',
  (_name, i) => {
    it('fits a screen of 320 px without scrolling sideways, closed and open', async () => {
      const { result } = await shown(html(i), { viewport: { width: 320, height: 640 } }, async (page) => {
        const closed = await overflow(page);
        await open(page);
        return [closed, await overflow(page)];
      });
      expect(result).toEqual([0, 0]);
    });

    it('prints on two or three sheets of A4, on at most eight of A6, and with its working on more', async () => {
      const print = (paper: 'A4' | 'A6', working: 'closed' | 'open' = 'closed') =>
        shown(html(i, { paper, working }), {}, (page) => page.pdf({ preferCSSPageSize: true }));
      const [a4, a6, whole] = [await print('A4'), await print('A6'), await print('A4', 'open')];
      const pages = [a4, a6, whole].map(({ result }) => pagesOf(result));
      expect(pages[0]).toBeGreaterThanOrEqual(2);
      expect(pages[0]).toBeLessThanOrEqual(3);
      expect(pages[1]).toBeGreaterThanOrEqual(3);
      expect(pages[1]).toBeLessThanOrEqual(8);
      expect(pages[2]).toBeGreaterThan(pages[0] ?? 99);
      expect(a4.result.toString('latin1')).toMatch(/MediaBox\s*\[0 0 59[45]\.\d+ 84[12]\.\d+\]/);
      expect(a6.result.toString('latin1')).toMatch(/MediaBox\s*\[0 0 29[78](\.\d+)? 4(19|20)(\.\d+)?\]/);
    });
  },
);

describe.skipIf(isBrowserMissing)('the page of a worksheet in a browser', () => {
  it('opens with the keyboard, and a link leads to a step that was closed', async () => {
    const { result } = await shown(html(0), { viewport: { width: 1000, height: 800 } }, async (page) => {
      const first = page.locator('summary').first();
      await first.focus();
      await page.keyboard.press('Enter');
      const opened = await first.evaluate((each) => each.parentElement?.hasAttribute('open'));
      await page.keyboard.press('Enter');
      const link = page.locator('a[href="#step-0"]').first();
      await link.evaluate((each) => {
        for (let up = each.parentElement; up !== null; up = up.parentElement) up.setAttribute('open', '');
      });
      await link.click();
      const target = page.locator('#step-0');
      return { opened, visible: await target.isVisible(), label: await target.locator('span').first().textContent() };
    });
    expect(result).toEqual({ opened: true, visible: true, label: 'pressure altitude' });
  });

  it('gives its figures to those who do not see them, and its formulas as mathematics', async () => {
    const { result } = await shown(html(1), {}, async (page) => ({
      figures: await page.$$eval('svg[role=img]', (all) =>
        all.map((each) => [each.querySelector('title')?.textContent, each.querySelector('desc')?.textContent]),
      ),
      tree: await page.locator('figure').first().ariaSnapshot(),
      maths: await page.$$eval('math', (all) =>
        all.map((each) => each.namespaceURI === 'http://www.w3.org/1998/Math/MathML'),
      ),
    }));
    expect(result.figures).toHaveLength(3);
    const [stairs, gradients, wind] = result.figures.map(([, description]) => description ?? '');
    for (const words of ['443.0 m', '439.8 m', '527.8 m', '577.2 m', '721.5 m', '722 m', '830 m', '108 m to spare']) {
      expect(stairs).toContain(words);
    }
    for (const words of ['22.5 %', '10.8 %', '11.7 percentage points short']) expect(gradients).toContain(words);
    for (const words of ['7 kt', '17 kt from the right', '19 kt demonstrated', '8 kt limitation']) {
      expect(wind).toContain(words);
    }
    expect(result.tree).toContain('img "The distance as stairs, in metres: Take-off on 10"');
    expect(result.maths.length).toBeGreaterThan(50);
    expect(result.maths.every(Boolean)).toBe(true);
  });

  it('prints in black on white whatever the screen, and without what only works on it', async () => {
    const { result } = await shown(html(1), { colorScheme: 'dark' }, async (page) => {
      await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
      const colours = await page.evaluate(
        '[...new Set([...document.querySelectorAll("body, body *")].map((each) => getComputedStyle(each).color))]',
      );
      return { colours, hidden: await page.locator('.on-screen').first().isHidden() };
    });
    expect(result).toEqual({ colours: ['rgb(0, 0, 0)'], hidden: true });
  });

  it('shows the sentences of a hostile document as text', async () => {
    const name = `<img src=x onerror="document.title='broken'"><b>bold</b></details>`;
    const assessment = takeoff('takeoff-10', { 'runway.aerodrome': name, 'runway.obstacles.0.name': name });
    const content = worksheetHtml(worksheet(assessment, formulaRecords, checkValues), { mathml: formulaMathml });
    const { result, complaints } = await shown(content, {}, async (page) => ({
      elements: await page.$$eval('img, b', (all) => all.length),
      text: await page.locator('body').textContent(),
      title: await page.title(),
    }));
    expect(result.elements).toBe(0);
    expect(result.text).toContain(name);
    expect(result.title).toContain('Take-off on 10');
    expect(complaints).toEqual([]);
  });
});
