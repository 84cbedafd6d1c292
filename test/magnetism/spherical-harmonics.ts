import { readFileSync } from 'node:fs';

// The magnetic field from the equations of the World Magnetic Model's technical report, written for the tests alone and
// by another road than the package's: associated Legendre functions from their definition as derivatives of a
// polynomial, instead of a recursion in degree and order, and their slope from the next higher degree.

/** Degree, order, g, h, and the change of both in a year. */
export type CoefficientRow = readonly [number, number, number, number, number, number];

/** Components of the field in nT: north, east, down. */
export interface Components {
  readonly north: number;
  readonly east: number;
  readonly down: number;
}

/**
 * wmm2025-coefficients.csv: the 90 rows of the coefficient file WMM.COF that the producers of the World Magnetic Model
 * published for WMM2025 (header "2025.0 WMM-2025 11/13/2024"), as comma-separated values. Public domain.
 */
export function publishedCoefficients(): CoefficientRow[] {
  const text = readFileSync(new URL('./wmm2025-coefficients.csv', import.meta.url), 'utf8');
  // Printed as -0.0 here and there, which is no other coefficient than 0.
  const numbers = (line: string) => line.split(',').map((word) => Number(word) + 0);
  return text
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => numbers(line) as unknown as CoefficientRow);
}

const degree = 12;
const referenceRadius_km = 6371.2;
const semiMajorAxis_km = 6378.137;
const flattening = 1 / 298.257223563;
const eccentricitySquared = flattening * (2 - flattening);

const rad = (angle: number) => (angle * Math.PI) / 180;

/** Coefficients of the d-th derivative of (x² − 1)ⁿ/(2ⁿ n!), by powers of x: Rodrigues' formula. */
function derivativeOfRodrigues(n: number, d: number): number[] {
  let polynomial = [1];
  for (let factor = 1; factor <= n; factor += 1) {
    const product: number[] = new Array(polynomial.length + 2).fill(0);
    for (const [power, c] of polynomial.entries()) {
      product[power] = (product[power] ?? 0) - c / (2 * factor);
      product[power + 2] = (product[power + 2] ?? 0) + c / (2 * factor);
    }
    polynomial = product;
  }
  for (let i = 0; i < d; i += 1) polynomial = polynomial.slice(1).map((c, power) => c * (power + 1));
  return polynomial;
}

const derivatives = new Map<string, readonly number[]>();

/** The Schmidt semi-normalised associated Legendre function of the sine of a latitude. */
function schmidt(n: number, m: number, latitude_rad: number): number {
  if (m > n) return 0;
  const key = `${n},${m}`;
  const known = derivatives.get(key) ?? derivativeOfRodrigues(n, n + m);
  derivatives.set(key, known);
  const x = Math.sin(latitude_rad);
  const value = known.reduceRight((sum, c) => sum * x + c, 0) * Math.cos(latitude_rad) ** m;
  let ratio = 1;
  for (let k = n - m + 1; k <= n + m; k += 1) ratio *= k;
  return m === 0 ? value : value * Math.sqrt(2 / ratio);
}

/** The slope of {@link schmidt} along the latitude, by the function of the next higher degree. */
function schmidtSlope(n: number, m: number, latitude_rad: number): number {
  const higher = Math.sqrt((n + 1) ** 2 - m ** 2) * schmidt(n + 1, m, latitude_rad);
  return (n + 1) * Math.tan(latitude_rad) * schmidt(n, m, latitude_rad) - higher / Math.cos(latitude_rad);
}

/** The field at a geodetic position, in degrees and kilometres above the ellipsoid, so many years after the epoch. */
export function fieldByHarmonics(
  coefficients: readonly CoefficientRow[],
  position: { readonly latitude: number; readonly longitude: number; readonly height_km: number },
  years: number,
): Components {
  const latitude = rad(position.latitude);
  const longitude = rad(position.longitude);
  const normal = semiMajorAxis_km / Math.sqrt(1 - eccentricitySquared * Math.sin(latitude) ** 2);
  const p = (normal + position.height_km) * Math.cos(latitude);
  const z = (normal * (1 - eccentricitySquared) + position.height_km) * Math.sin(latitude);
  const radius = Math.hypot(p, z);
  const geocentric = Math.asin(z / radius);

  let north = 0;
  let east = 0;
  let down = 0;
  for (const [n, m, g0, h0, gChange, hChange] of coefficients) {
    if (n > degree) throw new Error(`degree ${n}`);
    const g = g0 + years * gChange;
    const h = h0 + years * hChange;
    const shrink = (referenceRadius_km / radius) ** (n + 2);
    const along = g * Math.cos(m * longitude) + h * Math.sin(m * longitude);
    const across = g * Math.sin(m * longitude) - h * Math.cos(m * longitude);
    const legendre = schmidt(n, m, geocentric);
    north -= shrink * along * schmidtSlope(n, m, geocentric);
    east += (shrink * m * across * legendre) / Math.cos(geocentric);
    down -= (n + 1) * shrink * along * legendre;
  }
  // From the vertical of the sphere to that of the ellipsoid.
  const turn = geocentric - latitude;
  return {
    north: north * Math.cos(turn) - down * Math.sin(turn),
    east,
    down: north * Math.sin(turn) + down * Math.cos(turn),
  };
}
