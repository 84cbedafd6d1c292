import { standardGravity as g_mps2 } from './standard-gravity.ts';

/** The angle of a slope by its cosine and its sine. */
export interface Incline {
  readonly cosine: number;
  readonly sine: number;
}

export function inclineOf(slope_percent: number): Incline {
  const theta_rad = Math.atan(slope_percent / 100);
  return { cosine: Math.cos(theta_rad), sine: Math.sin(theta_rad) };
}

/** What friction and slope take off the acceleration: g (μ cos θ + sin θ). */
export function resistance_mps2({ cosine, sine }: Incline, mu: number): number {
  return g_mps2 * (mu * cosine + sine);
}
