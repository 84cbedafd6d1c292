import axe from 'axe-core';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunwayDistanceTable, runwayDistanceTable } from '../../src/study/index.ts';
import { runwayDistanceTableHtml } from '../../src/worksheet/index.ts';
import { sentenceHtml } from '../../src/worksheet/markup.ts';
import { type Changes, landingRequest, takeoffRequest } from '../assessment/scenario.ts';
import { browser, isBrowserMissing } from '../browser.ts';

const kg = (value: number, loading?: string) => ({
  mass: { value, unit: 'kg' as const },
  ...(loading === undefined ? {} : { loading }),
});
const masses = [kg(850), kg(940, 'two up, full tanks'), kg(1000), kg(1050)];
const temperatures = [0, 10, 26, 40].map((value) => ({ value, unit: 'degC' as const }));

function table(name: string, changes: Changes = {}): RunwayDistanceTable {
  const request = name.startsWith('takeoff') ? takeoffRequest(name, changes) : landingRequest(name, changes);
  const result = runwayDistanceTable(request, { masses, temperatures });
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

const cases = [
  ['take-off on 28', table('takeoff-28')],
  ['take-off on 10, over the pines', table('takeoff-10')],
  ['landing on 10', table('landing-10')],
  ['take-off without a table', table('takeoff-28', { configuration: 'flap-0' })],
] as const;

interface Cell {
  readonly classes: readonly string[];
  readonly words: string;
}
const cellsOf = (html: string): Cell[][] =>
  (/<tbody>([\s\S]*?)<\/tbody>/.exec(html)?.[1] ?? '').split('</tr>').flatMap((row) => {
    const cells = [...row.matchAll(/<td(?: class="([^"]*)")?><span class="figures">(.*?)<\/span><\/td>/g)];
    if (cells.length === 0) return [];
    return [
      cells.map(([, classes = '', content = '']) => ({
        classes: classes.split(' ').filter((each) => each !== ''),
        words: content
          .replace(/<[^>]+>/g, ' ')
          .replace(/\s+/g, ' ')
          .trim(),
      })),
    ];
  });

describe.each(cases)('the page of the runway distance table for a %s', (_name, data) => {
  const html = runwayDistanceTableHtml(data);
  const cells = cellsOf(html);

  it('says first what it is valid for, then how to read it, and under the grid the warmest temperatures', () => {
    const order = [
      sentenceHtml(data.title.text),
      sentenceHtml(data.validOnlyIf.text),
      '<table',
      sentenceHtml(data.reading.text),
      ...data.rows.map(({ warmest }) => sentenceHtml(warmest.sentence.text)),
      ...data.limitsOfUse.map(sentenceHtml),
    ].map((words) => html.indexOf(words));
    expect(order.every((at) => at >= 0)).toBe(true);
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  it('has in every cell the distance and the metres, or says that it is not within limits', () => {
    expect(cells.map((row) => row.length)).toEqual(data.rows.map((row) => row.cells.length));
    data.rows.forEach((row, i) => {
      row.cells.forEach(({ verdict, required, spare }, j) => {
        const { words = '', classes = [] } = cells[i]?.[j] ?? {};
        if (required !== undefined) expect(words.replace(/\s/g, '')).toContain(String(required.value));
        if (verdict === 'within') expect(words).toMatch(/\d spare$/);
        else if (spare !== undefined && spare.value < 0) expect(words).toMatch(/\d short$/);
        else expect(words).toMatch(/(outside limits|undetermined)$/);
        expect(classes.includes('hatched')).toBe(verdict !== 'within');
      });
    });
  });

  it('draws the step line between what is within and the rest, and nowhere else', () => {
    const within = data.rows.map((row) => row.cells.map(({ verdict }) => verdict === 'within'));
    within.forEach((row, i) => {
      row.forEach((each, j) => {
        const { classes = [] } = cells[i]?.[j] ?? {};
        const [right, below] = [row[j + 1], within[i + 1]?.[j]];
        expect(classes.includes('step-right')).toBe(right !== undefined && right !== each);
        expect(classes.includes('step-below')).toBe(below !== undefined && below !== each);
      });
    });
  });

  it('says of every cell that is not short of metres why it is not within', () => {
    for (const { words, cells: row } of data.rows) {
      for (const { verdict, spare, sentence, temperature } of row) {
        if (verdict === 'within' || (spare !== undefined && spare.value < 0)) continue;
        const line = new RegExp(`<li>${words.replace(/\s/g, '.')}: [^<]*`).exec(
          html.slice(html.indexOf('id="beside"')),
        );
        expect(line?.[0].replaceAll('\u00a0', ' ')).toContain(`at ${temperature.value} °C `);
        const what = sentenceHtml(String(sentence.parameters['what'])).replaceAll('\u00a0', ' ');
        expect(line?.[0].replaceAll('\u00a0', ' ')).toContain(what);
      }
    }
  });

  it('stands alone, and holds nothing that is no figure or no word', () => {
    expect(html).not.toMatch(/<script|<link|<img|@import|url\(|\bsrc=|href=/);
    expect(html.replaceAll('undetermined', '')).not.toMatch(/undefined|NaN|Infinity|\[object|\bnull\b/);
  });
});

describe('the page of a runway distance table', () => {
  it('is folded on A6 and not on A4', () => {
    const data = cases[0][1];
    expect(runwayDistanceTableHtml(data)).toContain('@page{size:105mm 148mm');
    expect(runwayDistanceTableHtml(data)).toContain('dotted');
    expect(runwayDistanceTableHtml(data, { paper: 'A4' })).toContain('@page{size:210mm 297mm');
    expect(runwayDistanceTableHtml(data, { paper: 'A4' })).not.toContain('dotted');
  });

  it('has loading words in the heads of rows and the speeds at their ends', () => {
    const html = runwayDistanceTableHtml(cases[0][1]);
    expect(html).toContain('<th scope="row">940 kg<span class="detail">two up, full tanks</span></th>');
    expect(html).toContain('<span class="speed">lift-off 48</span> <span class="speed">at 50 ft 57</span>');
  });

  it('cannot be broken out of by a name', () => {
    const name = `</th><script>alert("x")</script>`;
    const result = runwayDistanceTable(
      takeoffRequest('takeoff-10', {
        'runway.aerodrome': name,
        'performanceData.identity.name': name,
        'runway.obstacles.0.name': name,
      }),
      { masses: [kg(940, name)], temperatures },
    );
    if (!result.ok) throw new Error(JSON.stringify(result.faults));
    const html = runwayDistanceTableHtml(result.value);
    expect(html).not.toContain('<script');
    expect(html.match(/&lt;script&gt;/g)?.length).toBeGreaterThan(4);
  });
});

describe.skipIf(isBrowserMissing)('the page of a runway distance table in a browser', () => {
  let chromium: Browser | undefined;
  beforeAll(async () => {
    if (!isBrowserMissing) chromium = await browser();
  });
  afterAll(() => chromium?.close());

  it.each(['light', 'dark'] as const)('has no fault that axe knows, %s', async (colorScheme) => {
    const page = await (chromium as Browser).newPage({ colorScheme });
    const complaints: string[] = [];
    page.on('console', (message) => complaints.push(message.text()));
    await page.setContent(runwayDistanceTableHtml(cases[1][1]));
    await page.evaluate(axe.source);
    const { violations } = (await page.evaluate('axe.run()')) as { violations: { id: string }[] };
    expect(violations.map(({ id }) => id)).toEqual([]);
    expect(complaints).toEqual([]);
    await page.close();
  });

  it('fits a screen of 320 px, where only the grid scrolls', async () => {
    const page = await (chromium as Browser).newPage({ viewport: { width: 320, height: 640 } });
    await page.setContent(runwayDistanceTableHtml(cases[1][1]));
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(320);
    await page.close();
  });

  it('prints on one sheet of A6 where the reasons leave room, with the grid above the fold', async () => {
    const page = await (chromium as Browser).newPage();
    await page.setContent(runwayDistanceTableHtml(cases[0][1]));
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(1);
    expect(pdf).toMatch(/MediaBox\s*\[0 0 29[78](\.\d+)? 4(19|20)(\.\d+)?\]/);
    await page.setViewportSize({ width: Math.round((91 / 25.4) * 96), height: 600 });
    await page.emulateMedia({ media: 'print' });
    const above = (await page.locator('.above').boundingBox())?.height ?? 0;
    // The grid stays in the upper half of the sheet: the block is no taller than the half without the margin.
    expect((above / 96) * 25.4).toBeCloseTo(69, 0);
    await page.close();
  });
});
