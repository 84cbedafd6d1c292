import { describe, expect, it } from 'vitest';
import { formulaRecords } from '../../src/register/index.ts';
import { worksheet, worksheetJson, worksheetMarkdown, worksheetText } from '../../src/worksheet/index.ts';
import { takeoff } from '../assessment/scenario.ts';
import { cases, soft } from './cases.ts';

/** Lines are wrapped and spaces in numbers are kept together; neither matters to what is said. */
const plain = (text: string) => text.replace(/\s+/g, ' ');
const nonsense = /undefined\b(?! is)|\bNaN\b|Infinity|\[object|\bnull\b/;
/** JSON has no -0. */
function withoutMinusZero(value: unknown): unknown {
  if (value === 0) return 0;
  if (Array.isArray(value)) return value.map(withoutMinusZero);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, withoutMinusZero(part)]));
}
const withoutVerdicts = (text: string) => text.replace(/undetermined/g, '');

describe.each(cases)('the worksheet of a %s', (_name, assessment) => {
  const sheet = worksheet(assessment, formulaRecords);
  const text = worksheetText(assessment);
  const markdown = worksheetMarkdown(sheet);

  it('says everything in the text: headline, reasons, hazards, notes, advice', () => {
    const said = plain(text);
    const { headline, reasons, hazards, dataNotes, advice, limitsOfUse } = assessment;
    for (const each of [...headline, ...reasons, ...hazards, ...dataNotes, ...advice])
      expect(said).toContain(plain(each.text));
    for (const each of limitsOfUse) expect(said).toContain(each);
    expect(text.startsWith(headline[0]?.text.slice(0, 20) ?? '?')).toBe(true);
  });

  it('has a sentence for each criterion, in the text and in Markdown', () => {
    for (const each of assessment.criteria) {
      const name = `${each.quantity.charAt(0).toUpperCase()}${each.quantity.slice(1)}`;
      const status = each.limitStatus === 'distance available' ? '' : ` (${each.limitStatus})`;
      const lines = markdown.split('\n').filter((line) => line.startsWith(`- ${name}${status}: `));
      expect(lines.length).toBeGreaterThan(0);
      const words = each.verdict === 'undetermined' ? 'undetermined' : each.verdict === 'within' ? 'to spare' : 'short';
      const sentence = lines.find((line) => line.includes(words))?.slice(2) ?? 'none';
      expect(plain(text)).toContain(plain(sentence));
    }
  });

  it('keeps to its width, and keeps numbers with their units', () => {
    for (const line of text.split('\n')) {
      expect(line.length).toBeLessThanOrEqual(88);
      expect(line).not.toMatch(/^\s+(m|ft|kt|kg|hPa|KIAS|KCAS|%)\b/);
    }
  });

  it('has the equation and the sources of every formula of its working', () => {
    const used = new Set(assessment.trace.flatMap((entry) => (entry.kind === 'step' ? [entry.record] : [])));
    expect(sheet.formulas.map(({ id }) => id)).toEqual([...used]);
    for (const { id, equation, title, citations } of sheet.formulas) {
      expect(equation).toBe(formulaRecords.find((record) => record.id === id)?.equation);
      expect(markdown).toContain(`### ${title} (\`${id}\`)\n\n$$${equation}$$\n`);
      expect(citations.length).toBeGreaterThan(0);
      for (const { title: source, locator, access } of citations) {
        expect(source.length).toBeGreaterThan(0);
        expect(markdown).toContain(`${locator} (${access})`);
      }
    }
  });

  it('has a line for every step and decision of the working', () => {
    for (const entry of assessment.trace) {
      expect(markdown).toContain(entry.kind === 'step' ? `- ${entry.label}: ` : `- ${entry.text}`);
    }
  });

  it('holds nothing that is no figure or no word', () => {
    expect(withoutVerdicts(text)).not.toMatch(nonsense);
    expect(withoutVerdicts(markdown)).not.toMatch(nonsense);
  });

  it('comes back from JSON as it went in', () => {
    const json = worksheetJson(sheet);
    const again = JSON.parse(json) as typeof sheet;
    // A figure that is not finite would come back as null, and not be equal.
    expect(again).toEqual(withoutMinusZero(sheet));
    expect(worksheetText(again.assessment)).toBe(text);
    expect(worksheetMarkdown(again)).toBe(markdown);
  });
});

