import * as v from 'valibot';
import { finiteNumber } from '../documents/index.ts';
import { type AxisQuantity, axisFacts } from './axis.ts';
import type { Chart, ChartPoint } from './chart.ts';
import { ordinateOn } from './read-chart.ts';

const quantities = Object.keys(axisFacts) as AxisQuantity[];
const units = [...new Set(quantities.flatMap((quantity) => axisFacts[quantity].units))];

const scale = v.pipe(
  v.strictObject({ quantity: v.picklist(quantities), unit: v.picklist(units) }),
  v.check(
    ({ quantity, unit }) => axisFacts[quantity].units.includes(unit),
    (issue) =>
      `${issue.input.unit} is not a unit of ${issue.input.quantity} (${axisFacts[issue.input.quantity].units.join(' or ')})`,
  ),
);

const points = v.pipe(
  v.array(v.strictTuple([finiteNumber, finiteNumber])),
  v.minLength(2, 'a curve has at least 2 points'),
  v.check((curve) => rises(curve.map(([along]) => along)), 'the points of a curve must rise along the panel'),
);

const curvePanel = v.pipe(
  v.strictObject({
    along: scale,
    family: scale,
    curves: v.pipe(
      v.array(v.strictObject({ at: finiteNumber, points })),
      v.minLength(1, 'a panel has at least 1 curve'),
    ),
  }),
  v.check(({ curves }) => rises(curves.map(({ at }) => at)), 'the values of the family must rise from curve to curve'),
  v.check(
    ({ curves }) =>
      !curves.every((curve) => isCurve(curve.points)) || haveCommonPart(curves.map((curve) => curve.points)),
    'the curves have no part of the panel in common',
  ),
);

const guidePanel = v.pipe(
  v.strictObject({
    along: scale,
    referenceLine: finiteNumber,
    guides: v.pipe(v.array(points), v.minLength(2, 'a panel has at least 2 guide lines')),
  }),
  v.check(
    ({ guides, referenceLine }) => !guides.every(isCurve) || guides.every((line) => covers(line, referenceLine)),
    'every guide line must cross the reference line',
  ),
  v.check(
    ({ guides, referenceLine }) =>
      !guides.every(isCurve) || guides.some((line) => !covers(line, referenceLine)) || inOrder(guides),
    'guide lines must stand from the lowest to the highest and may not cross',
  ),
);

/** A chart whose last scale is in one of the given units, with bounds for the ordinates there. */
export function chartSchema<const U extends 'm' | 'ft' | 'ftPerMin'>(
  lastUnits: readonly [U, ...U[]],
  min: number,
  max: number,
): v.GenericSchema<unknown, Chart<U>> {
  const chart = v.pipe(
    v.strictObject({ panels: v.tupleWithRest([curvePanel], guidePanel), unit: v.picklist(lastUnits) }),
    v.rawCheck(({ dataset, addIssue }) => {
      if (!dataset.typed) return;
      for (const message of ordinateFaults(dataset.value as Chart, min, max)) addIssue({ message });
    }),
  );
  return chart as unknown as v.GenericSchema<unknown, Chart<U>>;
}

/** Only the last panel's ordinates are in the unit of the figure; those before are on scales of the chart's own. */
function ordinateFaults({ panels, unit }: Chart, min: number, max: number): string[] {
  const faults: string[] = [];
  const seen = panels.flatMap((panel) =>
    'family' in panel ? [panel.along.quantity, panel.family.quantity] : [panel.along.quantity],
  );
  for (const [i, quantity] of seen.entries()) {
    if (seen.indexOf(quantity) < i) faults.push(`two scales show ${quantity}`);
  }
  const last = panels[panels.length - 1] as Chart['panels'][number];
  const curves = 'family' in last ? last.curves.map((curve) => curve.points) : last.guides;
  for (const [i, curve] of curves.entries()) {
    for (const [k, [, ordinate]] of curve.entries()) {
      if (ordinate < min || ordinate > max) {
        faults.push(
          `panels[${panels.length - 1}], curve ${i}, point ${k}: ${ordinate} ${unit} is not within ${min} to ${max} ${unit}`,
        );
      }
    }
  }
  return faults;
}

function rises(values: readonly number[]): boolean {
  return values.every((value, i) => i === 0 || value > (values[i - 1] as number));
}

/** Whether a line can be read and held against others; what is wrong with it is a fault of its own. */
function isCurve(curve: readonly ChartPoint[]): boolean {
  return curve.length >= 2 && curve.flat().every(Number.isFinite) && rises(curve.map(([along]) => along));
}

function covers(curve: readonly ChartPoint[], along: number): boolean {
  return (curve[0] as ChartPoint)[0] <= along && (curve[curve.length - 1] as ChartPoint)[0] >= along;
}

function haveCommonPart(curves: readonly (readonly ChartPoint[])[]): boolean {
  const from = Math.max(...curves.map((curve) => (curve[0] as ChartPoint)[0]));
  const to = Math.min(...curves.map((curve) => (curve[curve.length - 1] as ChartPoint)[0]));
  return from <= to;
}

/** Whether each line lies above the one before, at every point at which either has a corner. */
function inOrder(lines: readonly (readonly ChartPoint[])[]): boolean {
  return lines.every((line, i) => {
    const below = lines[i - 1];
    if (below === undefined) return true;
    const corners = [...line, ...below]
      .map(([along]) => along)
      .filter((along) => covers(line, along) && covers(below, along));
    return corners.every((along) => ordinateOn(line, along) > ordinateOn(below, along));
  });
}
