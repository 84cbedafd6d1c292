import type { FactorSet, PhaseCorrections, SteppedRule } from '../../src/distance/index.ts';

/** What one factor of a set says, as a row of the page of factor sets. */
function row(phase: string, says: string, figure: string, { locator, access }: { locator: string; access: string }) {
  return `| ${phase} | ${says} | ${figure} | ${locator} | ${access} |`;
}

const kinds = { value: '', 'at-least': 'at least ', 'at-most': 'up to ' } as const;

function corrections(phase: string, { surfaces, slope, mass, elevation, temperature, tailwind }: PhaseCorrections) {
  const stepped = (says: string, rule: SteppedRule | undefined) =>
    rule === undefined
      ? []
      : [row(phase, says, `${kinds[rule.kind ?? 'value']}${rule.factorPerStep.toFixed(2)}`, rule)];
  return [
    ...surfaces.map((each) => row(phase, each.condition, `${kinds[each.kind]}${each.factor.toFixed(2)}`, each)),
    ...(slope === undefined
      ? []
      : [row(phase, 'each 1 % of adverse slope', `${slope.percentPerPercent} %, to ${slope.upTo} %`, slope)]),
    ...stepped('each 10 % of mass', mass),
    ...stepped('each 1 000 ft', elevation),
    ...stepped('each 10 °C', temperature),
    ...stepped('each tailwind of 10 % of the speed', tailwind),
  ];
}

/** Every figure of a set as a row: phase, what it is for, the figure, where it stands, how it is known. */
export function factorRows(set: FactorSet): string[] {
  const margins = set.takeoff.safety.flatMap(({ needs, tests }) =>
    tests.map((test) =>
      row(
        'take-off',
        `margin against the ${test.against}${needs === 'nothing' ? '' : `, with ${needs}`}`,
        test.factor.toFixed(2),
        test,
      ),
    ),
  );
  const { safety } = set.landing;
  return [
    ...corrections('take-off', set.takeoff),
    ...(set.hasSafetyFactor ? margins : []),
    ...corrections('landing', set.landing),
    ...(set.hasSafetyFactor ? [row('landing', 'margin against the LDA', safety.factor.toFixed(2), safety)] : []),
  ];
}
