import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type MetarObservation, metarGroups, readMetar } from '../../src/weather-report/index.ts';
import { isInstrumented } from '../instrumented.ts';

/** The observation of a report that must be readable. */
function observation(text: string): MetarObservation {
  const read = readMetar(text);
  if (!read.ok) throw new Error(read.faults.map(({ path, message }) => `${path}: ${message}`).join('\n'));
  if (read.value.kind !== 'observation') throw new Error(`${text} is ${read.value.kind}`);
  return read.value;
}

/** The observation of a report with these groups behind its head. */
const withGroups = (groups: string) => observation(`METAR ZZZZ 141350Z ${groups}`);

/** The faults of a report with these groups behind its head, as lines. */
function faults(groups: string, head = 'METAR ZZZZ 141350Z '): string[] {
  const read = readMetar(head + groups);
  return read.ok ? [] : read.faults.map(({ path, message }) => `${path}: ${message}`);
}

const kt = (value: number) => ({ value, unit: 'kt' });
const mps = (value: number) => ({ value, unit: 'mps' });
const degTrue = (value: number) => ({ value, unit: 'degTrue' });
const degC = (value: number) => ({ value, unit: 'degC' });

describe('readMetar', () => {
  it('reads a whole report', () => {
    const text = 'METAR ZZZZ 141350Z AUTO 19007G17KT 150V230 9999 FEW040 26/16 Q1006 NOSIG=';
    expect(observation(text)).toEqual({
      kind: 'observation',
      report: 'METAR',
      station: 'ZZZZ',
      time: { day: 14, hour: 13, minute: 50 },
      corrected: false,
      automatic: true,
      wind: {
        from: degTrue(190),
        speed: kt(7),
        gust: kt(17),
        range: { from: degTrue(150), to: degTrue(230) },
      },
      temperature: degC(26),
      dewPoint: degC(16),
      qnh: { value: 1006, unit: 'hPa' },
      altimeterSetting: 'absent',
      notRead: ['9999', 'FEW040', 'NOSIG'],
    });
  });

  it('says of every group that is not there that it is absent', () => {
    expect(observation('ZZZZ 010000Z')).toEqual({
      kind: 'observation',
      report: 'not stated',
      station: 'ZZZZ',
      time: { day: 1, hour: 0, minute: 0 },
      corrected: false,
      automatic: false,
      wind: 'absent',
      temperature: 'absent',
      dewPoint: 'absent',
      qnh: 'absent',
      altimeterSetting: 'absent',
      notRead: [],
    });
  });

  it('tells missing from absent', () => {
    expect(withGroups('AUTO /////KT //// // ////// ///// Q////')).toMatchObject({
      wind: 'missing',
      temperature: 'missing',
      dewPoint: 'missing',
      qnh: 'missing',
      altimeterSetting: 'absent',
      notRead: ['////', '//', '//////'],
    });
  });

  it.each([
    ['19007KT', { from: degTrue(190), speed: kt(7), gust: 'absent', range: 'absent' }],
    ['36010KT', { from: degTrue(360), speed: kt(10), gust: 'absent', range: 'absent' }],
    ['01010KT', { from: degTrue(10), speed: kt(10), gust: 'absent', range: 'absent' }],
    ['24015G28KT', { from: degTrue(240), speed: kt(15), gust: kt(28), range: 'absent' }],
    ['24008G15MPS', { from: degTrue(240), speed: mps(8), gust: mps(15), range: 'absent' }],
    ['240101G125KT', { from: degTrue(240), speed: kt(101), gust: kt(125), range: 'absent' }],
    ['VRB03KT', { from: 'variable', speed: kt(3), gust: 'absent', range: 'absent' }],
    ['VRB15G30KT', { from: 'variable', speed: kt(15), gust: kt(30), range: 'absent' }],
    [
      'VRB03KT 040V170',
      { from: 'variable', speed: kt(3), gust: 'absent', range: { from: degTrue(40), to: degTrue(170) } },
    ],
    [
      '35012KT 320V040',
      { from: degTrue(350), speed: kt(12), gust: 'absent', range: { from: degTrue(320), to: degTrue(40) } },
    ],
    ['///05KT', { from: 'missing', speed: kt(5), gust: 'absent', range: 'absent' }],
    ['240//KT', { from: degTrue(240), speed: 'missing', gust: 'absent', range: 'absent' }],
    ['24010KT ///V///', { from: degTrue(240), speed: kt(10), gust: 'absent', range: 'missing' }],
    ['00000KT', 'calm'],
    ['00000MPS', 'calm'],
    ['/////MPS', 'missing'],
  ])('reads the wind %s', (text, wind) => expect(withGroups(text).wind).toEqual(wind));

  it.each([
    ['26/16', degC(26), degC(16)],
    ['M05/M10', degC(-5), degC(-10)],
    ['03/M01', degC(3), degC(-1)],
    ['M00/M00', degC(0), degC(0)],
    ['00/M00', degC(0), degC(0)],
    ['15///', degC(15), 'missing'],
    ['15/', degC(15), 'missing'],
    ['///M02', 'missing', degC(-2)],
    ['/////', 'missing', 'missing'],
  ])('reads the temperatures %s', (text, temperature, dewPoint) => {
    expect(withGroups(text)).toMatchObject({ temperature, dewPoint });
  });

  it('never gives minus zero', () => {
    const { temperature, dewPoint } = withGroups('M00/M00');
    expect([temperature, dewPoint].map((each) => Object.is((each as { value: number }).value, 0))).toEqual([
      true,
      true,
    ]);
  });

  it('reads either pressure, and both where they agree', () => {
    expect(withGroups('Q1013')).toMatchObject({ qnh: { value: 1013, unit: 'hPa' }, altimeterSetting: 'absent' });
    expect(withGroups('A2992')).toMatchObject({ qnh: 'absent', altimeterSetting: { value: 29.92, unit: 'inHg' } });
    expect(withGroups('Q1013 A2992')).toMatchObject({ altimeterSetting: { value: 29.92 }, qnh: { value: 1013 } });
    expect(withGroups('A//// Q0987')).toMatchObject({ altimeterSetting: 'missing', qnh: { value: 987 } });
    expect(faults('Q1003 A2992')).toEqual([
      'altimeterSetting: 29.92 inHg, which is 1013.2 hPa, does not agree with the QNH of 1003 hPa',
    ]);
    expect(faults('Q1015 A2992')).toHaveLength(1);
  });

  it('reads the head of a report in all its forms', () => {
    expect(observation('SPECI COR ZZZZ 312359Z AUTO')).toMatchObject({
      report: 'SPECI',
      time: { day: 31, hour: 23, minute: 59 },
      corrected: true,
      automatic: true,
    });
    expect(observation('METAR ZZZZ 141350Z COR 19007KT')).toMatchObject({ corrected: true, wind: { speed: kt(7) } });
    expect(readMetar('METAR ZZZZ 141350Z NIL=')).toEqual({
      ok: true,
      value: {
        kind: 'nil',
        report: 'METAR',
        station: 'ZZZZ',
        time: { day: 14, hour: 13, minute: 50 },
        corrected: false,
        automatic: false,
      },
    });
  });

  it.each(['BECMG', 'TEMPO', 'NOSIG', 'RMK'])('does not read what follows %s as the observation', (word) => {
    const read = withGroups(`19007KT 26/16 Q1006 ${word} 28025G45KT 02/M04 Q0980 P99KT 99/99 AUTO`);
    expect(read).toMatchObject({ wind: { speed: kt(7) }, temperature: degC(26), qnh: { value: 1006 } });
    expect(read.notRead[0]).toBe(word);
    expect(withGroups(`${word} 28025G45KT 02/M04 Q0980`)).toMatchObject({ wind: 'absent', qnh: 'absent' });
  });

  it('leaves alone what only resembles the groups it reads', () => {
    const others =
      'CAVOK 1/2SM M1/4SM 10SM R24L/1200U R06/0600V1200FT 0800SW 9999NDV VV/// ///015 //////CB FEW010TCU RERA R88/290050 88290050 W15/S4 WS ALL RWY BLU -SHRA';
    const words = others.split(' ');
    expect(withGroups(`19007KT ${others} 26/16 Q1006`).notRead).toEqual(words);
  });

  it('takes any white space between groups, and a report without white space at its end', () => {
    const lines = '  METAR ZZZZ 141350Z\r\n\t19007KT  9999\n26/16 Q1006  = \n';
    expect(observation(lines)).toEqual(observation('METAR ZZZZ 141350Z 19007KT 9999 26/16 Q1006'));
  });
});

