import { groundRoll, standardGravity } from '../dynamics/index.ts';
import { kg, kgPerM, kgPerM3, kt, ktas, m2, newtons, percent, ratio } from '../units/index.ts';

/** What decides how a ground roll answers to wind and mass, without dimension. */
export interface RollOfExample {
  /** Share of the first acceleration that is lost by lift-off at the reference mass; 0 for uniform acceleration. */
  readonly accelerationLost: number;
  /** Share of the static thrust that rolling friction takes at the reference mass. */
  readonly frictionShare: number;
  /** Mass over the reference mass. */
  readonly massRatio: number;
  readonly liftOffSpeed_kt: number;
  readonly headwind_kt: number;
}

/**
 * Ground roll in m, from the forces, of an aeroplane made up to have these shares. All that grows with the square of the
 * speed is put into its thrust law; its size and its power cancel from every ratio of two rolls.
 */
export function rollOfExample_m(x: RollOfExample): number {
  const reference_kg = 1000;
  const thrust_N = 0.3 * reference_kg * standardGravity;
  const speed_mps = (x.liftOffSpeed_kt * 1852) / 3600;
  const acceleration_mps2 = (thrust_N / reference_kg) * (1 - x.frictionShare);
  const lost_kgPerM = (-x.accelerationLost * acceleration_mps2 * reference_kg) / speed_mps ** 2;
  return groundRoll({
    mass: kg(reference_kg * x.massRatio),
    liftOffSpeed: ktas(x.liftOffSpeed_kt * Math.sqrt(x.massRatio)),
    staticThrust: newtons(thrust_N),
    thrustChange: kgPerM(lost_kgPerM),
    wingArea: m2(15),
    density: kgPerM3(1.225),
    liftCoefficient: ratio(0),
    dragCoefficient: ratio(0),
    rollingFriction: ratio(0.3 * x.frictionShare),
    slope: percent(0),
    headwind: kt(x.headwind_kt),
  }).distance;
}
