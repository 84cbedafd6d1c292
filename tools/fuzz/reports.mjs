// METAR reports by their grammar, with slips of every kind; and texts that are none.

const two = (value) => String(value).padStart(2, '0');
const three = (value) => String(value).padStart(3, '0');

/** @typedef {import('./random.mjs').Choices} Choices */

/** One of the usual forms, once in eight of the others. */
const mostly = (c, usual, others) => (c.oneIn(8) ? c.of(others) : c.of(usual));

/** The groups of a report; each may be slightly off. @type {readonly ((c: Choices) => string)[]} */
const groups = [
  (c) => mostly(c, ['METAR', 'SPECI', 'METAR COR', ''], ['METAR METAR', 'TAF', 'metar']),
  (c) => mostly(c, ['ZZZZ', 'QXQX', 'Z1Z1'], ['ZZZ', 'zzzz', 'ZZZZZ', '']),
  (c) =>
    mostly(
      c,
      [`${two(1 + c.below(31))}${two(c.below(24))}${two(c.below(60))}Z`],
      ['320000Z', '012360Z', '0101Z', '010000'],
    ),
  (c) => mostly(c, ['', '', 'AUTO', 'COR', 'NIL'], ['AUTO COR', 'AUTO AUTO']),
  (c) => {
    const mean = 1 + c.below(60);
    const direction = mostly(c, [three(10 + 10 * c.below(36)), 'VRB', '///'], [three(c.below(400)), '000']);
    const speed = mostly(c, [two(mean)], [two(c.below(100)), three(c.below(250)), '//', 'P99', '00']);
    const gust = mostly(
      c,
      ['', '', `G${two(mean + 10)}`],
      [`G${two(c.below(99))}`, `G${three(c.below(250))}`, 'GP99', 'G//'],
    );
    return mostly(
      c,
      [`${direction}${speed}${gust}${mostly(c, ['KT', 'KT', 'MPS'], ['KMH', 'KTS', ''])}`],
      ['00000KT', '/////KT', ''],
    );
  },
  (c) => mostly(c, [''], [`${three(10 * c.below(38))}V${three(10 * c.below(38))}`, '///V///', '18V240']),
  (c) => c.of(['9999', 'CAVOK', '10SM', '1 1/2SM', '0800', '////', '9999NDV', '9999 R28/P1500', 'R10L/0600V1200U']),
  (c) => c.of(['', '-RA', '+TSRA', 'VCSH', 'BR', '//', 'FZFG']),
  (c) => c.of(['', 'FEW040', 'SCT025CB', 'OVC001', 'NSC', 'SKC', '//////', 'VV002', 'BKN010 OVC020']),
  (c) => {
    const air = c.below(55);
    const usual = [
      `${two(air + 5)}/${two(c.below(air + 5))}`,
      `M${two(c.below(50))}/M${two(50 + c.below(40))}`,
      '/////',
      '15///',
    ];
    return mostly(c, usual, ['3/100', 'MM3/M4', '2O/10', '+12/10', '61/10', '10/20', '']);
  },
  (c) =>
    mostly(
      c,
      [`Q${String(850 + c.below(236)).padStart(4, '0')}`, 'Q////', ''],
      [`Q${c.below(10000)}`, 'QNH1013', 'Q1O13'],
    ),
  (c) => mostly(c, [''], [`A${2500 + c.below(750)}`, 'A////', 'A29.92', 'A2O92']),
  (c) => mostly(c, ['', 'NOSIG', 'TEMPO 28020G35KT', 'BECMG 9999', 'RMK AO2 SLP134 T02560160'], ['WS R28', 'TEMP']),
  (c) => mostly(c, ['', '', '='], ['==', '= METAR']),
];
const alphabet = 'ABCDEGKMOPQRSTVZ0123456789/+-= \t\n\r';
const anyCharacter = 'AQ0/= \u0000\u00a0\u2028\ud800\u0660é{}"\\';

/** @param {Choices} choices */
export function report(choices) {
  const kind = choices.below(50);
  if (kind === 0) return choices.text(alphabet, choices.below(120));
  if (kind === 1) return choices.text(anyCharacter, choices.below(60));
  if (kind === 2) return choices.of([undefined, null, 0, Number.NaN, {}, [], ['METAR'], 10n, Symbol.iterator]);
  if (kind === 3) return choices.text(alphabet, 1).repeat(choices.of([100, 1999, 2000, 2001, 100_000]));
  const words = groups.map((group) => group(choices)).filter((word) => word !== '');
  if (choices.oneIn(8)) words.splice(choices.below(words.length), 1);
  if (choices.oneIn(12)) words.splice(choices.below(words.length), 0, choices.of(words));
  if (choices.oneIn(12)) words.push(words.splice(choices.below(words.length), 1)[0]);
  const text = words.join(choices.oneIn(20) ? '\n ' : ' ');
  if (!choices.oneIn(6)) return text;
  const at = choices.below(text.length);
  return text.slice(0, at) + choices.text(alphabet, choices.below(3)) + text.slice(at + choices.below(3));
}

/** A report without slips, for what takes a reading: nothing is off but the figures. @param {Choices} c */
export function soundReport(c) {
  const direction = c.of([three(10 + 10 * c.below(36)), 'VRB', '///']);
  const mean = 1 + c.below(60);
  const wind = c.of([
    '00000KT',
    '/////KT',
    `${direction}${two(mean)}KT`,
    `${direction}${two(mean)}G${two(mean + 5)}KT`,
  ]);
  const air = c.of([`${two(10 + c.below(51))}/${two(c.below(10))}`, `M${two(c.below(91))}/M90`, '/////', '15///']);
  const pressure = c.of([`Q${String(850 + c.below(236)).padStart(4, '0')}`, `A${2510 + c.below(695)}`, 'Q////', '']);
  return `METAR ZZZZ 141350Z ${c.of(['', 'AUTO '])}${c.of([wind, wind, wind, ''])} 9999 ${air} ${pressure}`;
}
