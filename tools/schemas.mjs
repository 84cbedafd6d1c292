// Writes the JSON Schema of every document into schemas/, from the very schema objects that the readers use:
// an export `takeoffRequestSchema` of any entry becomes `schemas/takeoff-request.json`.
import fs from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { toJsonSchema } from '@valibot/to-json-schema';
import { entries } from './entries.mjs';

fs.rmSync('schemas', { recursive: true, force: true });
fs.mkdirSync('schemas');
const written = new Set();

for (const { name } of entries) {
  const exported = await import(pathToFileURL(path.resolve('dist', `${name}.js`)).href);
  for (const [key, schema] of Object.entries(exported)) {
    if (!key.endsWith('Schema') || schema?.kind !== 'schema') continue;
    const file = `${key.slice(0, -'Schema'.length).replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}.json`;
    // Checks that span several fields have no counterpart in JSON Schema; the readers make them.
    const json = toJsonSchema(schema, { errorMode: 'ignore' });
    fs.writeFileSync(path.join('schemas', file), `${JSON.stringify(json, null, 2)}\n`);
    written.add(file);
  }
}

console.log([...written].join('\n'));
