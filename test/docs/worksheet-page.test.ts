import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addressOf } from '../../docs/worksheet-page/address.ts';
import type { Assessment } from '../../docs/worksheet-page/work-out.ts';
import { assessLanding, assessTakeoff, weatherFromMetar } from '../../src/assessment/index.ts';
import { formatValue } from '../../src/units/index.ts';
import { readMetar } from '../../src/weather-report/index.ts';
import { worksheetSections } from '../../src/worksheet/index.ts';
import { isBrowserMissing } from '../browser.ts';
import { axeFaults, openPage, openSite, type Site } from './site.ts';
import { exampleRequest, type Json, stateOf } from './worksheet-page-state.ts';

const address = 'guides/work-your-own-runway.html';
const notOurs = '.tsd-page-toolbar, .col-sidebar, footer';

let site: Site;
let folder: string;
beforeAll(async () => {
  if (isBrowserMissing) return;
  site = await openSite();
  folder = mkdtempSync(join(tmpdir(), 'groundroll-page-'));
});
afterAll(async () => {
  await site?.close();
  if (folder !== undefined) rmSync(folder, { recursive: true, force: true });
});

async function opened(fragment = ''): Promise<{ page: Page; troubles: string[] }> {
  const { page, troubles } = await openPage(site, `${address}${fragment === '' ? '' : `#${fragment}`}`);
  await page.locator('#worksheet [data-end-verdict]').first().waitFor();
  return { page, troubles };
}

/** What the page worked out itself: the file that it saves. */
async function saved(page: Page, place: 0 | 1): Promise<Json> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.locator(`[data-save="${place}"]`).click()]);
  return JSON.parse(readFileSync(await download.path(), 'utf8'));
}

/** Every number in a document by its path. */
function numbers(value: unknown, path = ''): (readonly [string, number])[] {
  if (typeof value === 'number') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) => numbers(part, `${path}.${key}`));
}

function expectSame(page: Json, node: Json): void {
  const [theirs, ours] = [new Map(numbers(page)), new Map(numbers(node))];
  expect([...theirs.keys()]).toEqual([...ours.keys()]);
  expect(theirs.size).toBeGreaterThan(150);
  for (const [path, value] of ours) {
    const difference = Math.abs((theirs.get(path) ?? Number.NaN) - value);
    expect(difference / Math.max(1, Math.abs(value)), path).toBeLessThanOrEqual(1e-12);
  }
  const words = (each: Json) => [each.verdict, each.headline, each.criteria.map(({ verdict }: Json) => verdict)];
  expect(words(page)).toEqual(words(node));
}

function inNode(request: Json, runwayInUse: string): Assessment {
  const assess: Json = request.schema.includes('takeoff') ? assessTakeoff : assessLanding;
  const assessed = assess({ ...request, runwayInUse });
  if (!assessed.ok) throw new Error(JSON.stringify(assessed.faults));
  return JSON.parse(JSON.stringify(assessed.value));
}

const ends = (request: Json): [string, string] => request.runway.ends.map(({ designator }: Json) => designator);

/** The figures at the right edges, as they stand on the page: each end's total below each sentence. */
const totals = (page: Page, place: 0 | 1) =>
  page
    .locator(`#worksheet .tread > :nth-child(${place + 2}) .total`)
    .evaluateAll((all: Json[]) => all.map((each) => String(each.textContent).replace('total ', '')));

