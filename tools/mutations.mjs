// A million random changes to the example documents: each must be read as valid or give faults. Minutes, not seconds.
import { spawnSync } from 'node:child_process';

const { status } = spawnSync(
  'node_modules/.bin/vitest',
  ['run', '--config', 'tools/vitest.config.ts', 'test/aircraft/mutations.test.ts'],
  {
    stdio: 'inherit',
    env: { ...process.env, GROUNDROLL_MUTATIONS: process.argv[2] ?? '1000000' },
  },
);
process.exitCode = status ?? 1;