describe('readMetar refuses, with the group and its place,', () => {
  it.each([
    // wind
    ['19O07KT', 'wind: "19O07KT" at character 20 is not a wind group'],
    ['1907KT', 'wind: "1907KT" at character 20 is not a wind group'],
    ['190KT', 'wind: "190KT" at character 20'],
    ['19007', 'wind: "19007" at character 20'],
    ['19007G17', 'wind: "19007G17" at character 20'],
    ['19007K', 'wind: "19007K" at character 20'],
    ['19007KTS', 'wind: "19007KTS" at character 20'],
    ['19012KMH', 'wind: "19012KMH" at character 20'],
    ['19007GKT', 'wind: "19007GKT" at character 20'],
    ['19007G//KT', 'wind: "19007G//KT" at character 20'],
    ['VRBKT', 'wind: "VRBKT" at character 20'],
    ['VRB03', 'wind: "VRB03" at character 20'],
    ['19007kt', '"19007kt" at character 20 is not in capital letters'],
    ['vrb03KT', '"vrb03KT" at character 20 is not in capital letters'],
    ['190P99KT', 'gives a speed only as more than 99 kt'],
    ['19080GP99KT', 'gives a speed only as more than 99 kt'],
    ['190P49MPS', 'gives a speed only as more than 49 mps'],
    ['ABV49MPS', 'wind: "ABV49MPS" at character 20'],
    ['190015KT', 'has three digits for a speed below 100'],
    ['190999KT', 'has a speed above 200 kt'],
    ['190101MPS', 'has a speed above 100 mps'],
    ['00007KT', 'has the direction 000, which is reported for calm only; north is 360'],
    ['37007KT', 'has the direction 370, beyond 360'],
    ['18707KT', 'has the direction 187, which is not in whole tens of degrees'],
    ['19000KT', 'calm is reported as 00000'],
    ['VRB00KT', 'calm is reported as 00000'],
    ['00000G15KT', 'calm is reported as 00000'],
    ['19017G07KT', 'has a gust of 7 kt that is not above the mean of 17 kt'],
    ['19017G17KT', 'is not above the mean'],
    ['/////G30KT', 'has a gust, but no mean speed'],
    ['190//G30KT', 'has a gust, but no mean speed'],
    ['19007KT 19007KT', 'wind: "19007KT" at character 28 is a second group of its kind'],
    // range
    ['19007KT 150V23', 'wind.range: "150V23" at character 28 is not a range of directions'],
    ['19007KT 155V230', 'wind.range: "155V230" at character 28 has the direction 155'],
    ['19007KT 150V370', 'has the direction 370, beyond 360'],
    ['19007KT 000V230', 'has the direction 000'],
    ['19007KT 150V150', 'has two equal directions'],
    ['19007KT 200V240', 'does not hold the mean direction of 190, clockwise'],
    ['19007KT 230V150', 'does not hold the mean direction of 190, clockwise'],
    ['19007KT 9999 150V230', 'wind.range: "150V230" at character 33 does not follow a wind'],
    ['150V230', 'does not follow a wind'],
    ['00000KT 150V230', 'varies a calm'],
    ['/////KT 150V230', 'varies a wind that is missing'],
    ['19007KT 150V230 150V230', 'is a second group of its kind'],
    // temperature
    ['26/16 25/15', 'temperature: "25/15" at character 26 is a second group of its kind'],
    ['6/1', 'temperature: "6/1" at character 20 is not a group of temperature and dew point'],
    ['126/16', 'temperature: "126/16" at character 20'],
    ['26/1', 'temperature: "26/1" at character 20'],
    ['26/1O', 'temperature: "26/1O" at character 20'],
    ['-05/-10', 'temperature: "-05/-10" at character 20'],
    ['M5/M10', 'temperature: "M5/M10" at character 20'],
    ['M///16', 'temperature: "M///16" at character 20'],
    ['2O/16', 'temperature: "2O/16" at character 20'],
    ['16/26', 'has a dew point of 26 degC above the temperature of 16 degC'],
    ['M10/M05', 'has a dew point of -5 degC above the temperature of -10 degC'],
    ['61/16', 'has 61 degC, not within -90 to 60 degC'],
    ['M91/M95', 'has -91 degC, not within -90 to 60 degC'],
    // pressure
    ['Q1006 Q1006', 'qnh: "Q1006" at character 26 is a second group of its kind'],
    ['Q106', 'qnh: "Q106" at character 20 is not a QNH in hectopascals'],
    ['Q1O06', 'qnh: "Q1O06" at character 20'],
    ['Q10066', 'qnh: "Q10066" at character 20'],
    ['Q///', 'qnh: "Q///" at character 20'],
    ['QNH1006', 'qnh: "QNH1006" at character 20'],
    ['Q0849', 'is not within 850 to 1085 hPa'],
    ['Q1086', 'is not within 850 to 1085 hPa'],
    ['A2992 A2992', 'altimeterSetting: "A2992" at character 26 is a second group of its kind'],
    ['A299', 'altimeterSetting: "A299" at character 20 is not a QNH in inches of mercury'],
    ['A29.92', 'altimeterSetting: "A29.92" at character 20'],
    ['A299O', 'altimeterSetting: "A299O" at character 20'],
    ['A2509', 'is not within 25.1 to 32.04 inHg'],
    ['A3205', 'is not within 25.1 to 32.04 inHg'],
    // words in the wrong place
    ['19007KT AUTO', '"AUTO" at character 28 is not in its place'],
    ['19007KT NIL', '"NIL" at character 28 is not in its place'],
    ['AUTO AUTO', '"AUTO" at character 25 stands there twice'],
    ['NIL 19007KT', '"19007KT" at character 24 follows NIL'],
    ['26/16 Q1006= 27/16', '"27/16" at character 33 begins a second report'],
    ['26/16 Q1006=METAR', '"METAR" at character 32 begins a second report'],
    ['26/16 Q1006 RMK A METAR ZZZX', '"METAR" at character 38 begins a second report'],
  ])('%s', (groups, message) => {
    const found = faults(groups);
    expect(found).toHaveLength(1);
    expect(found[0]).toContain(message);
  });

  it.each([
    ['', ': the report is empty'],
    [' =\n', ': the report is empty'],
    ['METAR', 'station: is missing'],
    ['METAR ZZZZ', 'time: is missing'],
    ['METAR ZZZZ 19007KT', 'time: is missing'],
    ['METAR ZZZ 141350Z', 'station: "ZZZ" at character 7 is not a location indicator'],
    ['METAR ZZZZZ 141350Z', 'station: "ZZZZZ" at character 7'],
    ['METAR zzzz 141350Z', 'station: "zzzz" at character 7'],
    ['METAR 141350Z 19007KT', 'station: "141350Z" at character 7 stands where the station is due'],
    ['metar ZZZZ 141350Z', 'station: "metar" at character 1'],
    ['METAR ZZZZ 321350Z', 'time: "321350Z" at character 12 is not a day, hour and minute'],
    ['METAR ZZZZ 001350Z', 'time: "001350Z" at character 12'],
    ['METAR ZZZZ 142450Z', 'time: "142450Z" at character 12'],
    ['METAR ZZZZ 141360Z', 'time: "141360Z" at character 12'],
    ['METAR ZZZZ 1350Z', 'time: "1350Z" at character 12'],
    ['METAR ZZZZ 141350', 'time: "141350" at character 12'],
    ['METAR ZZZZ ///////Z', 'time: '],
    ['METAR METAR ZZZZ 141350Z', '"METAR" at character 7 begins a second report'],
    [`METAR ZZZZ 141350Z RMK ${'X'.repeat(2000)}`, ': a text of 2023 characters is longer than 2000'],
  ])('the head of "%s"', (text, message) => {
    const read = readMetar(text);
    expect(read.ok).toBe(false);
    expect(faults(text, '').join('\n')).toContain(message);
  });

  it('all faults at once', () => {
    expect(faults('19O07KT 26/1 Q106 A299').map((line) => line.slice(0, line.indexOf(':')))).toEqual([
      'wind',
      'temperature',
      'qnh',
      'altimeterSetting',
    ]);
  });

  it.each([undefined, null, 7, {}, ['METAR'], Object.create(null)])('what is no text', (text) => {
    expect(readMetar(text as never)).toEqual({ ok: false, faults: [{ path: '', message: 'a report is a text' }] });
  });
});

