// Writes the page with the measured figures into .cache/docs/measured, where TypeDoc finds it: tables, and a figure for
// each cost curve, all from docs/measurements/speed.json. `npm run bench -- --write` renews that file.
import fs from 'node:fs';
import path from 'node:path';
import * as Plot from '@observablehq/plot';
import { parseHTML } from 'linkedom';
import { curveNames, summaryOf, time } from './bench/report.mjs';
import { rowOf, table, text } from './register-html.mjs';

const folder = '.cache/docs/measured';
export const measurements = 'docs/measurements/speed.json';

const shown = (ns) => time(ns).replaceAll(' ', '\u00a0');
const times = (ratio) => ratio.toFixed(2);
const met = (isMet) => (isMet ? 'met' : 'not met');
const between = ({ low, high }, of = times) => `${of(low)} to ${of(high)}`;
const measuredOn = ({ cpu, cores, node, commit, date, rounds }) =>
  `Measured on ${date} with Node ${node} on ${cpu} (${cores} cores), at commit ${commit}, ${rounds} rounds.`;

/** Sections of the page by topic; each is text and tables. */
const sections = {
  formulas: (result) => {
    const { formulas, gates, notByHand } = result;
    const { transcendental, algebraic, control } = summaryOf(result);
    const rows = formulas.map(
      ({ id, maths, checks, ours_ns, byHand_ns, ratio, control: aa, perCheck_ns, met: isMet }) =>
        rowOf([
          `<a href="../register/formulas/${id}.md">${text(id)}</a>`,
          maths,
          checks,
          shown(ours_ns),
          shown(byHand_ns),
          times(ratio.median),
          times(aa.median),
          perCheck_ns.toFixed(1),
          met(isMet),
        ]),
    );
    const heads = ['Formula', 'Maths', 'Checks', 'Ours', 'By hand', 'Ratio', 'A/A', 'ns for each check', 'Gate'];
    const without = Object.entries(notByHand).map(([id, why]) => rowOf([text(id), text(why)]));
    return [
      `<p>With transcendental maths the gate is a ratio of ${gates.transcendental.most}: ${transcendental.met} of ${transcendental.count} meet it, the median ratio is ${times(transcendental.ratio)}, and ${transcendental.withinChecks} of the others cost no more than ${gates.algebraic.most} ns for each check. Without, the gate is ${gates.algebraic.most} ns for each check: ${algebraic.met} of ${algebraic.count} meet it, the median is ${algebraic.perCheck_ns.toFixed(2)} ns. Median of the A/A ratios: ${control.toFixed(3)}.</p>`,
      table('Formulas against the same arithmetic by hand', heads, [rows]),
      '<p>Not written by hand:</p>',
      table('Formulas that are not written by hand', ['Formula', 'Why'], [without]),
    ];
  },
  assessment: ({ gates, takeoffs, byFormulas, recorder, distanceAlone, landing, explained }) => {
    const rows = takeoffs.map(({ end, ns, byHand_ns, ratio, control, perSecond, met: isMet }) =>
      rowOf([
        `Prepared take-off towards ${end}`,
        shown(ns.median),
        shown(byHand_ns.median),
        `${times(ratio.median)} (${between(ratio)})`,
        times(control.median),
        `${met(isMet.ratio)} (at most ${gates.ratio.most})`,
        `${Math.round(perSecond / 1000)} thousand a second: ${met(isMet.perSecond)}`,
      ]),
    );
    const others = [
      ['The take-off towards 28 by calling the formulas alone', byFormulas.ns],
      ['The take-off towards 10 with the recorder', recorder.ns],
      ['The distance criterion alone', distanceAlone.ns],
      ['Prepared landing', landing.ns],
      ['Explained assessment, with sentences and break-evens', explained.ns],
    ].map(([name, ns]) => rowOf([name, shown(ns.median), between(ns, shown)]));
    const heads = [
      'One weather',
      'Ours',
      'By hand',
      'Ratio (8 of 10 rounds)',
      'A/A',
      'Gate',
      'On one core, a million in one go',
    ];
    return [
      table('Prepared take-offs against the same arithmetic by hand', heads, [rows]),
      table('Other comparisons and assessments', ['One weather', 'Median', '8 of 10 rounds'], [others]),
      `<p>The formulas alone, called one after the other for the take-off towards 28, take ${times(byFormulas.ratio.median)} of the time of the arithmetic by hand.</p>`,
      `<p>With the recorder the computation has ${times(recorder.ratio.median)} of the speed without it; at least ${gates.recorded.least} is asked: ${met(recorder.met)}.</p>`,
    ];
  },
  variation: ({ gates, firstCall, placeKept, model, furtherDate }) => [
    table(
      'The variation',
      ['What', 'Median', '8 of 10 rounds', 'Ratio', 'Gate'],
      [
        [
          rowOf([
            'Two evaluations of the model',
            shown(model.ns.median),
            between(model.ns, shown),
            `A/A ${times(model.control.median)}`,
            '',
          ]),
          rowOf([
            'First call at a place',
            shown(firstCall.ns.median),
            between(firstCall.ns, shown),
            times(firstCall.ratio.median),
            `${met(firstCall.met)} (at most ${gates.firstCall.most})`,
          ]),
          rowOf([
            'A place kept, and one date',
            shown(placeKept.ns.median),
            between(placeKept.ns, shown),
            times(placeKept.ratio.median),
            '',
          ]),
          rowOf([
            'A further date there',
            shown(furtherDate.ns.median),
            between(furtherDate.ns, shown),
            '',
            `${met(furtherDate.met)} (at most ${gates.furtherDate_ns.most} ns)`,
          ]),
        ],
      ],
    ),
  ],
  reading: ({ gates, request, performanceData, jsonParse }) => [
    table(
      'Reading documents',
      ['What', 'Median', '8 of 10 rounds', 'Gate'],
      [
        [
          rowOf([
            'One request with its performance data',
            shown(request.ns.median),
            between(request.ns, shown),
            `${met(request.met)} (at most ${shown(gates.request_ns.most)})`,
          ]),
          rowOf([
            'The performance data of it',
            shown(performanceData.ns.median),
            between(performanceData.ns, shown),
            '',
          ]),
          rowOf([
            `JSON.parse of the same ${jsonParse.bytes} characters`,
            shown(jsonParse.ns.median),
            between(jsonParse.ns, shown),
            '',
          ]),
        ],
      ],
    ),
  ],
  tables: ({ sizes }) => [
    table(
      'Reading one figure of a table',
      [
        'Values along each of three axes',
        'Cells',
        'Ours',
        'Search and straight lines by hand',
        'Ratio',
        'Against the smallest',
      ],
      [
        sizes.map(({ valuesAlongAnAxis, cells, ns, byHand_ns, ratio, toSmallest }) =>
          rowOf([
            valuesAlongAnAxis,
            cells,
            shown(ns.median),
            shown(byHand_ns.median),
            times(ratio.median),
            times(toSmallest.median),
          ]),
        ),
      ],
    ),
  ],
  units: ({ conversions }) => [
    table(
      'Conversions of units',
      ['Conversion', 'groundroll', 'safe-units', 'js-quantities, converter prepared', 'js-quantities', 'mathjs'],
      [
        conversions.map(({ name, ns }) =>
          rowOf([
            name,
            ...['ours', 'safeUnits', 'prepared', 'jsQuantities', 'mathjs'].map((library) => shown(ns[library].median)),
          ]),
        ),
      ],
    ),
  ],
  import: ({ processes, entries, nothing }) => {
    const ms = ({ median }) => `${median.toFixed(1)}\u00a0ms`;
    const all = [...entries, { name: 'node:path, for comparison', ...nothing }];
    return [
      table(
        `Loading an entry, median of ${processes} fresh processes`,
        ['Entry', 'As ES module', 'As CommonJS'],
        [all.map(({ name, esm_ms, cjs_ms }) => rowOf([text(name), ms(esm_ms), ms(cjs_ms)]))],
      ),
    ];
  },
  curves: (curves) =>
    Object.entries(curveNames).flatMap(([key, { title, size }]) => [
      figure(curves[key], { title, size }),
      table(
        title,
        [size, 'Median', '8 of 10 rounds'],
        [
          curves[key].map(({ size: n, ns }) =>
            rowOf([n.toLocaleString('en').replaceAll(',', '\u00a0'), shown(ns.median), between(ns, shown)]),
          ),
        ],
      ),
    ]),
};