describe.skipIf(isBrowserMissing)('the worksheet page', () => {
  it.each([
    'takeoff-28',
    'landing-28',
    'case-summer-trees-landing',
    'case-gusty-crosswind-takeoff',
    'quarry-takeoff-04',
  ])('works out the example %s as Node does, from both ends, to 1e-12', async (name) => {
    const { request, aeroplane } = exampleRequest(name);
    const { page, troubles } = await opened(addressOf(stateOf(request, aeroplane)));
    for (const [place, end] of ends(request).entries()) {
      const { request: asked, ...found } = await saved(page, place as 0 | 1);
      const { request: _, ...expected } = inNode(request, end);
      expectSame(found, expected);
      expect(asked.runwayInUse).toBe(end);
      const plain = (text: string | null | undefined) => text?.replaceAll('\u00a0', ' ');
      const head = await page.locator(`[data-end-verdict="${place}"]`).textContent();
      expect(plain(head)).toBe(plain(expected.headline[0]?.text));
      const ledger = worksheetSections(inNode(request, end)).find(({ id }) => id === 'ledger')?.lines ?? [];
      const column = await totals(page, place as 0 | 1);
      for (const { total } of ledger) expect(column).toContain(total);
      const { stairs } = inNode(request, end);
      const needed =
        stairs && [stairs.required, stairs.available].map(({ value }) => formatValue(value, 'm')).join(' of ');
      expect(column.at(-1)).toBe(needed ?? 'undetermined');
    }
    expect(troubles).toEqual([]);
    await page.close();
  });

  it('works out a pasted METAR as Node does, and says what is wrong with one in its sentence', async () => {
    const { page, troubles } = await opened();
    await page.locator('#field-weather').selectOption('METAR');
    expect(await page.locator('#field-metar').getAttribute('aria-invalid')).toBe('true');
    await page.locator('#field-metar').fill('METAR ZZZZ 141350Z 190O7KT 26/16 Q1006');
    const fault = page.locator('[data-sentence="air"] .faults li');
    expect(await fault.textContent()).toContain('"190O7KT" at character 20 is not a wind group');
    const text = 'METAR ZZZZ 141350Z 24009KT 9999 FEW040 21/12 Q1013';
    await page.locator('#field-metar').fill(text);
    expect(await fault.count()).toBe(0);
    const report = readMetar(text);
    const weather = report.ok ? weatherFromMetar(report.value) : report;
    if (!weather.ok) throw new Error('the report of this test is read');
    const { request } = exampleRequest('takeoff-28');
    const { approachClearance, approachAngle, ...policies } = request.policies;
    expectSame(await saved(page, 1), inNode({ ...request, policies, weather: weather.value }, '28'));
    expect(await page.locator('[data-sentence="wind"]').textContent()).toContain('wind 240° true 9 kt; 21 °C');
    expect(troubles).toEqual([]);
    await page.close();
  });

  it('works out an own file as Node does; the address has everything but the file', async () => {
    const { page, troubles } = await opened();
    await page.locator('#field-aeroplane').selectOption('own');
    expect(await page.locator('[data-sentence="aeroplane"] .faults').textContent()).toMatch(/no file is chosen/);
    expect(new Set(await totals(page, 0))).toEqual(new Set(['undetermined']));
    await page.locator('#own-file').setInputFiles('examples/performance-data/linnet-two.json');
    await page.locator('[data-sentence="aeroplane"]', { hasText: 'linnet-two.json' }).waitFor();
    await page.locator('#field-mass').fill('700');
    const { request, aeroplane } = exampleRequest('case-soft-spring-takeoff');
    const data = request.performanceData;
    const { request: start } = exampleRequest('takeoff-28');
    const { approachClearance, approachAngle, ...policies } = start.policies;
    const mass = { value: 700, unit: 'kg' };
    const expected = { ...start, policies, mass, performanceData: data, configuration: 'takeoff' };
    expect(aeroplane).toBe('linnet-two');
    for (const place of [0, 1] as const) expectSame(await saved(page, place), inNode(expected, ends(start)[place]));
    await expect.poll(() => page.url()).toMatch(/aeroplane=own&takeoffConfiguration=takeoff.*mass=700/);
    await page.reload();
    await page.locator('#worksheet [data-end-verdict]').first().waitFor();
    expect(await page.locator('[data-sentence="aeroplane"] .faults').textContent()).toMatch(/no file is chosen/);
    expect(await page.locator('#field-mass').inputValue()).toBe('700');
    expect(troubles).toEqual([]);
    await page.close();
  });

  it('lists what is wrong with an own file in its sentence', async () => {
    const { page, troubles } = await opened('v=1&aeroplane=own');
    const data = { ...exampleRequest('takeoff-28').request.performanceData, masses: {}, extra: 1 };
    const file = join(folder, 'mine.json');
    writeFileSync(file, JSON.stringify(data));
    await page.locator('#own-file').setInputFiles(file);
    const faults = page.locator('[data-sentence="aeroplane"] .faults li');
    await faults.filter({ hasText: 'extra: is not a key of this document' }).waitFor();
    expect(await faults.count()).toBeGreaterThan(1);
    writeFileSync(file, '{ "schema": ');
    await page.locator('#own-file').setInputFiles([]);
    await page.locator('#own-file').setInputFiles(file);
    await faults.filter({ hasText: 'mine.json is not JSON' }).waitFor();
    expect(await page.locator('#own-file').getAttribute('aria-describedby')).toBe('fault-aeroplane-0');
    expect(troubles).toEqual([]);
    await page.close();
  });

  it('shows the message of the library in the sentence of the figure, changes nothing that is typed, and recovers', async () => {
    const { page, troubles } = await opened();
    const mass = page.locator('#field-mass');
    for (const [typed, message] of [
      ['abc', '"abc" is not a number'],
      ['9', '9 kg is not within 50 to 10000 kg'],
      ['', 'is missing'],
    ] as const) {
      await mass.fill(typed);
      expect(await mass.inputValue()).toBe(typed);
      expect(await mass.getAttribute('aria-invalid')).toBe('true');
      const id = await mass.getAttribute('aria-describedby');
      expect(await page.locator(`[data-sentence="aeroplane"] #${id}`).textContent()).toBe(`Mass: ${message}`);
      expect(new Set([...(await totals(page, 0)), ...(await totals(page, 1))])).toEqual(new Set(['undetermined']));
    }
    await mass.fill('940');
    expect(await mass.getAttribute('aria-invalid')).toBeNull();
    expect(await page.locator('.worksheet .faults li').count()).toBe(0);
    expect(await totals(page, 1)).toContain('770.2 m');
    expect(troubles).toEqual([]);
    await page.close();
  });

  it('has a refusal as the next sentence, with figures above it and none below', async () => {
    const { page } = await opened('v=1&ground=soft');
    const sentence = page.locator('[data-sentence="surface"]');
    expect(await sentence.locator('.refusal').textContent()).toMatch(/no factor|has a factor for soft ground/);
    const column = await totals(page, 1);
    expect(column.slice(0, 2)).toEqual(['443.0 m', '513.5 m']);
    expect(new Set(column.slice(2))).toEqual(new Set(['undetermined']));
    await page.close();
  });

  it('opens a figure in place to formula, sources, check values and the register, and keeps it open while one types', async () => {
    const { page, troubles } = await opened();
    const figure = page.locator('[data-way="wind-0-1"]');
    expect(await figure.getAttribute('aria-expanded')).toBe('false');
    await figure.click();
    const way = page.locator('#way-wind-0-1');
    await way.locator('math').first().waitFor();
    expect(await figure.getAttribute('aria-expanded')).toBe('true');
    expect(await way.locator('.sources li').first().textContent()).toMatch(
      /\((read|second-hand|recalled|derived|policy)\)/,
    );
    await way.locator('details summary').first().click();
    expect(await way.locator('.checks thead').first().textContent()).toMatch(/theirs\s*ours\s*residual/);
    await page.locator('#field-windSpeed').fill('8');
    await page.locator('#way-wind-0-1 .result', { hasText: 'wind used' }).waitFor();
    expect(await page.locator('#way-wind-0-1').textContent()).toContain('8 kt');
    await page.locator('[data-way="wind-0-1"]').click();
    expect(await page.locator('#way-wind-0-1').count()).toBe(0);

    const criterion = page.locator('details[data-way^="criteria"]', { hasText: 'Gradient over pines' });
    await criterion.locator('summary').click();
    await criterion.locator('math').first().waitFor();
    await criterion.locator('.register a').first().click();
    await page.locator('h1').waitFor();
    expect(page.url()).toContain('/register/formulas/');
    expect(troubles).toEqual([]);
    await page.close();
  });

  it.each(['v=1', 'v=1&job=landing&excessHeight=10'])(
    'leads from every figure to formulas that are there, with nothing for axe to object to: %s',
    async (fragment) => {
      const { page, troubles } = await opened(fragment);
      const buttons = page.locator('button[data-way]');
      for (let i = 0; i < (await buttons.count()); i++) await buttons.nth(i).click();
      await page.evaluate('document.querySelectorAll("details[data-way]").forEach((each) => { each.open = true; })');
      await expect.poll(() => page.locator('.way', { hasText: 'Loading the formulas' }).count()).toBe(0);
      expect(await page.locator('#worksheet .way').count()).toBeGreaterThan(20);
      expect(await page.locator('#worksheet .way:not(:has(.step))').count()).toBe(0);
      const twice =
        '(() => { const ids = [...document.querySelectorAll("#worksheet [id]")].map(({ id }) => id); return ids.filter((id, i) => ids.indexOf(id) !== i); })()';
      expect(await page.evaluate(twice)).toEqual([]);
      // All steps and all rows of check values are made alike.
      const alike = '.checks tbody:nth-of-type(n + 3), .lines > li:nth-child(n + 3), .way .step ~ .step';
      expect(await axeFaults(page, '#worksheet', `${notOurs}, ${alike}`)).toEqual([]);
      expect(troubles).toEqual([]);
      await page.close();
    },
  );

  it('keeps its state in the address; back and forward lead through it', async () => {
    const { page, troubles } = await opened();
    await page.locator('#field-mass').fill('900');
    await page.locator('#field-mass').blur();
    await page.locator('#field-job').selectOption('landing');
    await page.locator('#field-surface').selectOption('paved');
    await expect.poll(() => page.url()).toMatch(/#v=1&job=landing&mass=900&surface=paved$/);
    const verdicts = await page.locator('.head').textContent();
    await page.goBack();
    expect(await page.locator('#field-surface').inputValue()).toBe('grass');
    await page.goBack();
    expect(await page.locator('#field-job').inputValue()).toBe('takeoff');
    expect(await page.locator('#field-mass').inputValue()).toBe('900');
    await page.goBack();
    expect(await page.locator('#field-mass').inputValue()).toBe('940');
    expect(page.url()).not.toContain('#');
    for (let i = 0; i < 3; i++) await page.goForward();
    expect(await page.locator('.head').textContent()).toBe(verdicts);
    const again = await opened(new URL(page.url()).hash.slice(1));
    expect(await again.page.locator('.head').textContent()).toBe(verdicts);
    expect(troubles).toEqual([]);
    await again.page.close();
    await page.close();
  });

  it('says what is wrong with an address that it cannot read, and starts from the invented field', async () => {
    const { page, troubles } = await opened('v=1&job=fly&mas=9');
    const said = await page.locator('[data-part="address"]').textContent();
    expect(said).toContain('job is "fly", which is none of takeoff, landing');
    expect(said).toContain('"mas" is not a key of it');
    expect(await page.locator('#field-mass').inputValue()).toBe('940');
    await page.locator('#field-mass').fill('930');
    expect(await page.locator('[data-part="address"]').textContent()).toBe('');
    expect(troubles).toEqual([]);
    await page.close();
  });

  it('adds and removes obstacles', async () => {
    const { page, troubles } = await opened();
    await page.locator('#add-obstacle').click();
    expect(await page.evaluate('document.activeElement.id')).toBe('obstacle-2-name');
    for (const [key, value] of Object.entries({ name: 'barn', beyond: '200', end: '10', height: '9', ground: '380' })) {
      await page.locator(`#obstacle-2-${key}`).fill(value);
    }
    expect((await saved(page, 1)).criteria.map(({ subject }: Json) => subject)).toContain('the gradient over barn');
    await page.locator('#obstacle-2-ground').fill('');
    await page.locator('[data-sentence="obstacles"] .faults li').waitFor();
    await page.locator('[data-remove="0"]').click();
    expect(await page.locator('#obstacle-1-name').inputValue()).toBe('barn');
    await page.locator('[data-remove="0"]').click();
    expect(await page.locator('[data-sentence="obstacles"]').textContent()).toContain('there are none');
    expect(troubles).toEqual([]);
    await page.close();
  });

  it('is worked with the keyboard alone, and tells a screen reader the verdicts', async () => {
    const { page } = await opened();
    const status = page.locator('[role="status"]');
    await status.filter({ hasText: 'Take-off on 28: within limits' }).waitFor({ state: 'attached' });
    await page.locator('#field-job').focus();
    const order =
      '[...document.querySelectorAll("#worksheet input, #worksheet select, #worksheet textarea, #worksheet button:not(:disabled), #worksheet summary, #worksheet a")].filter((each) => each.checkVisibility()).indexOf(document.activeElement)';
    const from = (await page.evaluate(order)) as number;
    for (let i = 1; i <= 40; i++) {
      await page.keyboard.press('Tab');
      expect(await page.evaluate(order)).toBe(from + i);
      const outline = 'getComputedStyle(document.activeElement).outlineStyle';
      expect(await page.evaluate(outline)).toBe('solid');
    }
    await page.locator('#field-mass').focus();
    await page.keyboard.press('Control+A');
    await page.keyboard.type('1000');
    expect(await page.locator('#field-mass').inputValue()).toBe('1000');
    await status.filter({ hasText: 'Take-off on 28: outside limits' }).waitFor({ state: 'attached' });
    await page.locator('[data-way="air-0-0"]').focus();
    await page.keyboard.press('Enter');
    await page.locator('#way-air-0-0 math').first().waitFor();
    expect(await page.evaluate('document.activeElement.dataset.way')).toBe('air-0-0');
    await page.close();
  });

  it('has a name for every field, and nothing for axe to object to, with faults and without, at any width', async () => {
    for (const fragment of ['', 'v=1&mass=abc', 'v=1&weather=METAR&metar=no', 'v=1&aeroplane=own', 'v=1&job=fly']) {
      for (const width of fragment === '' ? [320, 1280] : [320]) {
        const { page } = await opened(fragment);
        await page.setViewportSize({ width, height: 800 });
        await page.evaluate('document.querySelector("#policies").open = true');
        expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(width);
        expect(await axeFaults(page, '.tsd-panel', notOurs)).toEqual([]);
        await page.close();
      }
    }
  });

  it('prints as a completed worksheet: words for fields, no buttons, only what stands open is open', async () => {
    const { page } = await opened();
    await page.locator('[data-way="air-0-0"]').click();
    await page.locator('#way-air-0-0 math').first().waitFor();
    await page.emulateMedia({ media: 'print' });
    const style = (name: string) => `getComputedStyle(document.querySelector('#field-mass')).${name}`;
    expect(await page.evaluate(style('borderBottomWidth'))).toBe('0px');
    expect(await page.evaluate(style('backgroundColor'))).toBe('rgba(0, 0, 0, 0)');
    for (const hidden of ['#add-obstacle', '[data-remove]', '[data-save="0"]', '.hint', '#policies', '.site-menu']) {
      expect(await page.locator(hidden).first().isVisible(), hidden).toBe(false);
    }
    expect(await page.locator('#field-rangeFrom').isVisible()).toBe(false);
    expect(await page.locator('#field-windGust').isVisible()).toBe(true);
    expect(await page.locator('#way-air-0-0 math').first().isVisible()).toBe(true);
    expect(await page.locator('.worksheet', { hasText: 'Limits of use' }).isVisible()).toBe(true);
    const pdf = await page.pdf({ format: 'A4', preferCSSPageSize: true });
    const pages = pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
    expect(pages).toBeGreaterThan(1);
    expect(pages).toBeLessThanOrEqual(7);
    await page.close();
  });

  it('weighs less than 500 kB with the formulas behind every figure of the ledger, and sends nothing', async () => {
    const page = await site.context.newPage();
    const asked: string[] = [];
    let bytes = 0;
    page.on('request', (request) => asked.push(`${request.method()} ${request.url().replace(`${site.origin}/`, '')}`));
    const sizes: Promise<void>[] = [];
    page.on('response', (response) => {
      const size = response.body().then((body) => {
        bytes += body.length;
      });
      sizes.push(size.catch(() => undefined));
    });
    await page.goto(`${site.origin}/${address}`, { waitUntil: 'networkidle' });
    const buttons = page.locator('button[data-way]');
    for (let i = 0; i < (await buttons.count()); i++) await buttons.nth(i).click();
    await expect.poll(() => page.locator('.way', { hasText: 'Loading the formulas' }).count()).toBe(0);
    await page.locator('#field-mass').fill('900');
    await page.waitForTimeout(500);
    await Promise.all(sizes);
    expect(bytes).toBeGreaterThan(250_000);
    expect(bytes).toBeLessThan(500_000);
    for (const request of asked)
      expect(request).toMatch(/^GET (guides\/work-your-own-runway\.html|assets\/|worksheet-page\/|favicon\.ico)/);
    expect(asked.filter((each) => each.includes('search.js'))).toEqual([]);
    const sends = 'fetch(location.href).then(() => "sent", () => "refused")';
    expect(await page.evaluate(sends)).toBe('refused');
    await page.close();
  });

  it('still has the search of the site, which comes when it is opened, and finds what was typed before it came', async () => {
    const { page } = await opened();
    await page.route('**/assets/search.js', async (route) => {
      await page.waitForTimeout(1000);
      await route.continue();
    });
    await page.locator('#tsd-search-trigger').click();
    await page.locator('#tsd-search-input').fill('crosswind component');
    await page
      .locator('#tsd-search-results a[href$="/register/formulas/wind.components.html"]')
      .waitFor({ timeout: 20_000 });
    await page.close();
  });

  it('works from a folder without a server, formulas and all', async () => {
    const page = await site.context.newPage();
    await page.goto(`${pathToFileURL(resolve('site', address)).href}#v=1&job=landing`);
    await page.locator('[data-end-verdict]', { hasText: 'Landing on 28: outside limits' }).waitFor();
    await page.locator('[data-way="wind-0-1"]').click();
    await page.locator('#way-wind-0-1 math').first().waitFor();
    await page.close();
  });

  it('has its place in the menu, and the job leads to it', async () => {
    const { page } = await openPage(site, 'guides/the-job.html');
    await page.locator('#tsd-nav-container a', { hasText: 'Work your own runway' }).waitFor();
    await page.locator('.tsd-panel a', { hasText: 'Work your own runway' }).click();
    await page.locator('#worksheet [data-end-verdict]').first().waitFor();
    expect(await page.locator('h1').first().textContent()).toBe('Work your own runway');
    await page.close();
  });
});
