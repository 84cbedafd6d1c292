// Between Arrow and columns: a unit is metadata of its field, a null is NaN on the way in and `hasFigure` on the way out.

import { Dictionary, Field, Float64, makeData, Uint8, Utf8, vectorFromArray } from 'apache-arrow';
import { verdictWords } from 'groundroll/columns';

/** A field of figures with its unit. */
export const figures = (name, unit) => new Field(name, new Float64(), true, new Map([['unit', unit]]));

/** A column of a record batch. It shares the batch's memory where nothing is null; its unit is checked by whoever uses it. */
export function columnOf(batch, name) {
  const field = batch.schema.fields.find((each) => each.name === name);
  const vector = batch.getChild(name);
  if (field === undefined || vector === null) throw new Error(`no column ${name}`);
  const unit = field.metadata.get('unit');
  const [data] = vector.data;
  if (vector.nullCount === 0) return { unit, values: data.values.subarray(0, data.length) };
  return { unit, values: Float64Array.from(vector, (value) => value ?? Number.NaN) };
}

/** Figures with the places at which there are some, one bit a row, as Arrow keeps them; no figure is copied. */
export function dataOf(values, hasFigure) {
  const nullBitmap = new Uint8Array(Math.ceil(values.length / 8));
  let nullCount = 0;
  for (let row = 0; row < values.length; row += 1) {
    if (hasFigure[row] === 1) nullBitmap[row >> 3] |= 1 << (row & 7);
    else nullCount += 1;
  }
  return makeData({ type: new Float64(), length: values.length, nullCount, nullBitmap, data: values });
}

const words = vectorFromArray(verdictWords, new Utf8());
export const verdictType = new Dictionary(new Utf8(), new Uint8(), 0);

/** Verdict codes as words: the codes are the indices of a dictionary. */
export const verdictData = (codes) =>
  makeData({ type: verdictType, length: codes.length, nullCount: 0, data: codes, dictionary: words });
