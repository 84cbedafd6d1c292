import fc from 'fast-check';
import type { Conditions } from '../../src/assessment/index.ts';
import { factorSets, type Surface } from '../../src/distance/index.ts';
import type { Changes } from './scenario.ts';
import { aeroplanes, type Day, figure } from './worsening.ts';

/** Evenly spread: floating-point numbers drawn as such are mostly next to nothing. */
export const anywhere = (min: number, max: number) =>
  fc.integer({ min: 0, max: 1_000_000 }).map((n) => min + ((max - min) * n) / 1_000_000);
const grass = (condition: 'dry' | 'wet', length: 'very short' | 'up to 20 cm', ground: 'firm' | 'soft') =>
  ({ kind: 'grass', condition, length, ground }) as const;

/** Surfaces from the better to the worse, as the factor sets declare them. */
export const surfaceChains: readonly (readonly Surface[])[] = [
  [
    { kind: 'paved', condition: 'dry' },
    { kind: 'paved', condition: 'wet' },
  ],
  [
    { kind: 'paved', condition: 'dry' },
    grass('dry', 'up to 20 cm', 'firm'),
    grass('wet', 'up to 20 cm', 'firm'),
    grass('wet', 'very short', 'firm'),
  ],
  [grass('dry', 'up to 20 cm', 'firm'), grass('dry', 'up to 20 cm', 'soft'), grass('wet', 'up to 20 cm', 'soft')],
  [grass('wet', 'very short', 'firm'), grass('wet', 'very short', 'soft')],
];

const percent = (value: number) => figure(value, 'percent');

/** The forms in which a manual may print its figures beside those of the examples. */
const withoutTailwindLaw = (table: string) => ({ [`${table}.corrections.tailwind`]: undefined });
const single = (table: string) => ({
  [`${table}.groundRoll`]: { axes: [], unit: 'm', cells: 190 },
  [`${table}.distance`]: { axes: [], unit: 'm', cells: 400 },
  [`${table}.associatedConditions`]: {
    surface: 'paved',
    surfaceCondition: 'dry',
    slope: percent(0),
    mass: figure(870, 'kg'),
    pressureAltitude: figure(1000, 'ftPA'),
    temperature: figure(15, 'degC'),
  },
});
const speedsByMass = (phase: Day['phase'], table: string) => ({
  [phase === 'takeoff' ? `${table}.liftOffSpeed` : `${table}.approachSpeed`]: {
    axes: [{ quantity: 'mass', unit: 'kg', values: [700, 900, 1050] }],
    unit: 'kias',
    cells: phase === 'takeoff' ? [45, 49.5, 52] : [52, 55.5, 58],
  },
});

function anyChanges({
  phase,
  aeroplane,
  factorSet,
}: Pick<Day, 'phase' | 'aeroplane' | 'factorSet'>): fc.Arbitrary<Changes> {
  const recalled = factorSets[factorSet][phase].surfaces.filter(({ access }) => access === 'recalled');
  const confirmations = recalled.map(({ id: factorId }) => ({ factorId, edition: '7c', date: '2026-07-14' }));
  const table = `performanceData.${phase}.0`;
  const ownSurfaces = fc
    .tuple(anywhere(0, 60), anywhere(0, 30), fc.constantFrom('distance', 'ground roll'))
    .map(([dry, more, percentOf]) => [
      { surface: 'grass', condition: 'dry', increase: percent(dry), percentOf },
      { surface: 'grass', condition: 'wet', increase: percent(dry + more), percentOf },
    ]);
  const ownSlope = fc
    .tuple(anywhere(1, 15), fc.constantFrom('distance', 'ground roll'))
    .map(([change, percentOf]) => ({ change: percent(change), per: percent(1), upTo: percent(3), percentOf }));
  const sometimes = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });
  return fc
    .record({
      form: fc.constantFrom(
        {},
        {},
        withoutTailwindLaw(table),
        single(table),
        ...(aeroplane === 'corran-four' ? [speedsByMass(phase, table)] : []),
      ),
      ownSurfaces: sometimes(fc.tuple(ownSurfaces, fc.integer({ min: 1, max: 2 }))),
      ownSlope: sometimes(ownSlope),
      includes: fc.record({
        safetyFactor: fc.constantFrom(true, false, false, 'not stated'),
        windAccountability: fc.constantFrom(true, false, false, 'not stated'),
      }),
      isConfirmed: fc.boolean(),
      safetyFactor: fc.constantFrom('of the set', 'of the set', 'none'),
      addition: sometimes(fc.integer({ min: 0, max: 10 })),
      between: fc.constantFrom('interpolate', 'interpolate', 'next-worse'),
      humidity: fc.constantFrom('information', 'virtual temperature'),
      firstPrinciples: fc.constantFrom('information', 'information', 'more adverse'),
      demonstratedCrosswind: fc.constantFrom('limit', 'information'),
      clearance_ft: fc.constantFrom(0, 50, 100),
      personalTailwind: sometimes(fc.integer({ min: 2, max: 10 })),
    })
    .map((any) => ({
      ...any.form,
      [`${table}.includes`]: any.includes,
      ...(any.ownSurfaces === undefined
        ? {}
        : { [`${table}.corrections.surfaces`]: any.ownSurfaces[0].slice(0, any.ownSurfaces[1]) }),
      ...(any.ownSlope === undefined ? {} : { [`${table}.corrections.adverseSlope`]: any.ownSlope }),
      safetyFactor: any.safetyFactor,
      [phase === 'takeoff' ? 'liftOffSpeedAddition' : 'approachSpeedAddition']:
        any.addition === undefined ? undefined : figure(any.addition, 'kt'),
      personalLimits: any.personalTailwind === undefined ? undefined : { tailwind: figure(any.personalTailwind, 'kt') },
      policies: {
        betweenPrintedValues: any.between,
        humidity: any.humidity,
        firstPrinciples: any.firstPrinciples,
        demonstratedCrosswind: any.demonstratedCrosswind,
        verticalClearance: figure(any.clearance_ft, 'ftHeight'),
        approachClearance: figure(any.clearance_ft, 'ftHeight'),
        confirmations: any.isConfirmed ? confirmations : [],
      },
    }));
}

