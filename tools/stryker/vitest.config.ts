import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const folder = process.env['GROUNDROLL_FOLDER'] ?? '';
const tests = (process.env['GROUNDROLL_TESTS'] ?? `test/${folder}`).split(' ');

// The tests of one folder and its check values, and nothing that needs a build or a browser: a mutant has to be
// noticed there, where a contributor would look for it.
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    include: [...tests.map((path) => `${path}/**/*.test.ts`), 'tools/stryker/check-values.test.ts'],
    setupFiles: ['test/setup.ts'],
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