describe('worksheet', () => {
  it('refuses an assessment with a formula that has no record among those given', () => {
    const without = formulaRecords.filter(({ id }) => id !== 'wind.used');
    expect(() => worksheet(takeoff('takeoff-28'), without)).toThrow('no formula record wind.used');
    expect(() => worksheet(takeoff('takeoff-28'), [])).toThrow('no formula record');
  });

  it('prints the stairs with what each tread adds at the right edge', () => {
    const lines = worksheetText(takeoff('takeoff-28')).split('\n');
    const tread = lines.find((line) => line.startsWith('with the safety factor'));
    expect(plain(tread ?? '')).toBe('with the safety factor, x 1.250 +154.0 m 770.2 m');
    expect(plain(lines.find((line) => line.startsWith('with the wind used')) ?? '')).toContain('+70.5 m 513.5 m');
  });

  it('shows a wind limit in m/s by tenths, as it is compared: 7 kt are 3.61 m/s', () => {
    const limited = takeoff('takeoff-28', {
      'weather.wind': {
        source: 'observed',
        from: { value: 202, unit: 'degTrue' },
        speed: { value: 7, unit: 'kt' },
      },
      'performanceData.crosswind': [{ speed: { value: 3.6, unit: 'mps' }, status: 'limitation' }],
    });
    expect(plain(worksheetText(limited))).toContain(
      'Crosswind in gusts (limitation): 3.7 m/s of 3.6 m/s, outside limits, 0.1 m/s short.',
    );
  });

  it('says of no value that it is undetermined where it is outside: a factor of at least 1.25 leaves both', () => {
    const factorId = 'uk-leaflet-takeoff-soft';
    const confirmations = [{ factorId, edition: 'Safety Sense Leaflet 07, 7c', date: '2026-07-14' }];
    const said = (mass_kg: number) =>
      plain(
        worksheetText(
          takeoff('takeoff-28', {
            ...soft,
            mass: { value: mass_kg, unit: 'kg' },
            'policies.confirmations': confirmations,
          }),
        ),
      );
    const none = 'Mass: not within anywhere in the range, 850 kg to 1 050 kg; undetermined in some or all of it.';
    // The lightest mass is undetermined, so none is within; 900 kg are outside.
    expect(said(850)).toMatch(/Take-off distance required: undetermined/);
    expect(said(850)).toContain(none);
    expect(said(900)).toMatch(/Take-off distance required: [^.]*, outside limits/);
    expect(said(900)).toContain(none);
    expect(said(900)).toContain('Tailwind: not within anywhere in the range, 0.0 kt to 8.0 kt; undetermined in');
    expect(said(900)).not.toContain('throughout');
    // At 1 050 kg even the strongest tailwind and none are outside.
    expect(said(1050)).toContain('Tailwind: not within anywhere in the range, 0.0 kt to 8.0 kt. The');
  });

  it('says for what it is completed as that was put in, and of a range no more than was searched', () => {
    const masses = { maximumTakeoff: { value: 960.7, unit: 'kg' }, maximumLanding: { value: 960.7, unit: 'kg' } };
    const assessment = takeoff('takeoff-28', {
      'performanceData.masses': masses,
      mass: { value: 900.6, unit: 'kg' },
      'weather.temperature.value': 26.4,
      'weather.wind.gust.value': 16.6,
    });
    const said = plain(worksheetText(assessment));
    expect(said).toContain('900.6 kg, Vesikorpi 28; wind 190° true 7 kt gusting 16.6 kt, 26.4 °C.');
    expect(plain(worksheetMarkdown(worksheet(assessment, formulaRecords)))).toContain(
      // 636.9 ft.
      'flap 15, 900.6 kg, 637 ft pressure altitude, 26.4 °C',
    );
    expect(said).toContain('Mass: within throughout the range, 850 kg to 960 kg.');
  });

  it('says undetermined where there is no distance', () => {
    expect(plain(worksheetText(takeoff('takeoff-28', { configuration: 'flap-0' })))).toContain(
      'The distance required undetermined',
    );
  });
});
