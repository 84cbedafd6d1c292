import { type ChildProcess, execFileSync, spawn, spawnSync } from 'node:child_process';
import fs from 'node:fs';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { build, type PreviewServer, preview } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { browser, isBrowserMissing } from '../browser.ts';
import { consumer, node, root } from './packed.ts';

let project: ReturnType<typeof consumer>;
let embedding: string;
let documents: [request: string, performanceData: string];

beforeAll(() => {
  project = consumer({ 'package.json': '{}' });
  for (const each of ['embedding', 'requests', 'performance-data']) {
    fs.cpSync(path.join(root, 'examples', each), path.join(project.folder, each), { recursive: true });
  }
  embedding = path.join(project.folder, 'embedding');
  documents = ['requests/takeoff-28.json', 'performance-data/corran-four.json'].map((file) =>
    path.join(project.folder, file),
  ) as typeof documents;
});
afterAll(() => project.remove());

/** The body of an answer: an assessment or faults. */
interface Answer {
  readonly limitsOfUse: readonly string[];
  readonly faults: readonly { readonly path: string }[];
}

/** A take-off request as a client sends it, performance data included. */
function requestDocument(): Record<string, unknown> {
  const [request, performanceData] = documents.map((file) => JSON.parse(fs.readFileSync(file, 'utf8')));
  return { ...request, performanceData };
}

function deno(...options: string[]): string {
  return execFileSync(process.execPath, [path.join(root, 'node_modules/deno/bin.cjs'), ...options], {
    cwd: embedding,
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, NO_COLOR: '1', DENO_NO_UPDATE_CHECK: '1' },
  });
}

const manual = '--node-modules-dir=manual';
const report = 'METAR ZZZZ 141350Z 19007G17KT 9999 FEW040 26/16 Q1006';

describe('the examples of embedding, run from the packed tarball', () => {
  it('are small', () => {
    const files = fs.readdirSync(path.join(root, 'examples/embedding'), { recursive: true, encoding: 'utf8' });
    const programs = files.filter((file) => /\.(mjs|cjs|js|ts)$/.test(file));
    expect(programs.length).toBeGreaterThan(7);
    for (const file of programs) {
      const lines = fs
        .readFileSync(path.join(root, 'examples/embedding', file), 'utf8')
        .trim()
        .split('\n').length;
      expect.soft(lines, file).toBeLessThan(40);
    }
  });

  it('in Node, an ES module', () => {
    const lines = node(embedding, 'formulas.mjs').trim().split('\n');
    expect(lines).toEqual([
      '2\u00a0054 ft density altitude',
      '17 kt from the right',
      'refused: temperature 99, -50 to 60 degC',
    ]);
  });

  it('in Node, CommonJS', () => {
    const printed = node(embedding, 'assessment.cjs', ...documents);
    expect(printed).toMatch(/^Take-off on 28: within limits; /);
    expect(printed).toContain('not permission');
  });

  it('in Node, CommonJS, with a broken request', () => {
    const broken = path.join(project.folder, 'broken.json');
    fs.writeFileSync(broken, JSON.stringify({ ...requestDocument(), mass: 'heavy' }));
    const { status, stdout, stderr } = spawnSync('node', ['assessment.cjs', broken, documents[1]], {
      cwd: embedding,
      encoding: 'utf8',
    });
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toMatch(/^mass: /);
  });

  it('in Node, many weathers', () => {
    const printed = node(embedding, 'weathers.mjs', ...documents);
    expect(printed.trim().split('\n')).toEqual(['20 °C: within', '30 °C: within', '36 °C: outside']);
    const { status, stderr } = spawnSync('node', ['weathers.mjs', documents[1], documents[1]], {
      cwd: embedding,
      encoding: 'utf8',
    });
    expect(status).toBe(2);
    expect(stderr).toMatch(/^schema: /);
  });

  it('in Deno, with its types', () => {
    expect(deno('check', manual, 'metar.ts')).toBe('');
    expect(deno('run', manual, 'metar.ts', report).trim().split('\n')).toEqual([
      'wind from 190° true at 7 kt',
      'gusts of 17 kt',
      'temperature 26 °C',
      'QNH 1\u00a0006 hPa',
    ]);
    expect(() => deno('run', manual, 'metar.ts', 'METAR ZZZZ 141350Z 19007G17KT 9999 Q1006')).toThrow(/temperature/);
  });

  it('in a web worker', () => {
    const printed = deno('run', '--allow-read', manual, 'worker/ask.mjs', ...documents);
    expect(printed.trim().split('\n')).toEqual(['20 °C: within', '30 °C: within', '40 °C: outside']);
    const broken = path.join(project.folder, 'broken.json');
    fs.writeFileSync(broken, JSON.stringify({ ...requestDocument(), mass: 'heavy' }));
    expect(() => deno('run', '--allow-read', manual, 'worker/ask.mjs', broken, documents[1])).toThrow(/mass/);
  });
});

