import fs from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { node, root } from './packed.ts';

type Figures = Readonly<Record<string, number>>;
type Budgets = Readonly<Record<string, { readonly bytes: number; readonly reason?: string }>>;

/** Stated by hand; a budget is raised by a decision, and lowered when what it covers has become smaller. */
const budgets = JSON.parse(fs.readFileSync(path.join(root, 'test/package/folder-budgets.json'), 'utf8')) as {
  readonly whole: Budgets;
  readonly folders: Readonly<Record<string, Budgets>>;
};

/** From here on a budget needs a reason. */
const large = 9000;

let measured: { readonly whole: Figures; readonly folders: Readonly<Record<string, Figures>> };
beforeAll(() => {
  measured = JSON.parse(node(root, 'tools/folder-sizes.mjs'));
});

function broken(figures: Figures, stated: Budgets): string[] {
  const missing = Object.keys(figures).filter((name) => stated[name] === undefined);
  const idle = Object.keys(stated).filter((name) => figures[name] === undefined);
  const sizes = Object.entries(stated).flatMap(([name, { bytes }]) => {
    const is = figures[name] ?? 0;
    if (is > bytes) return [`${name}: ${is} bytes, over the budget of ${bytes}`];
    return bytes > is * 1.25 + 100 ? [`${name}: ${is} bytes, so the budget of ${bytes} can be lowered`] : [];
  });
  return [...missing.map((name) => `${name}: no budget`), ...idle.map((name) => `${name}: nothing there`), ...sizes];
}

describe('the byte budgets', () => {
  it('hold for each entry imported whole', () => {
    expect(broken(measured.whole, budgets.whole)).toEqual([]);
  });

  it('hold for each folder in the main imports', () => {
    expect(Object.keys(measured.folders)).toEqual(Object.keys(budgets.folders));
    for (const [name, figures] of Object.entries(measured.folders)) {
      expect([name, broken(figures, budgets.folders[name] ?? {})]).toEqual([name, []]);
    }
  });

  it('have a reason where they are large', () => {
    const all = [budgets.whole, ...Object.values(budgets.folders)].flatMap((each) => Object.entries(each));
    expect(all.filter(([, { bytes, reason }]) => bytes > large && !reason).map(([name]) => name)).toEqual([]);
  });

  it('would show an entry that is dearer, cheaper, new or gone', () => {
    const stated = { wind: { bytes: 1000 } };
    expect(broken({ wind: 1001 }, stated)).toEqual(['wind: 1001 bytes, over the budget of 1000']);
    expect(broken({ wind: 700 }, stated)).toEqual(['wind: 700 bytes, so the budget of 1000 can be lowered']);
    expect(broken({ wind: 990, rain: 1 }, stated)).toEqual(['rain: no budget']);
    expect(broken({}, stated)).toContain('wind: nothing there');
  });
});
