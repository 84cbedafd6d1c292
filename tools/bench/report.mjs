// What a benchmark run says on the terminal.

export const time = (ns) => {
  if (ns < 1e3) return `${ns.toFixed(ns < 10 ? 1 : 0)} ns`;
  if (ns < 1e6) return `${(ns / 1e3).toFixed(1)} µs`;
  return ns < 1e9 ? `${(ns / 1e6).toFixed(1)} ms` : `${(ns / 1e9).toFixed(2)} s`;
};
const times = ({ median, low, high }) => `${time(median).padStart(9)}   8 of 10 rounds: ${time(low)} to ${time(high)}`;
const ratioShown = ({ median, low, high }) => `${median.toFixed(2)} (${low.toFixed(2)} to ${high.toFixed(2)})`;
const met = (isMet) => (isMet ? 'met' : 'NOT met');
const line = (name, text) => `${name.padEnd(58)}${text}`;
const middle = (values) => [...values].sort((a, b) => a - b)[values.length >> 1];

/** The formulas in numbers: how many meet their gate, and how many of the others cost no more than their checks may. */
export function summaryOf({ formulas, gates }) {
  const of = (maths) => {
    const all = formulas.filter((formula) => formula.maths === maths);
    const missing = all.filter((formula) => !formula.met);
    return {
      count: all.length,
      met: all.length - missing.length,
      withinChecks: missing.filter(({ perCheck_ns }) => perCheck_ns <= gates.algebraic.most).length,
      ratio: middle(all.map(({ ratio }) => ratio.median)),
      perCheck_ns: middle(all.map(({ perCheck_ns }) => perCheck_ns)),
    };
  };
  const controls = formulas.map(({ control }) => control.median);
  return { transcendental: of('transcendental'), algebraic: of('algebraic'), control: middle(controls) };
}

