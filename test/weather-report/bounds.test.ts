import { describe, expect, it } from 'vitest';
import { readMetar } from '../../src/weather-report/index.ts';

const head = 'METAR ZZZZ 141350Z';

function observed(groups: string) {
  const read = readMetar(`${head} ${groups}`);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  if (read.value.kind !== 'observation') throw new Error('no observation');
  return read.value;
}
const faulty = (text: string) => {
  const read = readMetar(text);
  return read.ok ? [] : read.faults.map(({ path }) => path);
};

describe('a figure at the end of what is accepted', () => {
  it('is read, and the next one beyond is not', () => {
    expect(observed('M90/M90').temperature).toEqual({ value: -90, unit: 'degC' });
    expect(observed('60/10').temperature).toEqual({ value: 60, unit: 'degC' });
    expect(faulty(`${head} M91/M91`)).toEqual(['temperature']);
    expect(faulty(`${head} 61/10`)).toEqual(['temperature']);
    expect(observed('A2510').altimeterSetting).toEqual({ value: 25.1, unit: 'inHg' });
    expect(observed('A3204').altimeterSetting).toEqual({ value: 32.04, unit: 'inHg' });
    expect(faulty(`${head} A2509`)).toEqual(['altimeterSetting']);
    expect(faulty(`${head} A3205`)).toEqual(['altimeterSetting']);
    expect(observed('240200KT').wind).toMatchObject({ speed: { value: 200, unit: 'kt' } });
    expect(observed('240100MPS').wind).toMatchObject({ speed: { value: 100, unit: 'mps' } });
    expect(faulty(`${head} 240201KT`)).toEqual(['wind']);
    expect(faulty(`${head} 240101MPS`)).toEqual(['wind']);
  });
});

describe('a range of directions', () => {
  it.each(['150', '190', '230'])('from 150 clockwise to 230 holds %s', (from) => {
    expect(observed(`${from}07KT 150V230`).wind).toMatchObject({ range: { from: { value: 150 }, to: { value: 230 } } });
  });

  it.each(['340', '360', '020'])('from 340 clockwise to 020 holds %s', (from) => {
    expect(observed(`${from}07KT 340V020`).wind).toMatchObject({ range: { from: { value: 340 }, to: { value: 20 } } });
  });

  it.each(['140', '240', '330'])('from 150 clockwise to 230 does not hold %s', (from) => {
    expect(faulty(`${head} ${from}07KT 150V230`)).toEqual(['wind.range']);
  });
});

describe('a group with more in it than its form', () => {
  it.each([
    ['QQ1006', 'qnh'],
    ['Q1Q1006', 'qnh'],
    ['A1A2992', 'altimeterSetting'],
    ['19007KT 1150V230', 'wind.range'],
    ['19007KT 150V2301', 'wind.range'],
    ['X19007KT', 'wind'],
  ])('%s is a fault', (group, path) => {
    expect(faulty(`${head} ${group}`)).toEqual([path]);
  });

  it('at the place of the time is a fault', () => {
    expect(faulty('METAR ZZZZ 0141350Z 19007KT')).toEqual(['time']);
  });

  it.each(['12/34567', 'ABCDE', 'R28/P1500', 'XA2992', 'A', 'AB', 'KTX', 'X150V230', '150V230XX'])(
    '%s is none of those that are read',
    (group) => {
      expect(observed(group).notRead).toEqual([group]);
    },
  );
});

describe('a whole text', () => {
  it('may have 2000 characters, and no more', () => {
    const text = (length: number) => `${head} 19007KT RMK ${'X'.repeat(length - head.length - 13)}`;
    expect(text(2000)).toHaveLength(2000);
    expect(readMetar(text(2000)).ok).toBe(true);
    expect(readMetar(text(2001)).ok).toBe(false);
  });

  it.each(['METAR', 'SPECI'])('holds one report: a second %s is a fault', (word) => {
    expect(readMetar(`${head} 19007KT ${word} ZZZZ 141420Z`)).toMatchObject({
      faults: [{ message: expect.stringContaining('begins a second report') }],
    });
  });

  it('may end with its sign, and nothing may follow it', () => {
    expect(readMetar(`${head} 19007KT=`).ok).toBe(true);
    expect(readMetar(`${head} 19007KT= 26/16`).ok).toBe(false);
    expect(readMetar(`= ${head} 19007KT`).ok).toBe(false);
  });

  it('that breaks off in its heading has the faults of what is missing', () => {
    expect(faulty('METAR')).toEqual(['station', 'time']);
    expect(faulty('METAR ZZZZ')).toEqual(['time']);
    expect(faulty('METAR Z,ZZ 141350Z')).toEqual(['station']);
    expect(faulty('METAR ZZZZ 19007KT 26/16')).toEqual(['time']);
  });

  it('is repeated in a fault by no more than 40 characters of a group', () => {
    const read = readMetar(`${head} ${'9'.repeat(60)}KT`);
    expect(read.ok ? [] : read.faults.map(({ message }) => message.indexOf('" at'))).toEqual([41]);
  });
});

describe('the sign that ends a report', () => {
  it('is named by its place where it stands twice', () => {
    const text = `${head} 19007KT==`;
    expect(readMetar(text)).toEqual({
      ok: false,
      faults: [{ path: '', message: `"=" at character ${text.length} begins a second report` }],
    });
  });
});
