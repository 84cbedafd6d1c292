import fs from 'node:fs';
import path from 'node:path';
import { Ajv } from 'ajv';
import { describe, expect, it } from 'vitest';
import { root } from './packed.ts';

const folder = path.join(root, 'schemas');
const files = fs.readdirSync(folder).filter((file) => file.endsWith('.json'));

describe('the JSON Schemas', () => {
  it('are shipped', () => expect(files).toContain('performance-data.json'));

  it.each(files)('%s compiles in strict mode, and refuses what is no such document', (file) => {
    const schema = JSON.parse(fs.readFileSync(path.join(folder, file), 'utf8'));
    const validate = new Ajv({
      strict: true,
      strictTypes: false,
      allErrors: true,
      formats: { date: /^\d{4}-\d{2}-\d{2}$/ },
    }).compile(schema);
    expect(validate({})).toBe(false);
    expect(validate({ schema: 'groundroll/something-else/1' })).toBe(false);
    expect(validate.errors?.some(({ instancePath }) => instancePath === '/schema')).toBe(true);
  });
});
