import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  altimeterSettingAsos,
  altimeterSettingAwos,
  altimeterSettingIom19,
  altimeterSettingMadis,
  altimeterSettingNoaa,
  altimeterSettingSmithsonian,
  indicatedAltitude,
  indicatedHeight,
  pressureAltitude,
  pressureAltitudeFromQfe,
  pressureAltitudeNws,
  qfeFromQnh,
  qfeFromStationPressure,
  qnhFromPressureAltitude,
  qnhFromQfe,
  qnhFromStationPressure,
  standardPressure,
  stationPressureAwos,
  stationPressureFromQfe,
  stationPressureFromQnh,
  stationPressureSmithsonian,
} from '../../src/atmosphere/index.ts';
import {
  DomainError,
  elevationInMetresFromFeet,
  ftElevation,
  ftPA,
  hectopascalsFromInchesOfMercury,
  hPa,
  inchesOfMercuryFromHectopascals,
  inHg,
  mElevation,
} from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const elevation = evenly(-2000, 15000).map(ftElevation);
const qnh = evenly(850, 1085).map(hPa);
// Within the round trips, a last bit must not leave the range.
const innerQnh = evenly(851, 1084).map(hPa);

describe('QNH, QFE, station pressure and pressure altitude, ICAO form', () => {
  it('QNH and QFE undo one another', () => {
    fc.assert(
      fc.property(innerQnh, elevation, (q, e) => {
        const qfe = qfeFromQnh({ qnh: q, elevation: e });
        expect(qnhFromQfe({ qfe, elevation: e })).toBeCloseTo(q, 8);
      }),
    );
  });

  it('every QFE and station pressure of an accepted QNH is accepted, ends included', () => {
    for (const q of [850, 1013.25, 1085]) {
      for (const e of [-2000, 0, 15000]) {
        const qfe = qfeFromQnh({ qnh: hPa(q), elevation: ftElevation(e) });
        expect(qnhFromQfe({ qfe, elevation: ftElevation(e) })).toBeCloseTo(q, 8);
        expect(pressureAltitudeFromQfe({ qfe })).toSatisfy(Number.isFinite);
      }
    }
  });

  it('agree on the pressure altitude, whichever of them it comes from', () => {
    fc.assert(
      fc.property(innerQnh, elevation, (q, e) => {
        const fromQnh = pressureAltitude({ elevation: e, qnh: q });
        const qfe = qfeFromQnh({ qnh: q, elevation: e });
        expect(pressureAltitudeFromQfe({ qfe })).toBeCloseTo(fromQnh, 6);
        expect(standardPressure({ pressureAltitude: fromQnh })).toBeCloseTo(qfe, 8);
        fc.pre(fromQnh >= -5000 && fromQnh <= 20000);
        expect(qnhFromPressureAltitude({ pressureAltitude: fromQnh, elevation: e })).toBeCloseTo(q, 8);
      }),
    );
  });

  it('a station pressure at the elevation of the aerodrome is the QFE', () => {
    fc.assert(
      fc.property(innerQnh, elevation, (q, e) => {
        const qfe = qfeFromQnh({ qnh: q, elevation: e });
        const stationPressure = stationPressureFromQnh({ qnh: q, stationElevation: e });
        expect(stationPressure).toBe(qfe);
        expect(qnhFromStationPressure({ stationPressure, stationElevation: e })).toBe(
          qnhFromQfe({ qfe, elevation: e }),
        );
        const again = qfeFromStationPressure({ stationPressure, stationElevation: e, elevation: e });
        expect(again).toBeCloseTo(qfe, 9);
      }),
    );
  });

  it('from the barometer to the threshold and back, and by way of QNH', () => {
    fc.assert(
      fc.property(innerQnh, elevation, elevation, (q, station, threshold) => {
        const stationPressure = stationPressureFromQnh({ qnh: q, stationElevation: station });
        const qfe = qfeFromStationPressure({ stationPressure, stationElevation: station, elevation: threshold });
        expect(qfe).toBeCloseTo(qfeFromQnh({ qnh: q, elevation: threshold }), 8);
        const back = stationPressureFromQfe({ qfe, elevation: threshold, stationElevation: station });
        expect(back).toBeCloseTo(stationPressure, 8);
      }),
    );
  });

  it('QFE falls with the elevation and rises with QNH; at mean sea level it is QNH', () => {
    fc.assert(
      fc.property(qnh, qnh, elevation, elevation, (p, q, low, high) => {
        fc.pre(high - low > 1e-3 && q - p > 1e-3);
        const here: number = qfeFromQnh({ qnh: p, elevation: low });
        expect(qfeFromQnh({ qnh: p, elevation: high })).toBeLessThan(here);
        expect(qfeFromQnh({ qnh: q, elevation: low })).toBeGreaterThan(here);
        expect(qfeFromQnh({ qnh: p, elevation: ftElevation(0) })).toBeCloseTo(p, 9);
      }),
    );
  });

  it('an altimeter shows the elevation on QNH and zero on QFE while it stands on the ground', () => {
    fc.assert(
      fc.property(innerQnh, elevation, (q, e) => {
        const on = { pressureAltitude: pressureAltitude({ elevation: e, qnh: q }) };
        expect(indicatedAltitude({ ...on, qnh: q })).toBeCloseTo(e, 8);
        expect(indicatedHeight({ ...on, qfe: qfeFromQnh({ qnh: q, elevation: e }) })).toBeCloseTo(0, 6);
      }),
    );
  });

  it.each([
    ['qfe', () => qnhFromQfe({ qfe: hPa(1013.25), elevation: ftElevation(5000) })],
    ['qfe', () => qnhFromQfe({ qfe: hPa(700), elevation: ftElevation(0) })],
    ['stationPressure', () => qnhFromStationPressure({ stationPressure: hPa(700), stationElevation: ftElevation(0) })],
    [
      'stationPressure',
      () =>
        qfeFromStationPressure({
          stationPressure: hPa(1000),
          stationElevation: ftElevation(9000),
          elevation: ftElevation(9000),
        }),
    ],
    [
      'qfe',
      () =>
        stationPressureFromQfe({
          qfe: hPa(1000),
          elevation: ftElevation(9000),
          stationElevation: ftElevation(9000),
        }),
    ],
    ['pressureAltitude', () => qnhFromPressureAltitude({ pressureAltitude: ftPA(5000), elevation: ftElevation(0) })],
    ['pressureAltitude', () => qnhFromPressureAltitude({ pressureAltitude: ftPA(0), elevation: ftElevation(5000) })],
    [
      'stationPressure',
      () => altimeterSettingSmithsonian({ stationPressure: hPa(1000), stationElevation: mElevation(3000) }),
    ],
    ['stationPressure', () => altimeterSettingNoaa({ stationPressure: hPa(1000), stationElevation: mElevation(3000) })],
    [
      'stationPressure',
      () => altimeterSettingMadis({ stationPressure: hPa(1000), stationElevation: mElevation(3000) }),
    ],
    [
      'stationPressure',
      () => altimeterSettingIom19({ stationPressure: inHg(29.92), stationElevation: mElevation(3000) }),
    ],
    [
      'stationPressure',
      () => altimeterSettingAsos({ stationPressure: inHg(29.92), stationElevation: ftElevation(9000) }),
    ],
    [
      'stationPressure',
      () => altimeterSettingAwos({ stationPressure: inHg(29.92), stationElevation: ftElevation(9000) }),
    ],
  ])('refuses a %s that stands for a QNH never met', (parameter, call) => {
    const detail = expect.objectContaining({ code: 'inconsistent', parameter });
    expect(call).toThrow(DomainError);
    expect(call).toThrow(expect.objectContaining({ detail }));
    expect(call).toThrow(/QNH 850 hPa to 1085 hPa at this elevation/);
  });
});