describe('whatever it is given, readMetar', () => {
  const words = [
    ...['METAR', 'SPECI', 'ZZZZ', '141350Z', 'AUTO', 'COR', 'NIL', '19007G17KT', '150V230', 'VRB03KT', '00000KT'],
    ...['/////KT', '26/16', 'M05/M10', '/////', 'Q1006', 'A2992', 'Q////', 'RMK', 'TEMPO', '9999', '=', 'P99KT'],
  ];
  const piece = fc.oneof(
    fc.constantFrom(...words),
    fc.string({ maxLength: 12 }),
    fc.string({ unit: fc.constantFrom(...'0123456789/MGKTPSVRBQA=O -'), maxLength: 12 }),
    // A group with one character put wrong.
    fc
      .tuple(fc.constantFrom(...words), fc.nat(11), fc.constantFrom(...'0123456789/MGKQAO'))
      .map(([word, at, character]) =>
        at < word.length ? word.slice(0, at) + character + word.slice(at + 1) : word + character,
      ),
  );
  const text = fc.array(piece, { maxLength: 14 }).map((pieces) => pieces.join(' '));

  /** Every number of a reading, however deep. */
  function numbersIn(value: unknown): number[] {
    if (typeof value === 'number') return [value];
    return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
  }

  it('never throws, and gives no number that is not finite: 10 000 texts', () => {
    let readings = 0;
    let refusals = 0;
    fc.assert(
      fc.property(
        fc.oneof(
          text.map((rest) => `METAR ZZZZ 141350Z ${rest}`),
          text,
        ),
        (report) => {
          const read = readMetar(report);
          if (!read.ok) {
            refusals += 1;
            expect(read.faults.length).toBeGreaterThan(0);
            for (const { message } of read.faults) expect(message).not.toBe('');
            return;
          }
          readings += 1;
          for (const number of numbersIn(read.value))
            expect(Number.isFinite(number) && !Object.is(number, -0)).toBe(true);
          const { time } = read.value;
          expect(time.day >= 1 && time.day <= 31 && time.hour <= 23 && time.minute <= 59).toBe(true);
        },
      ),
      { numRuns: 10_000 },
    );
    // A test that only ever sees one of the two outcomes would show little.
    expect(readings).toBeGreaterThan(500);
    expect(refusals).toBeGreaterThan(500);
  });

  it('gives back the figures that a report was made of', () => {
    const two = (n: number) => String(n).padStart(2, '0');
    const signed = (n: number) => (n < 0 ? 'M' : '') + two(Math.abs(n));
    const draw = fc.record({
      tens: fc.integer({ min: 1, max: 36 }),
      mean: fc.integer({ min: 1, max: 99 }),
      increment: fc.integer({ min: 0, max: 40 }),
      temperature: fc.integer({ min: -60, max: 55 }),
      spread: fc.integer({ min: 0, max: 30 }),
      qnh: fc.integer({ min: 850, max: 1085 }),
    });
    fc.assert(
      fc.property(draw, ({ tens, mean, increment, temperature, spread, qnh }) => {
        const gust = increment === 0 ? '' : `G${two(mean + increment)}`;
        const wind = `${String(tens * 10).padStart(3, '0')}${two(mean)}${gust}KT`;
        const air = `${signed(temperature)}/${signed(temperature - spread)}`;
        expect(withGroups(`${wind} 9999 ${air} Q${String(qnh).padStart(4, '0')}`)).toMatchObject({
          wind: {
            from: degTrue(tens * 10),
            speed: kt(mean),
            gust: increment === 0 ? 'absent' : kt(mean + increment),
            range: 'absent',
          },
          temperature: degC(temperature),
          dewPoint: degC(temperature - spread),
          qnh: { value: qnh, unit: 'hPa' },
        });
      }),
    );
  });

  it.skipIf(isInstrumented)('needs no longer for a text made to be slow than for any other', () => {
    const slow = [
      '0'.repeat(1900),
      '/'.repeat(1900),
      'VRB'.repeat(600),
      '1G'.repeat(900),
      'M/'.repeat(900),
      '= '.repeat(900),
    ];
    const begin = performance.now();
    for (const rest of slow) for (let i = 0; i < 50; i += 1) readMetar(`METAR ZZZZ 141350Z ${rest}`);
    // 300 texts; each takes well under a millisecond, where backtracking would take seconds.
    expect(performance.now() - begin).toBeLessThan(2000);
  });
});

describe('the list of groups read', () => {
  it('names a place of the reading for each, and a source', () => {
    const read = withGroups('19007KT 150V230 26/16 Q1006 A2971');
    for (const { path, forms, citations } of metarGroups) {
      const at = path.split('.').reduce<unknown>((value, key) => (value as Record<string, unknown>)[key], read);
      expect(at, path).toBeDefined();
      expect(forms.length).toBeGreaterThan(0);
      expect(citations[0].source).toBe('wmo-306');
    }
  });
});