const headings = {
  formulas: 'Formulas',
  assessment: 'Assessments',
  variation: 'Variation',
  reading: 'Reading documents',
  tables: 'Reading tables',
  units: 'Conversions of units',
  import: 'Loading the package',
  curves: 'How the cost grows',
};

/** A cost curve in ink: both axes by powers, the middle eight tenths of the rounds as a bar, the medians joined. */
function figure(points, { title, size }) {
  const { document } = parseHTML('<!DOCTYPE html><html><body></body></html>');
  const smallest = Math.min(...points.map((point) => point.size));
  // None has no place on an axis by powers; it stands where a half would.
  const place = (point) => (point.size === 0 ? 0.5 : point.size);
  const svg = Plot.plot({
    document,
    width: 560,
    height: 300,
    marginLeft: 80,
    marginBottom: 44,
    style: { fontSize: '12px', background: 'none' },
    x: {
      type: 'log',
      label: size,
      ticks: points.map(place),
      tickFormat: (n) => (n < 1 ? '0' : String(n)),
      tickSize: 4,
    },
    y: { type: 'log', label: 'time', ticks: 5, tickFormat: time, tickSize: 4 },
    marks: [
      Plot.ruleX(points, {
        x: place,
        y1: ({ ns }) => ns.low,
        y2: ({ ns }) => ns.high,
        strokeWidth: 3,
        strokeOpacity: 0.35,
      }),
      Plot.line(points, { x: place, y: ({ ns }) => ns.median, stroke: 'currentColor' }),
      Plot.dot(points, { x: place, y: ({ ns }) => ns.median, r: 3, fill: 'currentColor', stroke: null }),
    ],
  });
  svg.querySelector('style')?.remove();
  // The words of the whole say what the parts show.
  for (const part of svg.querySelectorAll('[aria-label]')) part.removeAttribute('aria-label');
  svg.setAttribute('role', 'img');
  const last = points[points.length - 1];
  const words = `${title}: ${time(points[0].ns.median)} for ${smallest} ${size}, ${time(last.ns.median)} for ${last.size}`;
  svg.setAttribute('aria-label', words);
  const html = svg.outerHTML.replaceAll('\n', ' ');
  return `<figure class="curve">${html}<figcaption>${text(title)}; both axes by powers, bars over 8 of 10 rounds.</figcaption></figure>`;
}

/** The page of the measured figures, in Markdown. */
export function speedPage(measured) {
  const parts = Object.entries(headings).flatMap(([topic, heading]) => {
    const one = measured[topic];
    if (one === undefined) throw new Error(`${measurements}: no ${topic}; npm run bench -- ${topic} --write`);
    return [
      `## ${heading}`,
      `<p>${text(measuredOn(one))} <code>npm run bench -- ${topic}</code></p>`,
      ...sections[topic](one.result),
    ];
  });
  const title = 'How fast it is: the figures';
  return `---\ntitle: "${title}"\nsearch: "speed benchmark figures nanoseconds"\n---\n\n# ${title}\n\nWhat they mean is told by the guide [How fast it is](../../../docs/guides/speed.md). All figures on this page are made of one file of measurements, \`${measurements}\`, which \`npm run bench -- --write\` renews.\n\n${parts.join('\n\n')}\n`;
}

/** Writes the page. */
export function writeSpeedPage() {
  fs.rmSync(folder, { recursive: true, force: true });
  fs.mkdirSync(folder, { recursive: true });
  const measured = JSON.parse(fs.readFileSync(measurements, 'utf8'));
  fs.writeFileSync(path.join(folder, 'speed-figures.md'), speedPage(measured));
}
