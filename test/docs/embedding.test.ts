import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const guide = readFileSync('docs/guides/embedding.md', 'utf8');
const programs = readdirSync('examples/embedding', { recursive: true, encoding: 'utf8' }).filter((file) =>
  /\.(mjs|cjs|js|ts|html)$/.test(file),
);
const shown = new Map(
  [...guide.matchAll(/^`([^`\s]+)`\n\n```\w+\n([\s\S]*?)^```$/gm)].map(([, name, code]) => [name, code]),
);

describe('the guide to embedding', () => {
  it('shows every example program, and no other', () => {
    expect([...shown.keys()].sort()).toEqual([...programs].sort());
  });

  it.each(programs)('shows the program that is tested: %s', (file) => {
    expect(shown.get(file)).toBe(readFileSync(`examples/embedding/${file}`, 'utf8'));
  });

  it('says of each program how to run it', () => {
    const commands = [...guide.matchAll(/^```sh\n([\s\S]*?)^```$/gm)].map(([, lines]) => lines).join('');
    for (const file of programs.filter((name) => !/^(page|worker)\/|^handler/.test(name))) {
      expect(commands, file).toMatch(new RegExp(`^(node|npx deno run .*) ${file}`, 'm'));
    }
  });

  it('states the sizes that are measured', () => {
    const sizes = JSON.parse(readFileSync('test/package/bundle-sizes.json', 'utf8')) as Record<string, number>;
    for (const [name, label] of [
      ['magneticVariation', 'groundroll/magnetism magneticVariation'],
      ['assessTakeoff', 'groundroll assessTakeoff'],
    ] as const) {
      const stated = Number(new RegExp(`\\| \`${name}\` \\| (\\d+) kB`).exec(guide)?.[1]) * 1000;
      expect(stated / Number(sizes[label]), name).toBeGreaterThan(0.93);
      expect(stated / Number(sizes[label]), name).toBeLessThan(1.07);
    }
  });

  it('brings the documents that its programs read', () => {
    const linked = [...guide.matchAll(/\]\((\S+\.json)\)/g)].map(([, address]) => `docs/guides/${address}`);
    expect(linked).toHaveLength(2);
    for (const document of linked) {
      expect(existsSync(document)).toBe(true);
      expect(existsSync(`site/media/${document.split('/').at(-1)}`)).toBe(true);
    }
  });
});
