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

const exported = Object.values(modules).flatMap((module) => Object.entries(module));
const documentOf = (schema) => /^groundroll\/([a-z-]+)\/\d+$/.exec(schema?.entries?.schema?.literal ?? '')?.[1];
// A document within a document, and a sentence, is written down once and referred to.
const shared = exported.filter(([key, schema]) => documentOf(schema) !== undefined || key === 'sentenceSchema');

/** What a part may be told from: a word, a list of panels, or nothing of the kind. */
const probes = ['', { panels: [] }];

for (const [own, schema] of exported) {
  const name = documentOf(schema);
  if (name === undefined) continue;
  const definitions = Object.fromEntries(
    shared.filter(([key]) => key !== own).map(([key, each]) => [key.replace(/Schema$/, ''), each]),
  );
  // Checks that span several fields have no counterpart in JSON Schema; the readers make them.
  const json = withoutUnused(toJsonSchema(schema, { errorMode: 'ignore', definitions, overrideSchema }));
  fs.writeFileSync(path.join('schemas', `${name}.json`), `${JSON.stringify(json, null, 2)}\n`);
  console.log(`schemas/${name}.json`);
}

/** A part that is one thing or another, chosen by what stands there, is any of them. */
function overrideSchema({ valibotSchema: { type, getter }, jsonSchema }) {
  if (type !== 'lazy') return undefined;
  const others = new Set(probes.map((probe) => getter(probe)).filter((each) => each !== getter(undefined)));
  if (others.size === 0) return undefined;
  const alternatives = [...others].map((each) => {
    const { $schema: _, ...alternative } = toJsonSchema(each, { errorMode: 'ignore' });
    return alternative;
  });
  return { anyOf: [...alternatives, jsonSchema] };
}

/** A schema with the definitions that it refers to, be it through another definition, and no others. */
function withoutUnused({ $defs = {}, ...json }) {
  const used = new Set();
  const visit = (part) => {
    for (const [, key] of JSON.stringify(part).matchAll(/"#\/\$defs\/([^"]+)"/g)) {
      if (used.has(key)) continue;
      used.add(key);
      visit($defs[key]);
    }
  };
  visit(json);
  const kept = Object.entries($defs).filter(([key]) => used.has(key));
  return kept.length === 0 ? json : { ...json, $defs: Object.fromEntries(kept) };
}
