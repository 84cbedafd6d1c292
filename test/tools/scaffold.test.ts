import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const script = resolve('tools/scaffold.mjs');
const files = [
  'src/wind/gust-spread.ts',
  'src/wind/gust-spread.record.ts',
  'src/wind/gust-spread.check-values.json',
  'test/wind/gust-spread.test.ts',
];

/** A copy of what the command reads and writes. */
let copy: string;
const inCopy = (command: string, ...options: string[]) => {
  const { status, stdout, stderr } = spawnSync(command, options, { cwd: copy, encoding: 'utf8' });
  return { status, output: stdout + stderr };
};
const scaffold = (...options: string[]) => inCopy(process.execPath, script, ...options);

beforeAll(() => {
  copy = mkdtempSync(join(tmpdir(), 'groundroll-scaffold-'));
  for (const part of ['src', 'test/wind', 'test/register', 'test/setup.ts', 'tools/biome.json', 'package.json']) {
    cpSync(part, join(copy, part), { recursive: true });
  }
  const options = JSON.parse(readFileSync('tsconfig.json', 'utf8'));
  writeFileSync(join(copy, 'tsconfig.json'), JSON.stringify({ ...options, include: ['src', ...files.slice(3)] }));
  symlinkSync(resolve('node_modules'), join(copy, 'node_modules'));
});
afterAll(() => rmSync(copy, { recursive: true, force: true }));

describe('the command that begins a formula family', () => {
  it.each([
    [[], 'a folder and a name are needed'],
    [['wind'], 'a folder and a name are needed'],
    [['sources', 'gust-spread'], 'src/sources is no folder of formulas'],
    [['nowhere', 'gust-spread'], 'src/nowhere is no folder of formulas'],
    [['wind', 'GustSpread'], 'GustSpread: a name is words in small letters'],
    [['wind', 'turn-radius'], 'turnRadius stands in src/wind/turn.ts already'],
  ])('refuses %j', (options, reason) => {
    const before = readFileSync(join(copy, 'src/register/records.ts'), 'utf8');
    const { status, output } = scaffold(...options);
    expect(status).toBe(1);
    expect(output).toContain(reason);
    expect(readFileSync(join(copy, 'src/register/records.ts'), 'utf8')).toBe(before);
  });

  it('writes siblings that compile and are well formed, and whose tests fail until they are written', () => {
    const { status, output } = scaffold('wind', 'gust-spread');
    expect(output).toContain(files.join('\n'));
    expect(status).toBe(0);
    expect(inCopy('node_modules/.bin/tsc', '-p', '.')).toEqual({ status: 0, output: '' });
    const lint = inCopy(
      'node_modules/.bin/biome',
      'check',
      '--config-path=tools',
      '--error-on-warnings',
      'src',
      'test',
    );
    expect(lint.status, lint.output).toBe(0);
    const register = readFileSync(join(copy, 'src/register/records.ts'), 'utf8');
    expect(register).toContain("import { gustSpreadRecord } from '../wind/gust-spread.record.ts';");
    expect(register).toMatch(/^ {2}gustSpreadRecord,$/m);
    expect(readFileSync(join(copy, 'src/register/check-values.ts'), 'utf8')).toMatch(/^ {2}gustSpread,$/m);
    expect(readFileSync(join(copy, 'src/wind/index.ts'), 'utf8')).toContain("gustSpread } from './gust-spread.ts'");

    const tests = inCopy('node_modules/.bin/vitest', 'run', 'test/wind/gust-spread', 'test/register/check-values');
    expect(tests.status).toBe(1);
    expect(tests.output).toContain('gustSpread is not written yet');
    expect(tests.output).toMatch(/FAIL.*exist for every record that promises them/);
    expect(tests.output).not.toMatch(/FAIL.*refuses a bad/);
  }, 180_000);

  it('overwrites nothing', () => {
    const { status, output } = scaffold('wind', 'gust-spread');
    expect(status).toBe(1);
    expect(output).toContain('gustSpread stands in src/wind/gust-spread.ts already');
  });
});
