import fc from 'fast-check';
import type { Chart, Table } from '../../src/aircraft/index.ts';

/** The places at which a manual would print or draw a law. */
export interface Places {
  readonly temperature: readonly number[];
  readonly pressureAltitude: readonly number[];
  readonly mass: readonly number[];
  readonly headwind: readonly number[];
}

/** A distance in metres as a law: at the reference mass and wind first, then what mass and wind make of that. */
export interface Law {
  readonly base: (temperature: number, pressureAltitude: number) => number;
  readonly byMass: (ordinate: number, mass: number) => number;
  readonly byWind: (ordinate: number, headwind: number) => number;
  readonly reference: { readonly mass: number; readonly headwind: number };
}

export interface At {
  readonly temperature: number;
  readonly pressureAltitude: number;
  readonly mass: number;
  readonly headwind: number;
}

/** What the law itself gives. */
export const exactly = ({ base, byMass, byWind }: Law, at: At) =>
  byWind(byMass(base(at.temperature, at.pressureAltitude), at.mass), at.headwind);

const units = { temperature: 'degC', pressureAltitude: 'ftPA', mass: 'kg', headwind: 'kt' } as const;
const scale = <Q extends keyof typeof units>(quantity: Q) => ({ quantity, unit: units[quantity] });

/** The law as a printed table on four axes. */
export function gridOf(law: Law, places: Places): Table<'m'> {
  const axes = (['mass', 'pressureAltitude', 'temperature', 'headwind'] as const).map((quantity) => ({
    ...scale(quantity),
    values: places[quantity],
  }));
  const cells = places.mass.map((mass) =>
    places.pressureAltitude.map((pressureAltitude) =>
      places.temperature.map((temperature) =>
        places.headwind.map((headwind) => exactly(law, { temperature, pressureAltitude, mass, headwind })),
      ),
    ),
  );
  return { axes, unit: 'm', cells };
}

/** The law as a chart: a panel of curves, then a panel of guide lines through the given ordinates for mass and for wind. */
export function chartOf(
  law: Law,
  places: Places,
  ordinates: readonly number[],
  family: 'pressureAltitude' | 'temperature' = 'pressureAltitude',
): Chart<'m'> {
  const { base, byMass, byWind, reference } = law;
  const along = family === 'temperature' ? 'pressureAltitude' : 'temperature';
  const ordinate = (at: number, of: number) => (family === 'temperature' ? base(of, at) : base(at, of));
  const guides = (values: readonly number[], from: (ordinate: number, value: number) => number) =>
    ordinates.map((each) => values.map((value) => [value, from(each, value)] as const));
  return {
    panels: [
      {
        along: scale(along),
        family: scale(family),
        curves: places[family].map((of) => ({
          at: of,
          points: places[along].map((at) => [at, ordinate(at, of)] as const),
        })),
      },
      { along: scale('mass'), referenceLine: reference.mass, guides: guides(places.mass, byMass) },
      { along: scale('headwind'), referenceLine: reference.headwind, guides: guides(places.headwind, byWind) },
    ],
    unit: 'm',
  };
}

/** Evenly spread: floating-point numbers drawn as such are mostly next to nothing. */
export const anywhere = (min: number, max: number) =>
  fc.integer({ min: 0, max: 1_000_000 }).map((n) => min + ((max - min) * n) / 1_000_000);

/** Places as a manual might choose them, not evenly spaced. */
export const printed: Places = {
  temperature: [-10, 5, 20, 40],
  pressureAltitude: [0, 1500, 4000],
  mass: [800, 870, 1000],
  headwind: [-8, 0, 10, 15],
};

/** The straight line through the values given at the places. */
function straightBetween(places: readonly number[], values: readonly number[]): (x: number) => number {
  return (x) => {
    const i = Math.max(
      1,
      places.findIndex((place) => place >= x),
    );
    const [x1, x2] = [places[i - 1], places[i]] as [number, number];
    const [y1, y2] = [values[i - 1], values[i]] as [number, number];
    return y1 + ((y2 - y1) * (x - x1)) / (x2 - x1);
  };
}

/** Corners at every place printed, straight in between; mass and wind in proportion to the ordinate. */
export const straightLaw = fc
  .record({
    least_m: anywhere(200, 400),
    rises: fc.array(anywhere(0, 0.2), { minLength: 3 + 2 + 2 + 3, maxLength: 3 + 2 + 2 + 3 }),
    reference: fc.record({ mass: fc.constantFrom(...printed.mass), headwind: fc.constantFrom(...printed.headwind) }),
  })
  .map(({ least_m, rises, reference }): Law => {
    const climbing = (from: number, to: number) =>
      Array.from({ length: to - from + 1 }, (_, i) => rises.slice(from, from + i).reduce((sum, rise) => sum + rise, 1));
    const heat = straightBetween(printed.temperature, climbing(0, 3));
    const height = straightBetween(printed.pressureAltitude, climbing(3, 5));
    const mass = straightBetween(printed.mass, climbing(5, 7));
    const wind = straightBetween(printed.headwind, climbing(7, 10).reverse());
    return {
      base: (temperature, pressureAltitude) =>
        least_m * heat(temperature) * height(pressureAltitude) * mass(reference.mass) * wind(reference.headwind),
      byMass: (ordinate, kg) => (ordinate * mass(kg)) / mass(reference.mass),
      byWind: (ordinate, kt) => (ordinate * wind(kt)) / wind(reference.headwind),
      reference,
    };
  });
