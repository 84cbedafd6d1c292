import fs from 'node:fs';
import path from 'node:path';
import { Ajv } from 'ajv';
import { describe, expect, it } from 'vitest';
import { root } from './packed.ts';

const folder = path.join(root, 'schemas');
const files = fs.readdirSync(folder).filter((file) => file.endsWith('.json'));

function compiled(schema: object) {
  const formats = { date: /^\d{4}-\d{2}-\d{2}$/ };
  return new Ajv({ strict: true, strictTypes: false, strictTuples: false, allErrors: true, formats }).compile(schema);
}

describe('the JSON Schemas', () => {
  it('are shipped', () => expect(files).toContain('performance-data.json'));

  it.each(files)('%s compiles in strict mode, and refuses what is no such document', (file) => {
    const schema = JSON.parse(fs.readFileSync(path.join(folder, file), 'utf8'));
    const validate = compiled(schema);
    expect(validate({})).toBe(false);
    expect(validate({ schema: 'groundroll/something-else/1' })).toBe(false);
    expect(validate.errors?.some(({ instancePath }) => instancePath === '/schema')).toBe(true);
  });

  it.each(fs.readdirSync(path.join(root, 'examples/performance-data')).map((file) => ['performance-data', file]))(
    'accept what the readers read: %s, %s',
    (kind, file) => {
      const schema = JSON.parse(fs.readFileSync(path.join(folder, `${kind}.json`), 'utf8'));
      const validate = compiled(schema);
      validate(JSON.parse(fs.readFileSync(path.join(root, 'examples', kind, file), 'utf8')));
      expect(validate.errors).toBeNull();
    },
  );

  it('accept the requests of the examples, whose factor set is a word', () => {
    for (const file of fs.readdirSync(path.join(root, 'examples/requests'))) {
      const request = JSON.parse(fs.readFileSync(path.join(root, 'examples/requests', file), 'utf8'));
      request.performanceData = JSON.parse(
        fs.readFileSync(path.join(root, 'examples/requests', request.performanceData), 'utf8'),
      );
      const kind = /^groundroll\/([a-z-]+)\//.exec(request.schema)?.[1];
      const schema = JSON.parse(fs.readFileSync(path.join(folder, `${kind}.json`), 'utf8'));
      const validate = compiled(schema);
      validate(request);
      expect([file, validate.errors]).toEqual([file, null]);
    }
  });
});
