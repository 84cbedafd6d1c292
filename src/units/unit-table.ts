/** What a unit word means: (value + offset) x scale is the value in the base unit of its kind, whose scale is 1. */
export interface UnitEntry {
  readonly kind: string;
  readonly scale: number;
  readonly offset?: number;
  /** Values this far apart are the same: a direction of 361° is one of 1°. */
  readonly circle?: number;
}

/**
 * Every unit word with the kind of quantity it measures and its size in that kind's base unit. Two kinds never
 * convert into each other. Only readers of documents and of check values need this table; formulas convert
 * through the pairwise functions.
 */
export const unitTable = {
  m: { kind: 'length', scale: 1 },
  ft: { kind: 'length', scale: 0.3048 },
  km: { kind: 'length', scale: 1000 },
  NM: { kind: 'length', scale: 1852 },
  ftElevation: { kind: 'elevation', scale: 0.3048 },
  mElevation: { kind: 'elevation', scale: 1 },
  ftHeight: { kind: 'height', scale: 0.3048 },
  mHeight: { kind: 'height', scale: 1 },
  ftPA: { kind: 'pressure altitude', scale: 0.3048 },
  mPA: { kind: 'pressure altitude', scale: 1 },
  ftDA: { kind: 'density altitude', scale: 0.3048 },
  mDA: { kind: 'density altitude', scale: 1 },
  ftGeopotential: { kind: 'geopotential altitude', scale: 0.3048 },
  mGeopotential: { kind: 'geopotential altitude', scale: 1 },
  ftGeometric: { kind: 'geometric altitude', scale: 0.3048 },
  mGeometric: { kind: 'geometric altitude', scale: 1 },
  kt: { kind: 'speed', scale: 1852 / 3600 },
  mph: { kind: 'speed', scale: 1609.344 / 3600 },
  mps: { kind: 'speed', scale: 1 },
  ftPerS: { kind: 'speed', scale: 0.3048 },
  kias: { kind: 'indicated airspeed', scale: 1 },
  kcas: { kind: 'calibrated airspeed', scale: 1 },
  keas: { kind: 'equivalent airspeed', scale: 1 },
  ktas: { kind: 'true airspeed', scale: 1852 / 3600 },
  mpsTAS: { kind: 'true airspeed', scale: 1 },
  ftPerSTAS: { kind: 'true airspeed', scale: 0.3048 },
  ktGS: { kind: 'ground speed', scale: 1 },
  ftPerMin: { kind: 'vertical speed', scale: 0.3048 / 60 },
  mpsVertical: { kind: 'vertical speed', scale: 1 },
  degC: { kind: 'temperature', scale: 1, offset: 273.15 },
  degF: { kind: 'temperature', scale: 5 / 9, offset: 459.67 },
  K: { kind: 'temperature', scale: 1 },
  degR: { kind: 'temperature', scale: 5 / 9 },
  degCDifference: { kind: 'temperature difference', scale: 1 },
  hPa: { kind: 'pressure', scale: 1 },
  inHg: { kind: 'pressure', scale: 33.86388640341 },
  Pa: { kind: 'pressure', scale: 0.01 },
  psf: { kind: 'pressure', scale: (0.45359237 * 9.80665) / 0.3048 ** 2 / 100 },
  // Pounds-force on a square inch, in hectopascals.
  psi: { kind: 'pressure', scale: (0.45359237 * 9.80665) / 0.0254 ** 2 / 100 },
  inH2O: { kind: 'pressure', scale: 1013.25 / 407.513 },
  ftPerHPa: { kind: 'height for a pressure', scale: 1 },
  kg: { kind: 'mass', scale: 1 },
  lb: { kind: 'mass', scale: 0.45359237 },
  deg: { kind: 'angle', scale: 1 },
  rad: { kind: 'angle', scale: 180 / Math.PI },
  degPerYear: { kind: 'change of an angle', scale: 1 },
  degPerS: { kind: 'angular speed', scale: 1 },
  radPerS: { kind: 'angular speed', scale: 180 / Math.PI },
  degLatitude: { kind: 'latitude', scale: 1 },
  degLongitude: { kind: 'longitude', scale: 1, circle: 360 },
  degTrue: { kind: 'true direction', scale: 1, circle: 360 },
  degMagnetic: { kind: 'magnetic direction', scale: 1, circle: 360 },
  degEast: { kind: 'variation', scale: 1, circle: 360 },
  degEastPerYear: { kind: 'change of variation', scale: 1 },
  ratio: { kind: 'ratio', scale: 1 },
  percent: { kind: 'ratio', scale: 0.01 },
  ftPerNM: { kind: 'ratio', scale: 0.3048 / 1852 },
  kgPerM3: { kind: 'density', scale: 1 },
  // A slug is the mass that one pound-force accelerates by one foot per second squared.
  slugPerFt3: { kind: 'density', scale: (0.45359237 * 9.80665) / 0.3048 ** 4 },
  PaS: { kind: 'dynamic viscosity', scale: 1 },
  slugPerFtS: { kind: 'dynamic viscosity', scale: (0.45359237 * 9.80665) / 0.3048 ** 2 },
  m2PerS: { kind: 'kinematic viscosity', scale: 1 },
  ft2PerS: { kind: 'kinematic viscosity', scale: 0.3048 ** 2 },
  NPerM2: { kind: 'wing loading', scale: 1 },
  lbfPerFt2: { kind: 'wing loading', scale: (0.45359237 * 9.80665) / 0.3048 ** 2 },
  mps2: { kind: 'acceleration', scale: 1 },
  ftPerS2: { kind: 'acceleration', scale: 0.3048 },
  s2PerM2: { kind: 'inverse square of speed', scale: 1 },
  s2PerFt2: { kind: 'inverse square of speed', scale: 1 / 0.3048 ** 2 },
  m2: { kind: 'area', scale: 1 },
  L: { kind: 'volume', scale: 1 },
  USgal: { kind: 'volume', scale: 3.785411784 },
  N: { kind: 'force', scale: 1 },
  kgPerM: { kind: 'force per square of speed', scale: 1 },
  s: { kind: 'time', scale: 1 },
  min: { kind: 'time', scale: 60 },
  year: { kind: 'date', scale: 1 },
  nT: { kind: 'magnetic field', scale: 1 },
  nTPerYear: { kind: 'change of a magnetic field', scale: 1 },
} as const satisfies Record<string, UnitEntry>;

/** Every unit word that a tag or a document may carry. */
export type UnitWord = keyof typeof unitTable;

/** Whether a text is a unit word. */
export function isUnitWord(text: string): text is UnitWord {
  return Object.hasOwn(unitTable, text);
}

/** A value of one unit in another of the same kind; the very same value where the units are equal. */
export function convert(value: number, from: UnitWord, to: UnitWord): number | undefined {
  if (from === to) return value;
  const a: UnitEntry = unitTable[from];
  const b: UnitEntry = unitTable[to];
  if (a.kind !== b.kind) return undefined;
  return ((value + (a.offset ?? 0)) * a.scale) / b.scale - (b.offset ?? 0);
}