describe('the other forms of the altimeter setting', () => {
  const station = fc.record({
    q: innerQnh,
    e: evenly(-1000, 10000).map(ftElevation),
  });

  it('the Smithsonian form undoes itself, and so does that of AWOS', () => {
    fc.assert(
      fc.property(station, ({ q, e }) => {
        const stationElevation = elevationInMetresFromFeet(e);
        const inFeet = { stationElevation: e };
        const p = stationPressureSmithsonian({ altimeterSetting: q, stationElevation });
        fc.pre(q < 1083.5);
        expect(altimeterSettingSmithsonian({ stationPressure: p, stationElevation })).toBeCloseTo(q, 8);
        const a = inchesOfMercuryFromHectopascals(q);
        const P = stationPressureAwos({ altimeterSetting: a, ...inFeet });
        expect(altimeterSettingAwos({ stationPressure: P, ...inFeet })).toBeCloseTo(a, 9);
      }),
    );
  });

  it('lie within 0.45 hPa of the ICAO form to 10 000 ft, each by its own difference', () => {
    fc.assert(
      fc.property(station, ({ q, e }) => {
        const p = stationPressureFromQnh({ qnh: q, stationElevation: e });
        const inMetres = { stationPressure: p, stationElevation: elevationInMetresFromFeet(e) };
        const P = inchesOfMercuryFromHectopascals(p);
        const inFeet = { stationPressure: P, stationElevation: e };
        const difference = (setting: number) => setting - q;
        expect(difference(altimeterSettingSmithsonian(inMetres))).toBeGreaterThan(-0.45);
        expect(difference(altimeterSettingSmithsonian(inMetres))).toBeLessThan(-0.15);
        expect(Math.abs(difference(altimeterSettingNoaa(inMetres)))).toBeLessThan(0.45);
        expect(Math.abs(difference(altimeterSettingMadis(inMetres)))).toBeLessThan(0.45);
        const iom: number = altimeterSettingIom19({
          stationPressure: P,
          stationElevation: inMetres.stationElevation,
        });
        expect(Math.abs(iom * 33.86388640341 - q)).toBeLessThan(0.45);
        const asos: number = hectopascalsFromInchesOfMercury(altimeterSettingAsos(inFeet));
        const awos: number = hectopascalsFromInchesOfMercury(altimeterSettingAwos(inFeet));
        expect(Math.abs(difference(asos))).toBeLessThan(0.2);
        expect(Math.abs(difference(awos))).toBeLessThan(0.1);
      }),
    );
  });

  it('take the gas constant that the published examples agree with, and the constants of NOAA as printed', () => {
    const n = 0.1902595366409528;
    expect((n * 9.80665) / 0.0065).toBeCloseTo(287.04749, 10);
    expect((1013.25 ** 0.190284 * 0.0065) / 288).toBeCloseTo(8.42288069e-5, 13);
    expect((1013.25 ** 0.190284 * 0.0065) / 288.15).toBeCloseTo(8.4184960528e-5, 14);
  });

  it('ASOS is not its own inverse: at zero elevation it adds 0.0025 inHg', () => {
    const asos = altimeterSettingAsos({ stationPressure: inHg(28), stationElevation: ftElevation(0) });
    const awos = altimeterSettingAwos({ stationPressure: inHg(28), stationElevation: ftElevation(0) });
    expect(asos - 28).toBeCloseTo(0.0025, 4);
    expect(awos).toBeCloseTo(28, 12);
  });

  it('the pressure altitude of the National Weather Service is within 0.8 ft of the exact one from 28 to 31 inHg', () => {
    fc.assert(
      fc.property(evenly(28, 31), elevation, (a, e) => {
        const setting = hectopascalsFromInchesOfMercury(inHg(a));
        const exact: number = pressureAltitude({ elevation: e, qnh: setting });
        const nws: number = pressureAltitudeNws({ elevation: e, altimeterSetting: setting });
        expect(Math.abs(nws - exact)).toBeLessThan(0.8);
      }),
    );
  });
});
