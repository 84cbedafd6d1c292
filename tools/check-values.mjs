// Writes every check value, with the formulas, units and sources that it names, into dist/check-values.json: the
// document by which an implementation in another language can test itself. One line for each entry.
import fs from 'node:fs';
import { bundled } from './bundled.mjs';

const { checkValueCollection } = await bundled('check-values', `export * from './register/index.ts';`);
const collection = checkValueCollection();

const lines = (list) => list.map((entry) => `\n  ${JSON.stringify(entry)}`).join(',');
const named = (map) =>
  Object.entries(map).map(([key, entry]) => `\n  ${JSON.stringify(key)}: ${JSON.stringify(entry)}`);
const members = Object.entries(collection).map(([key, member]) => {
  if (Array.isArray(member)) return `"${key}": [${lines(member)}\n ]`;
  return typeof member === 'object'
    ? `"${key}": {${named(member).join(',')}\n }`
    : `"${key}": ${JSON.stringify(member)}`;
});
fs.mkdirSync('dist', { recursive: true });
fs.writeFileSync('dist/check-values.json', `{\n ${members.join(',\n ')}\n}\n`);
console.log(`dist/check-values.json: ${collection.checkValues.length} check values`);
