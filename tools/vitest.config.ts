import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));

export default defineConfig({
  root,
  test: {
    include: ['test/**/*.test.ts', '.cache/examples/*.test.{ts,js}'],
    setupFiles: ['test/setup.ts'],
    // No test leaves anything behind; a fresh context for each file would triple the time.
    isolate: false,
    // Properties over whole documents take seconds on a busy machine; time is what benchmarks measure.
    testTimeout: 60_000,
    hookTimeout: 60_000,
    typecheck: { enabled: true, include: ['test/**/*.test-d.ts'], tsconfig: 'tsconfig.json' },
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      exclude: ['src/**/*.record.ts', 'src/**/index.ts'],
      reporter: ['text-summary', 'json-summary'],
      thresholds: {
        'src/{units,sources,atmosphere,airspeed,magnetism,wind,distance,flight-path,dynamics,weather-report,rules-of-thumb,documents,aircraft,study,columns}/**/*.ts':
          {
            lines: 95,
          },
      },
    },
  },
});
