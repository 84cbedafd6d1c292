import fs from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const folder = process.env['GROUNDROLL_FOLDER'] ?? '';
const tests = (process.env['GROUNDROLL_TESTS'] ?? `test/${folder}`).split(' ');
const source = new URL(`../../src/${folder}`, import.meta.url);
const names = fs.existsSync(source) ? fs.readdirSync(source, { recursive: true, encoding: 'utf8' }) : [];
const hasRecords = names.some((name) => name.endsWith('.record.ts'));

// The tests of one folder and its check values, and nothing that needs a build or a browser: a mutant has to be
// noticed there, where a contributor would look for it.
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    include: [
      ...tests.map((path) => (path.endsWith('.test.ts') ? path : `${path}/**/*.test.ts`)),
      ...(hasRecords ? ['tools/stryker/check-values.test.ts'] : []),
    ],
    // Hundreds of whole assessments for each mutant; what they find, the others nearly always find sooner.
    exclude: [
      'test/assessment/{changed-anywhere,monotonic,properties,round-trip}.test.ts',
      'test/aircraft/{round-trip,shapes-agree}.test.ts',
      'test/study/solved-limits-everywhere.test.ts',
    ],
    setupFiles: ['test/setup.ts'],
    // No test leaves anything behind; the code loaded anew for each file would take longer than the tests of a mutant.
    isolate: false,
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