describe('the example of an HTTP server', () => {
  let server: ChildProcess;
  let address: string;
  beforeAll(async () => {
    server = spawn(process.execPath, ['server.mjs'], { cwd: embedding, stdio: ['ignore', 'pipe', 'inherit'] });
    address = await new Promise((resolve) => server.stdout?.once('data', (line) => resolve(String(line).trim())));
  });
  afterAll(() => {
    server.kill();
  });

  async function posted(body: string) {
    const response = await fetch(address, { method: 'POST', body });
    return { status: response.status, answer: (await response.json()) as Answer };
  }

  it('answers a request with its assessment', async () => {
    const { status, answer } = await posted(JSON.stringify(requestDocument()));
    expect(status).toBe(200);
    expect(answer).toMatchObject({ schema: 'groundroll/takeoff-assessment/1', verdict: 'within' });
    expect(answer.limitsOfUse.length).toBeGreaterThan(0);
  });

  it('answers the client beside it', () => {
    expect(node(embedding, 'post.mjs', address, ...documents).trim()).toBe('200 within');
  });

  it('answers 422 with every fault and its path', async () => {
    const { runwayInUse: _, ...rest } = requestDocument();
    const { status, answer } = await posted(
      JSON.stringify({ ...rest, mass: { value: 'heavy', unit: 'kg' }, colour: 1 }),
    );
    expect(status).toBe(422);
    expect(answer.faults.map(({ path: where }) => where).sort()).toEqual(['colour', 'mass.value', 'runwayInUse']);
  });

  it.each([
    ['nothing', '', 400],
    ['no JSON', '{', 400],
    ['null', 'null', 422],
    ['a list', '[]', 422],
    ['a schema that cannot be a text', '{"schema":{"toString":1}}', 422],
    ['a schema that every object inherits', '{"schema":"constructor"}', 422],
    ['more than is read', `"${'x'.repeat(300_000)}"`, 413],
  ])('refuses %s', async (_name, body, expected) => {
    const { status, answer } = await posted(body);
    expect(status).toBe(expected);
    expect(answer.faults).toHaveLength(1);
  });

  it('refuses another method, and goes on', async () => {
    expect((await fetch(address)).status).toBe(405);
    expect((await posted('{}')).status).toBe(422);
  });
});

describe('the example of a page', () => {
  let built: string;
  let server: PreviewServer;
  beforeAll(async () => {
    const page = path.join(embedding, 'page');
    await build({ root: page, logLevel: 'error' });
    built = path.join(page, 'dist');
    server = await preview({ root: page, logLevel: 'error', preview: { port: 0, host: 'localhost' } });
  });
  afterAll(() => server.close());

  it('carries what it imports, and no more', () => {
    const scripts = fs.readdirSync(path.join(built, 'assets')).filter((name) => name.endsWith('.js'));
    const text = scripts.map((name) => fs.readFileSync(path.join(built, 'assets', name), 'utf8')).join('');
    const bytes = gzipSync(text).length;
    expect(bytes).toBeGreaterThan(500);
    expect(bytes).toBeLessThan(1_700);
    expect(text).not.toContain('groundroll/takeoff-request');
  });

  it.skipIf(isBrowserMissing)('answers in a browser, and refuses an empty field', async () => {
    const opened = await browser();
    try {
      const page = await opened.newPage();
      const errors: string[] = [];
      page.on('pageerror', ({ message }) => errors.push(message));
      await page.goto(`http://localhost:${(server.httpServer.address() as AddressInfo).port}`);
      const answer = page.locator('#answer');
      expect(await answer.textContent()).toBe('3 kt headwind, 17 kt from the right.');
      await page.fill('#direction', '292');
      expect(await answer.textContent()).toBe('4 kt tailwind, 17 kt from the left.');
      await page.fill('#speed', '');
      expect(await answer.textContent()).toMatch(/^refused: kt: NaN is not a finite number /);
      expect(errors).toEqual([]);
    } finally {
      await opened.close();
    }
  });
});
