import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as units from '../../src/units/index.ts';
import { DomainError, decimalYear } from '../../src/units/index.ts';

const constructors = {
  degLatitude: units.degLatitude,
  degLongitude: units.degLongitude,
  deg: units.degrees,
  rad: units.radians,
  degPerYear: units.degPerYear,
  degPerS: units.degPerS,
  radPerS: units.radPerS,
  m2: units.m2,
  L: units.litres,
  USgal: units.usGallons,
  kgPerM3: units.kgPerM3,
  slugPerFt3: units.slugPerFt3,
  NPerM2: units.NPerM2,
  lbfPerFt2: units.lbfPerFt2,
  mps2: units.mps2,
  ftPerS2: units.ftPerS2,
  s2PerM2: units.s2PerM2,
  s2PerFt2: units.s2PerFt2,
  mpsTAS: units.mpsTAS,
  ftPerSTAS: units.ftPerSTAS,
  N: units.newtons,
  kgPerM: units.kgPerM,
  degEast: units.degEast,
  degEastPerYear: units.degEastPerYear,
  degMagnetic: units.degMagnetic,
  degTrue: units.degTrue,
  NM: units.NM,
  ft: units.ft,
  ftDA: units.ftDA,
  mDA: units.mDA,
  ftGeopotential: units.ftGeopotential,
  mGeopotential: units.mGeopotential,
  ftGeometric: units.ftGeometric,
  mGeometric: units.mGeometric,
  ftElevation: units.ftElevation,
  ftHeight: units.ftHeight,
  ftPA: units.ftPA,
  km: units.km,
  m: units.m,
  mElevation: units.mElevation,
  mHeight: units.mHeight,
  mPA: units.mPA,
  nT: units.nanotesla,
  nTPerYear: units.nanoteslaPerYear,
  kg: units.kg,
  lb: units.lb,
  hPa: units.hPa,
  inHg: units.inHg,
  Pa: units.Pa,
  psf: units.psf,
  PaS: units.PaS,
  slugPerFtS: units.slugPerFtS,
  m2PerS: units.m2PerS,
  ft2PerS: units.ft2PerS,
  psi: units.psi,
  inH2O: units.inH2O,
  ftPerHPa: units.ftPerHPa,
  ftPerNM: units.ftPerNM,
  percent: units.percent,
  ratio: units.ratio,
  kcas: units.kcas,
  keas: units.keas,
  kias: units.kias,
  kt: units.kt,
  ktGS: units.ktGS,
  ktas: units.ktas,
  mph: units.mph,
  mps: units.mps,
  ftPerS: units.ftPerS,
  degC: units.degC,
  degCDifference: units.degCDifference,
  degF: units.degF,
  K: units.kelvin,
  degR: units.degR,
  min: units.minutes,
  s: units.seconds,
  ftPerMin: units.ftPerMin,
  mpsVertical: units.mpsVertical,
  year: decimalYear,
} satisfies { readonly [U in units.UnitWord]: (value: number) => units.Quantity<U> };

describe.each(Object.entries(constructors))('the constructor of %s', (unit, construct) => {
  it('gives back the very number', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        expect(construct(value)).toBe(value);
      }),
    );
  });

  it.each([
    [Number.NaN, 'not-finite', 'NaN'],
    [Number.POSITIVE_INFINITY, 'not-finite', 'Infinity'],
    [Number.NEGATIVE_INFINITY, 'not-finite', '-Infinity'],
    ['12', 'not-a-number', '12'],
    [undefined, 'not-a-number', 'undefined'],
    [null, 'not-a-number', 'null'],
    [[12], 'not-a-number', '12'],
    [true, 'not-a-number', 'true'],
  ])('refuses %o', (value, code, received) => {
    const detail = expect.objectContaining({ code, parameter: unit, received, unit });
    expect(() => construct(value as number)).toThrow(DomainError);
    expect(() => construct(value as number)).toThrow(expect.objectContaining({ detail }));
  });
});
