import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { version } from '../../src/version.ts';
import { takeoff } from './scenario.ts';

it("has the package's version in the library and in every assessment", () => {
  const packaged = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as {
    version: string;
  };
  expect(version).toBe(packaged.version);
  expect(takeoff('takeoff-28').version).toBe(packaged.version);
});