const anyConditions: fc.Arbitrary<Conditions> = fc
  .record({
    from_deg: fc.integer({ min: 1, max: 360 }),
    isVariable: fc.integer({ min: 0, max: 7 }).map((n) => n === 0),
    speed_kt: fc.oneof(fc.integer({ min: 0, max: 14 }), anywhere(0, 8)),
    increment_kt: fc.option(fc.integer({ min: 0, max: 12 }), { nil: undefined }),
    spread: fc.option(fc.tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 60 })), { nil: undefined }),
    temperature_degC: anywhere(-5, 38),
    dryness_degC: anywhere(0, 20),
    qnh_hPa: anywhere(960, 1040),
  })
  .map((any) => ({
    from_deg: any.isVariable ? 'variable' : any.from_deg,
    speed_kt: any.speed_kt,
    gust_kt: any.speed_kt + (any.increment_kt ?? 0),
    gustReported: any.increment_kt !== undefined,
    range_deg: any.isVariable || any.spread === undefined ? undefined : around(any.from_deg, any.spread),
    temperature_degC: any.temperature_degC,
    dewPoint_degC: any.temperature_degC - any.dryness_degC,
    pressure: { qnh_hPa: any.qnh_hPa },
  }));

/** The arc from so much to the left of a direction to so much to its right, north as 360. */
export function around(direction: number, [left, right]: readonly [number, number]): { from: number; to: number } {
  const onCircle = (angle: number) => ((angle + 359) % 360) + 1;
  return { from: onCircle(direction - left), to: onCircle(direction + right) };
}

/** Days all over both aeroplanes, both phases and both sets, most of which have a figure. */
export const anyDay: fc.Arbitrary<Day> = fc
  .record({
    phase: fc.constantFrom('takeoff', 'landing'),
    aeroplane: fc.constantFrom('corran-four', 'skerry-two'),
    factorSet: fc.constantFrom('easa-class-b', 'uk-light-aeroplane-leaflet'),
  })
  .chain(({ phase, aeroplane, factorSet }) => {
    const { lightest_kg, heaviest_kg } = aeroplanes[aeroplane];
    return fc.record({
      phase: fc.constant(phase),
      aeroplane: fc.constant(aeroplane),
      factorSet: fc.constant(factorSet),
      length_m: fc.integer({ min: 400, max: 1600 }),
      clearway_m: fc.constantFrom(0, 0, 60, 300),
      stopway_m: fc.constantFrom(0, 0, 80, 400),
      displaced_m: fc.constantFrom(0, 0, 60),
      elevation_m: anywhere(0, 700),
      obstacle: fc.option(fc.record({ beyond_m: anywhere(0, 1500), height_m: anywhere(0, 40) }), { nil: undefined }),
      mass_kg: anywhere(lightest_kg, heaviest_kg),
      surface: fc.constantFrom(...surfaceChains.flat()),
      adverseSlope_percent: anywhere(-2, 2.4),
      conditions: anyConditions,
      changes: anyChanges({ phase, aeroplane, factorSet }),
    });
  });