const topics = {
  formulas: (result) => {
    const { formulas, gates, notByHand } = result;
    const rows = formulas.map(({ id, maths, checks, ours_ns, byHand_ns, ratio, control, perCheck_ns, met: isMet }) =>
      [
        id.padEnd(54),
        time(ours_ns).padStart(8),
        time(byHand_ns).padStart(9),
        ratio.median.toFixed(2).padStart(7),
        control.median.toFixed(2).padStart(6),
        String(checks).padStart(4),
        `${perCheck_ns.toFixed(1)} ns`.padStart(9),
        `  ${maths}, ${met(isMet)}`,
      ].join(''),
    );
    const { transcendental, algebraic, control } = summaryOf(result);
    return [
      'formula                                                   ours  by hand  ratio   A/A checks  each',
      ...rows,
      ...Object.entries(notByHand).map(([id, why]) => `${id.padEnd(54)} not by hand: ${why}`),
      '',
      `with transcendental maths, ratio at most ${gates.transcendental.most}: ${transcendental.met} of ${transcendental.count} met, median ratio ${transcendental.ratio.toFixed(2)}; ${transcendental.withinChecks} of the others cost at most ${gates.algebraic.most} ns for each check`,
      `without, at most ${gates.algebraic.most} ns for each check: ${algebraic.met} of ${algebraic.count} met, median ${algebraic.perCheck_ns.toFixed(2)} ns`,
      `A/A (by hand against by hand), median ratio: ${control.toFixed(3)}`,
    ];
  },
  variation: ({ gates, firstCall, placeKept, model, furtherDate }) => [
    line('two evaluations of the model by its own library', times(model.ns)),
    line('  A/A', ratioShown(model.control)),
    line('first call at a place, magneticVariation', times(firstCall.ns)),
    line('  ratio', `${ratioShown(firstCall.ratio)}, at most ${gates.firstCall.most}: ${met(firstCall.met)}`),
    line('a place kept and one date, variationAt', times(placeKept.ns)),
    line('a further date at a place', times(furtherDate.ns)),
    line('', `at most ${gates.furtherDate_ns.most} ns: ${met(furtherDate.met)}`),
  ],
  assessment: ({ gates, takeoffs, byFormulas, recorder, distanceAlone, landing, explained }) => [
    ...takeoffs.flatMap(({ end, ns, byHand_ns, ratio, control, perSecond, met: isMet }) => [
      line(`prepared take-off towards ${end}, compared`, times(ns)),
      line('  the same arithmetic by hand', times(byHand_ns)),
      line(
        '  ratio',
        `${ratioShown(ratio)}, at most ${gates.ratio.most}: ${met(isMet.ratio)}; A/A ${ratioShown(control)}`,
      ),
      line(
        '  per second on one core, in one go',
        `${Math.round(perSecond)}, at least ${gates.perSecond.least}: ${met(isMet.perSecond)}`,
      ),
    ]),
    line('the one towards 28 by calling the formulas alone', times(byFormulas.ns)),
    line('  ratio to the arithmetic by hand', ratioShown(byFormulas.ratio)),
    line('prepared take-off towards 10, with the recorder', times(recorder.ns)),
    line(
      '  speed as a share of that without',
      `${ratioShown(recorder.ratio)}, at least ${gates.recorded.least}: ${met(recorder.met)}`,
    ),
    line('the distance criterion alone', times(distanceAlone.ns)),
    line('prepared landing, compared', times(landing.ns)),
    line('explained assessment, with sentences and break-evens', times(explained.ns)),
  ],
  reading: ({ gates, request, performanceData, jsonParse }) => [
    line('one request with its performance data', times(request.ns)),
    line('', `at most ${time(gates.request_ns.most)}: ${met(request.met)}; A/A ${ratioShown(request.control)}`),
    line('the performance data of it', times(performanceData.ns)),
    line(`JSON.parse of the same ${jsonParse.bytes} characters`, times(jsonParse.ns)),
  ],
  tables: ({ sizes }) =>
    sizes.flatMap(({ valuesAlongAnAxis, cells, ns, byHand_ns, ratio, toSmallest, control }) => [
      line(`${valuesAlongAnAxis} values along each of three axes, ${cells} cells`, times(ns)),
      line(
        '  search and straight lines by hand',
        `${time(byHand_ns.median).padStart(9)}   ratio ${ratioShown(ratio)}, A/A ${ratioShown(control)}`,
      ),
      line('  against the smallest table', ratioShown(toSmallest)),
    ]),
  units: ({ conversions }) =>
    conversions.flatMap(({ name, ns, control_ns }) => [
      line(name, `${times(ns.ours)}, A/A ${time(control_ns.median)}`),
      line('  safe-units', times(ns.safeUnits)),
      line('  js-quantities, converter prepared', times(ns.prepared)),
      line('  js-quantities', times(ns.jsQuantities)),
      line('  mathjs', times(ns.mathjs)),
    ]),
  import: ({ processes, entries, nothing, control }) => [
    `median of ${processes} fresh processes, ES module and CommonJS`,
    ...[...entries, { name: 'node:path, for comparison', ...nothing }, { name: '  A/A', ...control }].map(
      ({ name, esm_ms, cjs_ms }) => line(name, `${esm_ms.median.toFixed(1)} ms   ${cjs_ms.median.toFixed(1)} ms`),
    ),
  ],
  curves: (curves) =>
    Object.entries(curveNames).flatMap(([key, { title, size }]) => [
      title,
      ...curves[key].map((point) => line(`  ${point.size} ${size}`, times(point.ns))),
    ]),
};

/** What each curve shows; the axes of the figures in the documentation say the same. */
export const curveNames = {
  tables: { title: 'A prepared take-off, as its tables grow', size: 'values along each axis' },
  readingTables: { title: 'Reading one request, as its tables grow', size: 'values along each axis' },
  obstacles: { title: 'A prepared take-off, as its obstacles grow', size: 'obstacles' },
  draws: { title: 'The uncertainty of a distance, as the cases drawn grow', size: 'cases' },
  observations: { title: 'The usability factor, as the observations grow', size: 'observations' },
};

/** The lines of one topic. */
export const linesOf = (topic, result) => topics[topic](result);
