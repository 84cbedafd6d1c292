import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { node, root } from './packed.ts';

interface PublicWords {
  readonly criteria: readonly string[];
  readonly marks: readonly string[];
  readonly sentences: readonly string[];
  readonly sentencesOfStudies: readonly string[];
  readonly refusals: readonly string[];
  readonly formulas: readonly string[];
  readonly factors: Readonly<Record<string, readonly string[]>>;
  readonly columns: readonly string[];
  readonly schemas: {
    readonly keys: Readonly<Record<string, readonly string[]>>;
    readonly words: Readonly<Record<string, readonly string[]>>;
  };
}

/** Renewed by `npm run api`; a word that goes or changes breaks those who tell results and documents apart by it. */
const recorded: PublicWords = JSON.parse(fs.readFileSync(path.join(root, 'test/package/public-words.json'), 'utf8'));

describe('the public words', () => {
  it('are those recorded', () => {
    expect(JSON.parse(node(root, 'tools/public-words.mjs'))).toEqual(recorded);
  });

  it('are of one form in each place', () => {
    const { criteria, marks, sentences, sentencesOfStudies, refusals, factors, formulas, columns, schemas } = recorded;
    const ids = [...criteria, ...marks, ...sentences, ...sentencesOfStudies, ...refusals];
    const inSets = Object.entries(factors).flatMap(([id, each]) => [id, ...each]);
    expect([...ids, ...inSets].filter((word) => !/^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(word))).toEqual([]);
    expect(formulas.filter((word) => !/^[a-z-]+\.[a-z0-9]+(?:-[a-z0-9]+)*$/.test(word))).toEqual([]);
    expect(columns.filter((word) => !/^[a-z]+(?:_[a-z]+)*(?:_(?:degC|[a-z]+))?$/.test(word))).toEqual([]);
    expect(schemas.words['schema']?.filter((word) => !/^groundroll\/[a-z-]+\/\d+$/.test(word))).toEqual([]);
  });

  it('hold none that stands for another thing', () => {
    const { schemas, factors, ...lists } = recorded;
    const all = [...Object.values(lists), ...Object.values(factors), ...Object.values(schemas.keys)].flat();
    const wrong =
      /checkpoint|abandon|decision-?point|base-?turn$|screen-?point|air-?distance|caution|profile|\bcard|gust-?factor|take-off|aim-?point(?!ing)|vertical-?margin/i;
    expect(all.length).toBeGreaterThan(700);
    expect(all.filter((word) => wrong.test(word))).toEqual([]);
  });
});
