import { describe, expect, it } from 'vitest';
import { checkValues, formulaMathml, formulaRecords } from '../../src/register/index.ts';
import {
  worksheet,
  worksheetHtml,
  worksheetMarkdown,
  worksheetSections,
  worksheetText,
} from '../../src/worksheet/index.ts';
import { sentenceHtml, textHtml } from '../../src/worksheet/markup.ts';
import { landing, takeoff } from '../assessment/scenario.ts';
import { cases, soft } from './cases.ts';
import { namedThroughout } from './hostile.ts';

const all = (html: string, pattern: RegExp) => [...html.matchAll(pattern)].map(([, found]) => found ?? '');

describe.each(cases)('the page of a %s', (_name, assessment) => {
  const sheet = worksheet(assessment, formulaRecords, checkValues);
  const html = worksheetHtml(sheet, { mathml: formulaMathml });

  it('says every sentence of the sections, in their order', () => {
    let from = 0;
    for (const { title, lines } of worksheetSections(assessment)) {
      if (title !== 'Verdict') from = html.indexOf(`>${title}</h2>`, from);
      expect(from, title).toBeGreaterThanOrEqual(0);
      for (const { sentence, added, total } of lines) {
        from = html.indexOf(sentenceHtml(sentence), from);
        expect(from, sentence).toBeGreaterThanOrEqual(0);
        for (const figure of [added, total])
          if (figure !== undefined) expect(html).toContain(`</span>${figure}</span>`);
      }
    }
  });

  it('names the factor set once, among the notes on the figures', () => {
    const { title, edition } = assessment.factorSet;
    expect(html.split(textHtml(`Factors of ${title} (${edition}).`))).toHaveLength(2);
  });

  it('holds every step once in full, and leads to it from wherever else it is needed', () => {
    const ids = all(html, / id="([^"]+)"/g);
    expect(new Set(ids).size).toBe(ids.length);
    const steps = assessment.trace.flatMap((entry, i) => (entry.kind === 'step' ? [`step-${i}`] : []));
    expect(ids.filter((id) => id.startsWith('step-')).sort()).toEqual([...steps].sort());
    for (const target of all(html, /href="#([^"]+)"/g)) expect(ids).toContain(target);
  });

  it('holds of every formula the equation, the sources with how each is known, and the check values', () => {
    for (const { equation, citations, checkValues: checks = [], nonePublished, id } of sheet.formulas) {
      expect(html).toContain(formulaMathml[equation]?.replaceAll('<math>', '<math display="block">') ?? 'none');
      for (const { locator, access } of citations) {
        expect(html).toContain(textHtml(locator));
        expect(html).toContain(`(${access})</span>`);
      }
      if (nonePublished !== undefined) continue;
      const part = html.slice(html.indexOf(`id="checks-${id}"`));
      const rows = part.slice(0, part.indexOf('</table>')).match(/<tbody>/g) ?? [];
      expect(rows).toHaveLength(checks.length);
      expect(checks.length).toBeGreaterThan(0);
      expect(checks.every(({ agrees }) => agrees)).toBe(true);
    }
  });

  it('stands alone: nothing is fetched, nothing is run', () => {
    expect(html).not.toMatch(/<script|<link|<img|<iframe|@import|url\(|\bsrc=|\bon[a-z]+="|javascript:/);
    const outside = all(html, /(?:href|xmlns|action)="([^"#][^"]*)"/g).filter(
      (target) => target !== 'http://www.w3.org/2000/svg',
    );
    expect(outside).toEqual([]);
    expect(html).toContain(`content="default-src 'none'; style-src 'unsafe-inline'"`);
  });

  it('has one main heading, and a heading for every section', () => {
    expect(html.match(/<h1>/g)).toHaveLength(1);
    expect(all(html, /<section aria-labelledby="([^"]+)"/g)).toEqual(all(html, /<h2 id="([^"]+)"/g));
    expect(html.startsWith('<!doctype html>\n<html lang="en">')).toBe(true);
    expect(html).toContain('<main>');
  });

  it('holds nothing that is no figure or no word', () => {
    const said = html.replace(/undetermined/g, '').replace(/<style>[\s\S]*<\/style>/, '');
    expect(said).not.toMatch(/undefined\b(?! is)|\bNaN\b|Infinity|\[object|\bnull\b/);
  });
});

describe('the page of a worksheet', () => {
  const sheet = worksheet(takeoff('takeoff-10'), formulaRecords, checkValues);

  it('opens under a tread to its steps, formula and check values', () => {
    const html = worksheetHtml(sheet, { mathml: formulaMathml });
    const tread = html.slice(html.indexOf('with the wind used'), html.indexOf('on this surface'));
    for (const words of ['wind components', 'wind used', 'factor for wind', 'distance with wind']) {
      expect(tread).toContain(`<span>${words}</span>`);
    }
    expect(tread).toContain('0.9927');
    expect(tread).toContain('figures of others to compare with');
  });

  it('prints formulas as TeX without MathML, and ends at the sources without check values', () => {
    const html = worksheetHtml(worksheet(takeoff('takeoff-10'), formulaRecords));
    expect(html).not.toContain('<math');
    expect(html).toContain('<code>k = 1 + \\frac{p\\,W}{100}</code>');
    expect(html).not.toContain('figures of others');
  });

  it('calls no result of a program published, and gives no edition to what has none', () => {
    const html = worksheetHtml(worksheet(takeoff('takeoff-28'), formulaRecords, checkValues));
    expect(
      checkValues.some(
        ({ record, origin }) => record === 'atmosphere.density-altitude' && origin === 'independent-program',
      ),
    ).toBe(true);
    expect(html).not.toMatch(/\d published figure/);
    expect(html).toContain('Plane trigonometry and elementary mechanics; resolution of a vector');
    expect(html).not.toContain(', none;');
  });

  it('is laid out for the paper asked for, and opens on request', () => {
    expect(worksheetHtml(sheet)).toContain('@page{size:210mm 297mm');
    const opened = worksheetHtml(sheet, { paper: 'A6', working: 'open' });
    expect(opened).toContain('@page{size:105mm 148mm');
    expect(opened).toContain('<details open><summary');
    expect(worksheetHtml(sheet)).not.toContain('<details open');
  });

  it('has no figure where there is nothing to draw', () => {
    const figures = (html: string) => html.match(/<figure>/g)?.length;
    expect(figures(worksheetHtml(sheet))).toBe(3);
    expect(figures(worksheetHtml(worksheet(landing('landing-10'), formulaRecords)))).toBe(2);
    const without = takeoff('takeoff-28', { configuration: 'flap-0' });
    expect(figures(worksheetHtml(worksheet(without, formulaRecords)))).toBe(1);
  });

  it('marks what is outside and what is undetermined by more than its place', () => {
    expect(worksheetHtml(sheet).match(/<li class="outside">/g)).toHaveLength(1);
    const open = takeoff('takeoff-28', soft);
    const marked = worksheetHtml(worksheet(open, formulaRecords)).match(/<li class="undetermined">/g);
    expect(marked).toHaveLength(open.criteria.filter(({ verdict }) => verdict === 'undetermined').length);
  });

  it('cannot be broken out of by a name, wherever it comes from', () => {
    const name = `</title></style><script>alert("x")</script><img src=x onerror='alert(1)'>&amp;`;
    const hostile = takeoff('takeoff-10', namedThroughout(name));
    const html = worksheetHtml(worksheet(hostile, formulaRecords, checkValues), { mathml: formulaMathml });
    expect(html).not.toMatch(/<script|<img|&amp;lt;/);
    expect(html.match(/<\/title>/g)?.length).toBe((html.match(/<title>/g) ?? []).length);
    expect(html.match(/<\/style>/g)).toHaveLength(1);
    expect(html.match(/&lt;script&gt;/g)?.length).toBeGreaterThan(8);
  });
});

describe('Markdown', () => {
  it('cannot be broken out of by a name, wherever it comes from', () => {
    const name = '<script>alert(1)</script> *x* | `y` [z](javascript:1)\n# t';
    const hostile = takeoff('takeoff-10', namedThroughout(name));
    const markdown = worksheetMarkdown(worksheet(hostile, formulaRecords));
    const escaped = '&lt;script>alert(1)&lt;/script> \\*x\\* | \\`y\\` [z\\](javascript:1) # t';
    expect(markdown).not.toMatch(/<script|[^\\]\*x|[^\\]`y|[^\\]\]\(java|^# t/m);
    expect(markdown.split(escaped).length).toBeGreaterThan(8);
    // In the ledger a bar would end the cell.
    expect(markdown).toContain(`(${escaped.replace('|', '\\|')}, `);
  });
});

describe('text, Markdown and page', () => {
  it('say what was put in, each figure as it was given', () => {
    const text = worksheetText(takeoff('takeoff-10')).replace(/\s+/g, ' ');
    expect(text).toContain('Runway 10 at Vesikorpi: 830 m of dry grass up to 20 cm on firm ground, uphill 1.9 %, from');
    expect(text).toContain('pines: 28 m tall on ground at 438 ft elevation, 25 m beyond the 28 end.');
    expect(text).toContain('METAR: wind 190° true 7 kt gusting 17 kt; 26 °C, dew point 16 °C, QNH 1 006 hPa.');
    expect(text).toContain('Personal limits: crosswind 18 kt, tailwind 5 kt.');
    expect(text).toContain('vertical clearance 50 ft');
  });

  it('say what was not put in', () => {
    const bare = takeoff('takeoff-28', {
      'runway.obstacles': undefined,
      'runway.ends.0.declaredDistances': undefined,
      'runway.ends.1.declaredDistances': undefined,
      personalLimits: undefined,
      policies: undefined,
      variation: undefined,
    });
    const text = worksheetText(bare).replace(/\s+/g, ' ');
    expect(text).toContain('No declared distances: the length of the runway stands in for them.');
    expect(text).toContain('No list of obstacles.');
    expect(text).toContain('All policies as by default.');
    expect(text).not.toContain('Personal limits');
  });
});
