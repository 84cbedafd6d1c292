// Writes the JSON Schema of every document into schemas/, from the very schema objects that the readers use:
// an object of src/**/*-schema.ts whose `schema` must be 'groundroll/takeoff-request/1' becomes takeoff-request.json.
import fs from 'node:fs';
import path from 'node:path';
import { toJsonSchema } from '@valibot/to-json-schema';
import { bundled } from './bundled.mjs';

const sources = fs.readdirSync('src', { recursive: true }).filter((file) => file.endsWith('-schema.ts'));
const modules = await bundled('schemas', sources.map((file, i) => `export * as file${i} from './${file}';`).join('\n'));

fs.rmSync('schemas', { recursive: true, force: true });
fs.mkdirSync('schemas');

for (const schema of Object.values(modules).flatMap((module) => Object.values(module))) {
  const name = /^groundroll\/([a-z-]+)\/\d+$/.exec(schema?.entries?.schema?.literal ?? '')?.[1];
  if (name === undefined) continue;
  // Checks that span several fields have no counterpart in JSON Schema; the readers make them.
  const json = toJsonSchema(schema, { errorMode: 'ignore' });
  fs.writeFileSync(path.join('schemas', `${name}.json`), `${JSON.stringify(json, null, 2)}\n`);
  console.log(`schemas/${name}.json`);
}
