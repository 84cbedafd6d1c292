import fs from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { checkValues, formulaRecords } from '../../src/register/index.ts';
import { bibliography } from '../../src/sources/index.ts';
// @ts-expect-error: a tool without types
import { minified } from '../../tools/minified.mjs';
import { consumer, node, root } from './packed.ts';

/** Bytes (minified, gzip) of each public function imported alone, as committed; `npm run sizes` renews it. */
const recorded = JSON.parse(fs.readFileSync(path.join(root, 'test/package/bundle-sizes.json'), 'utf8')) as Record<
  string,
  number
>;

/** Compressors differ by a few bytes from version to version. */
const allowed = (bytes: number) => bytes * 1.03 + 16;

let project: ReturnType<typeof consumer>;
let measured: Record<string, number>;
beforeAll(() => {
  project = consumer({ 'package.json': '{}' });
  measured = JSON.parse(node(root, 'tools/sizes.mjs'));
});
afterAll(() => project.remove());

async function bundle(contents: string): Promise<{ text: string; files: string[] }> {
  const { text, files } = await minified(contents, project.folder);
  return { text, files: files.map(({ file }: { file: string }) => file) };
}

/** Text that only records, check values and the bibliography hold, as it stands inside a string literal. */
const registerText = [
  // The head is enough to know an equation by, and it may end in a part that several share.
  ...formulaRecords.flatMap(({ equation }) => equation.slice(0, 40)),
  ...checkValues.flatMap(({ id, note }) => (note === undefined ? [id] : [id, note])),
  ...Object.values(bibliography).map(({ title }) => title),
].filter((text) => text.length >= 10);

function registerTextIn(text: string): string[] {
  const plain = text.replaceAll('\\\\', '\\');
  return registerText.filter((words) => plain.includes(words));
}

describe('what an import costs an app', () => {
  it('is at most 600 bytes for windComponents', () => {
    expect(measured['groundroll/wind windComponents']).toBeGreaterThan(100);
    expect(measured['groundroll/wind windComponents']).toBeLessThanOrEqual(600);
  });

  it('is recorded for every public function, and for no other', () => {
    expect(Object.keys(measured)).toEqual(Object.keys(recorded));
  });

  it('is within the recorded bytes', () => {
    const dearer = Object.entries(measured).filter(([name, bytes]) => bytes > allowed(recorded[name] ?? 0));
    expect(dearer.map(([name, bytes]) => `${name}: ${bytes} instead of ${recorded[name]}`)).toEqual([]);
  });

  it('holds nothing of a dependency for windComponents', async () => {
    const { files } = await bundle(`export { windComponents } from 'groundroll/wind';`);
    expect(files.filter((file) => /geomagnetism|valibot/.test(file))).toEqual([]);
  });

  it('holds nothing of the magnetic model for the assessments: variation is an input', async () => {
    const names = Object.keys(recorded).flatMap(
      (label) => /^groundroll ((?:assess|prepare)\w+)$/.exec(label)?.[1] ?? [],
    );
    expect(names).toContain('assessTakeoff');
    const { files } = await bundle(`export { ${names.join(', ')} } from 'groundroll';`);
    expect(files.filter((file) => file.includes('geomagnetism'))).toEqual([]);
  });

  it('holds no record, check value or bibliography text, except for the register', async () => {
    const register = await bundle(
      `export * from 'groundroll/register';\nexport { bibliography } from 'groundroll/sources';`,
    );
    const shown = new Set(registerTextIn(register.text));
    expect(registerText.filter((words) => !shown.has(words))).toEqual([]);
    const names = Object.keys(recorded).filter((label) => !/^groundroll\/(register|worksheet) /.test(label));
    const lines = names.map((label, i) =>
      label.replace(/^(\S+) (\S+)$/, (_, from, name) => `export { ${name} as _${i} } from '${from}';`),
    );
    const { text } = await bundle(lines.join('\n'));
    expect(registerTextIn(text)).toEqual([]);
  });
});
