import {
  type Domain,
  demand,
  demandWord,
  type Knots,
  type MagneticDirection,
  type Metres,
  type Numbers,
  type Seconds,
  type TrueAirspeed,
  type TrueDirection,
} from '../units/index.ts';
import type { Same } from './components.ts';
import { onCompass, type WindTriangle, windTriangle } from './wind-triangle.ts';

/** The sides of the turns of a circuit. */
export const circuits = ['left', 'right'] as const;

/** The side to which the turns of a circuit are made. */
export type Circuit = 'left' | 'right';

/** The legs of a circuit in the order in which they are flown; `upwind` is the climb straight ahead after take-off. */
export type CircuitLegName = 'upwind' | 'crosswind' | 'downwind' | 'base' | 'final';

/** Inputs of {@link circuitLeg}. */
export interface CircuitLegInputs<N extends TrueDirection | MagneticDirection = TrueDirection | MagneticDirection> {
  readonly leg: CircuitLegName;
  readonly circuit: Circuit;
  /** Direction of the runway in use, against the same north as the wind. */
  readonly direction: Same<N>;
  /** Direction the wind blows from. */
  readonly from: N;
  /** Speed of the wind at the height of the leg. */
  readonly speed: Knots;
  readonly trueAirspeed: TrueAirspeed;
  /** Length of the leg over the ground. */
  readonly length: Metres;
}

/** One leg of a circuit in the wind. */
export interface CircuitLeg<N extends TrueDirection | MagneticDirection = TrueDirection | MagneticDirection>
  extends WindTriangle<N> {
  readonly leg: CircuitLegName;
  /** Above 0° up to 360°, against the same north as the wind. */
  readonly track: N;
  readonly time: Seconds;
}

/** Inputs of {@link circuitLegs}. */
export interface CircuitLegsInputs<N extends TrueDirection | MagneticDirection = TrueDirection | MagneticDirection>
  extends Omit<CircuitLegInputs<N>, 'leg' | 'trueAirspeed' | 'length'> {
  /** Length over the ground and true airspeed of each leg. */
  readonly legs: {
    readonly [L in CircuitLegName]: { readonly length: Metres; readonly trueAirspeed: TrueAirspeed };
  };
}

export const circuitLegDomain = {
  direction: { unit: 'deg', min: 0, max: 360, source: 'compass circle' },
  from: { unit: 'deg', min: 0, max: 360, source: 'compass circle' },
  speed: { unit: 'kt', min: 0, max: 200, source: 'library range' },
  trueAirspeed: { unit: 'ktas', min: 10, max: 500, source: 'library range' },
  length: { unit: 'm', min: 0, max: 20000, source: 'library range' },
} satisfies Domain<CircuitLegInputs>;

/** Degrees turned from the runway direction to the track of the leg in a circuit to the left. */
const turnedToTheLeft: { readonly [L in CircuitLegName]: number } = {
  upwind: 0,
  crosswind: -90,
  downwind: 180,
  base: 90,
  final: 0,
};

const legNames: readonly CircuitLegName[] = ['upwind', 'crosswind', 'downwind', 'base', 'final'];

/**
 * Track, heading, drift, ground speed and time on one leg of a circuit in the wind.
 *
 * The track θ is the runway direction on the upwind leg and on final, 90° from it on the crosswind and the base leg, and
 * opposite to it downwind; heading, drift and ground speed V_G are those of {@link windTriangle}; t = d / V_G: d the
 * length of the leg over the ground in m, V_G given in kt and taken in m/s. The turns between the legs are not in it.
 *
 * @param x - `leg`, `circuit` `'left'` or `'right'`, `direction` and `from` 0° to 360° against the same north, `speed` 0 kt
 * to 200 kt, `trueAirspeed` 10 KTAS to 500 KTAS, `length` 0 m to 20 000 m.
 * @returns The leg with `track` and `heading` above 0° up to 360°, `windCorrectionAngle` and `drift` in degrees, to the
 * right positive, `groundSpeed` in kt and `time` in s.
 * @throws {@link DomainError} when a parameter is not within its range, and with code `inconsistent` when the wind across
 * the track exceeds the true airspeed or leaves no ground speed.
 * @record wind.circuit-leg
 *
 * @example
 * circuitLeg({ leg: 'base', circuit: 'left', direction: degMagnetic(280), from: degMagnetic(230), speed: kt(15), trueAirspeed: ktas(70), length: m(900) }).heading // ≈ 2.08 ± 0.01
 * circuitLeg({ leg: 'base', circuit: 'left', direction: degMagnetic(280), from: degMagnetic(230), speed: kt(15), trueAirspeed: ktas(70), length: m(900) }).time // ≈ 21.65 ± 0.01
 */
export function circuitLeg<N extends TrueDirection | MagneticDirection>(x: CircuitLegInputs<N>): CircuitLeg<N> {
  demandWord('leg', x.leg, legNames, 'the legs of a circuit');
  demandWord('circuit', x.circuit, circuits, 'the side of the turns');
  demand('direction', x.direction, circuitLegDomain.direction);
  demand('length', x.length, circuitLegDomain.length);
  const { leg, from, speed, trueAirspeed } = x;
  const { direction: direction_deg, length: length_m }: Numbers<CircuitLegInputs> = x;
  const turned_deg = x.circuit === 'left' ? turnedToTheLeft[leg] : -turnedToTheLeft[leg];
  const track = onCompass(direction_deg + turned_deg) as Same<N>;
  const { windCorrectionAngle, drift, heading, groundSpeed } = windTriangle({ from, speed, track, trueAirspeed });
  const groundSpeed_mps = (groundSpeed * 1852) / 3600;
  const time = length_m / groundSpeed_mps;
  return { leg, track, windCorrectionAngle, drift, heading, groundSpeed, time } as CircuitLeg<N>;
}

/**
 * The five legs of a circuit in the wind, in the order in which they are flown. Each is that of {@link circuitLeg}.
 *
 * @param x - `circuit`, `direction`, `from` and `speed` as for {@link circuitLeg}; `legs` with `length` and `trueAirspeed`
 * of each leg, within the same ranges.
 * @returns The legs from `upwind` to `final`.
 * @throws {@link DomainError} as {@link circuitLeg}; a length or a true airspeed is named by its leg.
 * @record wind.circuit-leg
 *
 * @example
 * const legs = { upwind: { length: m(900), trueAirspeed: ktas(65) }, crosswind: { length: m(900), trueAirspeed: ktas(70) }, downwind: { length: m(2400), trueAirspeed: ktas(85) }, base: { length: m(900), trueAirspeed: ktas(70) }, final: { length: m(1000), trueAirspeed: ktas(65) } }
 * circuitLegs({ circuit: 'left', direction: degMagnetic(280), from: degMagnetic(230), speed: kt(15), legs }).map(({ time }) => Math.round(time)) // => [32, 30, 50, 22, 36]
 */
export function circuitLegs<N extends TrueDirection | MagneticDirection>(
  x: CircuitLegsInputs<N>,
): readonly CircuitLeg<N>[] {
  const { circuit, direction, from, speed, legs } = x;
  return legNames.map((leg) => {
    const { length, trueAirspeed } = legs?.[leg] ?? {};
    demand(`legs.${leg}.length`, length as Metres, circuitLegDomain.length);
    demand(`legs.${leg}.trueAirspeed`, trueAirspeed as TrueAirspeed, circuitLegDomain.trueAirspeed);
    return circuitLeg<N>({ leg, circuit, direction, from, speed, length, trueAirspeed } as CircuitLegInputs<N>);
  });
}
