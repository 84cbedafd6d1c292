import fs from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type PerformanceData, readPerformanceData, verifyExamples } from '../../src/aircraft/index.ts';

const json = () =>
  JSON.parse(fs.readFileSync(new URL('../../examples/performance-data/corran-four.json', import.meta.url), 'utf8'));

function read(document: unknown): { data: PerformanceData; codes: string[] } {
  const result = readPerformanceData(document);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return { data: result.value, codes: result.findings.map(({ code }) => code) };
}

describe('verifyExamples', () => {
  it('gives the printed cell back, and the wind by the manual: (375 + 465) / 2 less 10 %', () => {
    const rows = verifyExamples(read(json()).data);
    expect(rows.map(({ quantity, printed, ours, agrees }) => [quantity, printed, ours, agrees])).toEqual([
      ['ground roll', 240, 240, true],
      ['distance', 485, 485, true],
      ['distance', 378, 378, true],
    ]);
  });

  it('finds a cell that was mistyped, and reading the data says so', () => {
    const document = json();
    document.takeoff[0].distance.cells[1][1][2] = 458;
    const { data, codes } = read(document);
    expect(verifyExamples(data).filter(({ agrees }) => !agrees)).toMatchObject([{ printed: 485, ours: 458 }]);
    expect(codes).toContain('example');
  });

  it('has no figure, rather than a guess, beyond the last printed wind', () => {
    const document = json();
    document.examples[1].at.headwind.value = 16;
    expect(verifyExamples(read(document).data).at(-1)).toMatchObject({ ours: undefined, agrees: false });
  });
});

describe('a value out of line with its neighbours', () => {
  it('is found, with the path of the cell', () => {
    const document = json();
    document.takeoff[0].distance.cells[1][1][2] = 585;
    const result = readPerformanceData(document);
    const found = result.ok ? result.findings.filter(({ code }) => code === 'neighbours') : [];
    expect(found.map(({ path }) => path)).toContain('takeoff[0].distance.cells[1][1][2]');
  });

  it('is not found where all is well', () => expect(read(json()).codes).toEqual([]));
});
