import { describe, expect, it } from 'vitest';
import { bracketPrepared, calibrationTable, interpolateCell, preparedCalibration } from '../../src/aircraft/index.ts';
import { performanceDocument } from './documents.ts';

const data = performanceDocument('linnet-two');

describe('the calibration of a flap setting', () => {
  it('is a table on indicated airspeed, of that setting', () => {
    // As the example prints them for flap 2.
    expect(calibrationTable(data, '2')).toEqual({
      axes: [{ quantity: 'indicatedAirspeed', unit: 'kias', values: [30, 40, 50, 60] }],
      unit: 'kcas',
      cells: [36, 43.5, 52, 61],
    });
    expect(calibrationTable(data, '3')).toBeUndefined();
    expect(preparedCalibration(data, '3')).toBeUndefined();
  });

  it('is read between printed speeds and refused beyond either end', () => {
    const prepared = preparedCalibration(data, '2');
    if (prepared === undefined) throw new Error('no calibration');
    const at = (indicatedAirspeed: number) => {
      const reading = bracketPrepared(prepared, { indicatedAirspeed });
      return reading.ok ? interpolateCell(reading.cell) : reading.reason;
    };
    expect([at(30), at(45), at(60)]).toEqual([36, 47.75, 61]);
    expect([at(29.9), at(60.1)]).toEqual(['off-edge', 'off-edge']);
  });
});
