import { describe, expect, it } from 'vitest';
import { migratePerformanceData, readPerformanceData } from '../../src/aircraft/index.ts';
import { readLandingRequest, readTakeoffRequest, readWeather } from '../../src/assessment/index.ts';
import {
  type DepartureAndArrivalRequest,
  readDepartureAndArrivalRequest,
  readRunwayDistanceTable,
  runwayDistanceTable,
} from '../../src/study/index.ts';
import { readMetar } from '../../src/weather-report/index.ts';
import { landingRequest, performanceData, takeoffRequest } from '../assessment/scenario.ts';

// What somebody may send to harm the one who reads it. Reading takes bounded work: it is counted here, for a time says
// as much about the machine.

type Answer = { readonly ok: boolean; readonly faults?: readonly { path: string; message: string }[] };

const takeoff = takeoffRequest('takeoff-28');
const landing = landingRequest('landing-10');
const table = runwayDistanceTable(takeoff, {
  masses: [{ value: 940, unit: 'kg' }].map((mass) => ({ mass })),
  temperatures: [{ value: 20, unit: 'degC' }],
} as never);
const bothEnds: DepartureAndArrivalRequest = {
  schema: 'groundroll/departure-and-arrival-request/1',
  sequence: 'departure then arrival',
  departure: takeoff,
  arrival: landing,
};

/** Every reader of documents with a document that it reads. */
const readers: readonly (readonly [name: string, read: (json: unknown) => Answer, sound: unknown])[] = [
  ['readPerformanceData', readPerformanceData, performanceData('corran-four')],
  ['migratePerformanceData', migratePerformanceData, performanceData('corran-four')],
  ['readTakeoffRequest', readTakeoffRequest, takeoff],
  ['readLandingRequest', readLandingRequest, landing],
  ['readWeather', readWeather, takeoff.weather],
  ['readDepartureAndArrivalRequest', readDepartureAndArrivalRequest, bothEnds],
  ['readRunwayDistanceTable', readRunwayDistanceTable, table.ok ? table.value : undefined],
];

/** Every object in a document by its path. */
function objectsIn(json: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (typeof json !== 'object' || json === null) return [];
  const inner = Object.entries(json).flatMap(([key, part]) => objectsIn(part, [...path, key]));
  return Array.isArray(json) ? inner : [path, ...inner];
}

/** The document with a property added at a place, as JSON text: keys may stand there that a literal cannot have. */
function withProperty(json: unknown, path: readonly string[], property: string): unknown {
  const copy = structuredClone(json) as Record<string, never>;
  const parent = path.reduce((part, key) => part[key] as never, copy) as Record<string, unknown>;
  parent['place of the property'] = 0;
  return JSON.parse(JSON.stringify(copy).replace('"place of the property":0', property));
}

/** The document behind a proxy that counts every look at it, whatever is looked at. */
function counted(json: object): { json: object; looks: () => number } {
  let looks = 0;
  const look = () => {
    looks += 1;
    if (looks > 10_000_000) throw new Error('looked at without end');
  };
  const proxyOf = (value: unknown): unknown => {
    if (typeof value !== 'object' || value === null) return value;
    return new Proxy(value, {
      get: (target, key) => {
        look();
        return key === 'length' ? Reflect.get(target, key) : proxyOf(Reflect.get(target, key));
      },
      has: (target, key) => {
        look();
        return Reflect.has(target, key);
      },
      ownKeys: (target) => {
        look();
        return Reflect.ownKeys(target);
      },
    });
  };
  return { json: proxyOf(json) as object, looks: () => looks };
}

const answersInWords = (answer: Answer) => {
  expect(answer.ok).toBe(false);
  expect(answer.faults?.length).toBeGreaterThan(0);
  // A fault repeats a text of at most 2000 characters.
  expect(JSON.stringify(answer.faults).length).toBeLessThan(20_000);
};

