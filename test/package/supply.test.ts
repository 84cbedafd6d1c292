import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { node, root } from './packed.ts';

const read = (file: string) => fs.readFileSync(path.join(root, file), 'utf8');
const manifest = JSON.parse(read('package.json'));
const lock = JSON.parse(read('package-lock.json')) as {
  packages: Record<string, { version: string; integrity?: string; license?: string; resolved?: string; dev?: boolean }>;
};
const names = Object.keys(manifest.dependencies).sort();

describe('what the package needs at run time', () => {
  it('is stated exactly, and is all that an installation brings', () => {
    for (const name of names) {
      expect(lock.packages[`node_modules/${name}`]?.version).toBe(manifest.dependencies[name]);
    }
    const atRunTime = Object.entries(lock.packages).filter(([place, { dev }]) => place !== '' && dev !== true);
    const ofTools = atRunTime
      .map(([place]) => place.replace(/^node_modules\//, ''))
      .filter((name) => !names.includes(name));
    // Only what a tool may do without, such as a compiler for another machine, may stand here too.
    const optional = JSON.parse(read('package-lock.json')).packages;
    expect(ofTools.filter((name) => optional[`node_modules/${name}`].devOptional !== true)).toEqual([]);
  });

  it('is copied into none of our files', () => {
    const built = (fs.readdirSync(path.join(root, 'dist'), { recursive: true }) as string[]).filter((file) =>
      /\.(?:c?js|d\.c?ts)$/.test(file),
    );
    expect(built.length).toBeGreaterThan(500);
    expect(built.filter((file) => read(`dist/${file}`).includes('// node_modules/'))).toEqual([]);
  });

  it('has its licences in the notices, word for word', () => {
    const notices = read('dist/third-party-notices.md');
    expect([...notices.matchAll(/^## (\S+) (\S+), (\S+)$/gm)].map(([, name, version]) => [name, version])).toEqual(
      names.map((name) => [name, manifest.dependencies[name]]),
    );
    for (const name of names) {
      const folder = path.join(root, 'node_modules', name);
      const licence = fs.readdirSync(folder).find((file) => /^licen[cs]e/i.test(file)) as string;
      expect(notices).toContain(fs.readFileSync(path.join(folder, licence), 'utf8').trim());
    }
  });
});

describe('the bill of materials', () => {
  const text = node(root, 'tools/sbom.mjs');
  const bill = JSON.parse(text);

  it('names the package and exactly what it needs, with licence and integrity', () => {
    const { name, version } = bill.metadata.component;
    expect([bill.bomFormat, name, version]).toEqual(['CycloneDX', 'groundroll', manifest.version]);
    type Component = { name: string; version: string; licenses: unknown[]; hashes: { content: string }[] };
    expect(bill.components.map((each: Component) => [each.name, each.version])).toEqual(
      names.map((each) => [each, manifest.dependencies[each]]),
    );
    for (const { name: each, licenses, hashes } of bill.components as Component[]) {
      expect(licenses).toHaveLength(1);
      const integrity = `sha512-${Buffer.from(hashes[0]?.content ?? '', 'hex').toString('base64')}`;
      expect(integrity).toBe(lock.packages[`node_modules/${each}`]?.integrity);
    }
  });

  it('is the same each time, and names no host to fetch from', () => {
    expect(node(root, 'tools/sbom.mjs')).toBe(text);
    expect(bill.serialNumber).toMatch(/^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-8[0-9a-f]{3}-[0-9a-f]{12}$/);
    expect(text.replace(bill.$schema, '')).not.toMatch(/https?:|registry/);
  });
});

describe('what is committed', () => {
  it('records no address to fetch a package from', () => {
    expect(Object.values(lock.packages).filter(({ resolved }) => resolved !== undefined)).toEqual([]);
    for (const file of ['package.json', '.npmrc', 'SECURITY.md', 'CHANGELOG.md', 'DEVELOPERS.md']) {
      expect([file, read(file).match(/https?:\/\/|registry\.|git\+|@[\w-]+\.[a-z]{2,}/g)]).toEqual([file, null]);
    }
  });
});

describe('package.json', () => {
  it('says what a user looks for, and nothing that is not there', () => {
    const { description, keywords, license, author, engines, files, type, sideEffects } = manifest;
    expect({ license, type, sideEffects, files }).toEqual({
      license: 'MIT',
      type: 'module',
      sideEffects: false,
      files: ['dist', 'schemas', 'CHANGELOG.md'],
    });
    expect(description.length).toBeGreaterThan(40);
    expect(new Set(keywords).size).toBe(keywords.length);
    expect([author, engines.node]).toEqual([expect.any(String), '>=20.19']);
    for (const absent of ['repository', 'homepage', 'bugs', 'publishConfig', 'private']) {
      expect(manifest).not.toHaveProperty(absent);
    }
  });
});
