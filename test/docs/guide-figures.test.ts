import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { gradientsFigure, stairsFigure, windRulersFigure } from '../../src/worksheet/index.ts';
import { landing, takeoff } from '../assessment/scenario.ts';
import { isBrowserMissing } from '../browser.ts';
import { axeFaults, openPage, openSite, type Site } from './site.ts';

const tool: string = '../../tools/guide-figures.mjs';
const { withFigures } = await import(tool);

const guides = [
  ['soft-field', stairsFigure(takeoff('case-soft-spring-takeoff'))],
  ['short-field', gradientsFigure(takeoff('takeoff-10'))],
  ['crosswind-and-gusts', windRulersFigure(landing('case-gusty-crosswind-landing'))],
] as const;

describe('the figures of the guides', () => {
  it.each(guides)('are drawn by the library: %s', (guide, drawing) => {
    const html = readFileSync(`site/guides/${guide}.html`, 'utf8');
    expect(drawing).toMatch(/<title>.+<\/title><desc>.+<\/desc>/);
    expect(html).toContain(`<figure class="drawn">${drawing}<figcaption>`);
    expect(html).not.toContain('data-draw');
  });

  it('stop the build where there is none', async () => {
    const mark = (kind: string, name: string) => `<figure data-draw="${kind}" data-request="${name}"></figure>`;
    await expect(withFigures(mark('gradients', 'landing-10'))).rejects.toThrow('no figure "gradients"');
    await expect(withFigures(mark('dial', 'landing-10'))).rejects.toThrow('no figure "dial"');
    expect(await withFigures('<p>no figure</p>')).toBe('<p>no figure</p>');
  });
});

describe.skipIf(isBrowserMissing)('the figures of the guides, on their pages', () => {
  let site: Site;
  beforeAll(async () => {
    site = await openSite();
  });
  afterAll(() => site?.close());

  it.each(guides)('are in the ink of the page, light and dark, and no wider than a telephone: %s', async (guide) => {
    const { page, troubles } = await openPage(site, `guides/${guide}.html`);
    await page.setViewportSize({ width: 320, height: 700 });
    const ink = 'getComputedStyle(document.querySelector(".drawn svg")).color';
    const colours = [];
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      colours.push(await page.evaluate(ink));
    }
    expect(colours).toEqual(['rgb(29, 33, 38)', 'rgb(230, 231, 228)']);
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(320);
    expect(await axeFaults(page, '.drawn', '.tsd-page-toolbar, .col-sidebar, footer')).toEqual([]);
    expect(troubles).toEqual([]);
    await page.close();
  });
});
