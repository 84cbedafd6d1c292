// Documents that are nearly right: an example with a few places changed, and now and then anything at all.

/** A property of this name, as JSON can have it, not the prototype. */
function withProperty(object, key, value) {
  return Object.defineProperty({ ...object }, key, { value, enumerable: true, configurable: true, writable: true });
}

const poison = JSON.parse('{"__proto__": {"polluted": true}, "constructor": {"prototype": {"polluted": true}}}');
const manyKeys = Object.fromEntries(Array.from({ length: 41_000 }, (_, i) => [`key${i}`, i]));
const deep = Array.from({ length: 500 }).reduce((inner) => ({ inner }), 1);

const numbers = [
  ...[Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0, -0, 1, -1, 0.1, 360, 1e9, 1e308, -1e308],
  ...[Number.MAX_VALUE, Number.MIN_VALUE, Number.EPSILON, Number.MAX_SAFE_INTEGER, 2 ** 53, 1e-300],
];
const texts = ['', ' ', '0', '12', 'NaN', 'kg', 'ft', '__proto__', 'constructor', 'toString', '\0', '\u202e', '\ud800'];
const others = [undefined, null, true, false, [], {}, [[]], [null], poison, { value: 1, unit: 'm' }, 10n];
const rare = [manyKeys, deep, 'x'.repeat(2001), 'x'.repeat(1999), Array(61).fill(0), Array(100_000).fill(1)];

/** @param {import('./random.mjs').Choices} choices */
function strange(choices) {
  if (choices.oneIn(40)) return choices.of(rare);
  return choices.of(choices.of([numbers, texts, others]));
}

function changedNumber(choices, value) {
  const changes = [
    () => value * choices.within(-2, 3),
    () => value * 10 ** (choices.below(13) - 6),
    () => -value,
    () => value + choices.of([1, -1, 0.1, 1e-9]),
    () => Math.round(value),
    () => value * (1 + Number.EPSILON),
    () => choices.of(numbers),
  ];
  return choices.of(changes)();
}

function changedText(choices, value, words) {
  const at = choices.below(value.length + 1);
  const changes = [
    () => choices.of(words),
    () => choices.of(texts),
    () => value.slice(0, at) + choices.of([' ', 'é', '\0', '/', '1', '.', '-']) + value.slice(at),
    () => value.slice(0, at) + value.slice(at + 1),
    () => value.toUpperCase(),
    () => value + value,
  ];
  return choices.of(changes)();
}

function changedList(choices, list) {
  const at = choices.below(list.length + 1);
  const changes = [
    () => list.toReversed(),
    () => [...list, list[0]],
    () => list.slice(0, at),
    () => list.slice(at),
    () => [...list.slice(0, at), strange(choices), ...list.slice(at)],
    () => [...list, ...list, ...list],
    () => [list],
    () => Array.from({ length: choices.of([60, 61, 1000]) }, () => list[0]),
    // A list with a hole.
    () => Object.assign([...list], { length: list.length + 1 }),
  ];
  return choices.of(changes)();
}

function changedObject(choices, object, words) {
  const keys = Object.keys(object);
  const key = keys.length === 0 ? 'value' : choices.of(keys);
  const { [key]: value, ...rest } = object;
  const changes = [
    () => rest,
    () => rest,
    () => withProperty(rest, choices.of(words), value),
    () => withProperty(object, choices.of(words), value),
    () => withProperty(object, choices.of(['__proto__', 'constructor', 'prototype', 'toString', '']), poison),
    () => withProperty(object, key, object[choices.of(keys)]),
    () => [object],
    () => Object.assign(Object.create(null), object),
    () => Object.create(object),
  ];
  return choices.of(changes)();
}

function changed(choices, value, words) {
  if (choices.oneIn(5)) return strange(choices);
  if (typeof value === 'number') return changedNumber(choices, value);
  if (typeof value === 'string') return changedText(choices, value, words);
  if (Array.isArray(value)) return changedList(choices, value);
  return typeof value === 'object' && value !== null ? changedObject(choices, value, words) : strange(choices);
}

/** Changes one place; what lies beside the way to it is shared with the original. Everything stays frozen. */
function changedSomewhere(choices, value, words) {
  const isInner = typeof value === 'object' && value !== null;
  const keys = isInner ? Object.keys(value) : [];
  if (keys.length === 0 || keys.length > 100 || choices.oneIn(12)) return shallowFrozen(changed(choices, value, words));
  const key = choices.of(keys);
  const part = changedSomewhere(choices, value[key], words);
  if (!Array.isArray(value)) return Object.freeze(withProperty(value, key, part));
  return Object.freeze(value.map((each, i) => (String(i) === key ? part : each)));
}

function shallowFrozen(value) {
  return typeof value === 'object' && value !== null ? Object.freeze(value) : value;
}

/** Anything that JSON can say, in the words of the documents. */
function anything(choices, words, depth) {
  const kind = choices.below(depth > 4 ? 3 : 6);
  if (kind === 0) return choices.of(numbers.filter(Number.isFinite));
  if (kind === 1) return choices.of(words);
  if (kind === 2) return choices.of([null, true, false, '', 0]);
  const parts = Array.from({ length: choices.below(6) }, () => anything(choices, words, depth + 1));
  if (kind === 3) return Object.freeze(parts);
  return Object.freeze(parts.reduce((object, part) => withProperty(object, choices.of(words), part), {}));
}

/** The text of a document with keys that stand there twice, or with characters lost; the text itself if it is not JSON. */
function fromText(choices, text, words) {
  const at = choices.below(text.length);
  const brace = text.indexOf('{', at);
  const key = JSON.stringify(choices.of([...words, '__proto__']));
  const value = choices.of(['1', '-1e999', '"kg"', 'null', '[]', '{}', '{"polluted":true}']);
  const changes = [
    () => `${text.slice(0, brace + 1)}${key}:${value},${text.slice(brace + 1)}`,
    () => text.replace(/\}$/, `,${key}:${value}}`),
    () => text.slice(0, at) + text.slice(at + choices.below(20)),
    () => text.slice(0, at) + choices.of(['0', '9', 'e9', '-', '"', '[', ',']) + text.slice(at),
  ];
  const broken = choices.of(changes)();
  try {
    return deepFrozen(JSON.parse(broken));
  } catch {
    return broken;
  }
}

/** @template T @param {T} value @returns {T} */
export function deepFrozen(value) {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const part of Object.values(value)) deepFrozen(part);
  }
  return value;
}

for (const each of [poison, manyKeys, deep, ...others, ...rare]) deepFrozen(each);

function wordsOf(value, words = new Set()) {
  if (typeof value === 'string') words.add(value);
  if (typeof value === 'object' && value !== null) {
    for (const [key, part] of Object.entries(value)) {
      if (!Array.isArray(value)) words.add(key);
      wordsOf(part, words);
    }
  }
  return words;
}

/** A source of inputs around examples: one to three changes to one of them, seldom a broken text or anything at all. */
export function aroundExamples(examples) {
  const frozen = examples.map((example) => deepFrozen(structuredClone(example)));
  const jsonTexts = frozen.map((example) => JSON.stringify(example));
  const words = [...wordsOf(frozen)];
  return (choices) => {
    const kind = choices.below(100);
    if (kind === 0) return anything(choices, words, 0);
    if (kind === 1) return fromText(choices, choices.of(jsonTexts), words);
    let document = choices.of(frozen);
    const changes = choices.of([1, 1, 1, 2, 3]);
    for (let i = 0; i < changes; i += 1) document = changedSomewhere(choices, document, words);
    return document;
  };
}