describe.each(readers)('%s', (name, read, sound) => {
  const isMigration = name === 'migratePerformanceData';

  it('reads its sound document', () => {
    expect(read(sound)).toMatchObject({ ok: true });
  });

  it.each([
    '"__proto__":{"polluted":true}',
    '"constructor":{"prototype":{"polluted":true}}',
    '"prototype":{"polluted":true}',
    '"toString":1',
    '"hasOwnProperty":1',
  ])('refuses %s in every object and reaches no prototype', (property) => {
    // Many objects are alike; every kind has its turn.
    const places = objectsIn(sound);
    for (const path of places.filter((_, i) => i < 20 || i % 7 === 0)) {
      const answer = read(withProperty(sound, path, property));
      // The parameters of a sentence have any names; there it is one more, or left out.
      const isAnyName = isMigration || path.at(-1) === 'parameters';
      if (!isAnyName) expect(answer.ok, path.join('.')).toBe(false);
      if (answer.ok) expect(Object.getPrototypeOf((answer as { value?: object }).value)).toBe(Object.prototype);
    }
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
    expect(Object.keys(Object.prototype)).toEqual([]);
  });

  it('refuses an object that inherits its values', () => {
    answersInWords(read(Object.create(sound as object)));
    const merged = Object.assign({}, JSON.parse(`{"__proto__":${JSON.stringify(sound)}}`));
    answersInWords(read(merged));
  });

  it('reads a document from another frame, whose objects have a prototype of their own', () => {
    const foreign = Object.assign(Object.create(Object.create(null)), sound);
    expect(read(foreign).ok).toBe(true);
    expect(read(Object.assign(Object.create(null), sound)).ok).toBe(true);
  });

  it('refuses 100 000 levels of lists and of objects', () => {
    for (const [open, close] of [
      ['[', ']'],
      ['{"schema":', '}'],
    ] as const) {
      const deep: unknown = JSON.parse(`${open.repeat(100_000)}1${close.repeat(100_000)}`);
      answersInWords(read(deep));
      answersInWords(read({ ...(sound as object), [Object.keys(sound as object)[1] as string]: deep }));
    }
  });

  it('refuses what refers to itself', () => {
    const endless: Record<string, unknown> = { ...(sound as object) };
    endless[Object.keys(endless)[1] as string] = endless;
    answersInWords(read(endless));
  });

  it('looks only at the length of a list of ten million', () => {
    const key = Object.keys(sound as object)[1] as string;
    const { json, looks } = counted({ ...(sound as object), [key]: new Array(10_000_000) });
    answersInWords(read(json));
    expect(looks()).toBeLessThan(60_000);
  });

  it('looks at a bounded number of places, whatever the document', () => {
    const wide = () => Array.from({ length: 60 }, () => 0 as unknown);
    const lists = wide().map(() => wide().map(() => wide().map(() => wide())));
    const { json, looks } = counted({ ...(sound as object), more: lists });
    answersInWords(read(json));
    // 40 000 values, each with its length, its keys and the entry itself.
    expect(looks()).toBeLessThan(200_000);
  });

  it('refuses an object of a hundred thousand keys before it looks at any', () => {
    const keys = Object.fromEntries(Array.from({ length: 100_000 }, (_, i) => [`key ${i}`, i]));
    const { json, looks } = counted({ ...(sound as object), more: keys });
    answersInWords(read(json));
    expect(looks()).toBeLessThan(60_000);
  });

  it('refuses a text and a key of 50 MB without repeating them', () => {
    const long = 'x'.repeat(50_000_000);
    answersInWords(read({ ...(sound as object), schema: long }));
    answersInWords(read({ ...(sound as object), [long]: 1 }));
    answersInWords(read(long));
  });

  it('refuses what throws when it is looked at', () => {
    const thrower = () => {
      throw new Error('hostile');
    };
    const key = Object.keys(sound as object)[1] as string;
    const getter = Object.defineProperty({ ...(sound as object) }, key, { get: thrower, enumerable: true });
    const traps = { get: thrower, has: thrower, ownKeys: thrower, getPrototypeOf: thrower };
    const proxy = new Proxy({ ...(sound as object) }, traps);
    const { proxy: revoked, revoke } = Proxy.revocable({}, {});
    revoke();
    for (const hostile of [getter, proxy, revoked]) {
      expect(read(hostile)).toEqual({
        ok: false,
        faults: [{ path: '', message: 'is not plain data: looking at it throws' }],
      });
    }
  });

  it('takes the last of two keys of one name, as JSON is read, and still holds it to its schema', () => {
    const text = JSON.stringify(sound);
    const key = Object.keys(sound as object)[1] as string;
    const last = text.replace(/\}$/, `,${JSON.stringify(key)}:{}}`);
    if (!isMigration) answersInWords(read(JSON.parse(last)));
    const first = text.replace('{', `{${JSON.stringify(key)}:{},`);
    expect(read(JSON.parse(first)).ok).toBe(true);
  });

  it.each([
    ...[
      null,
      undefined,
      true,
      0,
      Number.NaN,
      '',
      'text',
      10n,
      Symbol('s'),
      () => 1,
      [],
      [[]],
      {},
      new Map(),
      new Date(0),
    ],
    ...[/x/, new Uint8Array(8), Object.create(null), new Error('x'), new WeakMap(), Promise.resolve()],
  ])('answers %o with faults', (json) => {
    answersInWords(read(json));
  });
});

describe('readMetar', () => {
  it.each([
    ['a text of 50 MB', 'X'.repeat(50_000_000)],
    ['a text without words', ' '.repeat(2000)],
    ['many groups', 'Q '.repeat(1000)],
    ['many ends', '='.repeat(2000)],
    ['a group of 2000 digits', '1'.repeat(2000)],
    ['a group of 2000 solidi', '/'.repeat(2000)],
    ['a wind of 1990 digits', `METAR ZZZZ 141350Z ${'9'.repeat(1970)}KT`],
  ])('refuses %s with few words', (_name, text) => {
    const answer = readMetar(text) as Answer;
    expect(answer.ok).toBe(false);
    expect(JSON.stringify(answer.faults).length).toBeLessThan(200_000);
  });

  it.each([null, undefined, 0, [], {}, ['METAR'], 10n, new String('METAR ZZZZ 141350Z')])('refuses %o', (text) => {
    expect(readMetar(text as never).ok).toBe(false);
  });
});
