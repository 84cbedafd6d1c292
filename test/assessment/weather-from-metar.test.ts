import { describe, expect, it } from 'vitest';
import { assessTakeoff, readWeather, type Weather, weatherFromMetar } from '../../src/assessment/index.ts';
import { readMetar } from '../../src/weather-report/index.ts';
import { takeoffRequest } from './scenario.ts';

function weatherOf(groups: string) {
  const read = readMetar(`METAR ZZZZ 141350Z ${groups}`);
  if (!read.ok) throw new Error(read.faults.map(({ message }) => message).join('\n'));
  return weatherFromMetar(read.value);
}

function faults(groups: string): string[] {
  const result = weatherOf(groups);
  return result.ok ? [] : result.faults.map(({ path, message }) => `${path}: ${message}`);
}

describe('weatherFromMetar', () => {
  it('gives the weather that stands in the request of the example', () => {
    const request = takeoffRequest('takeoff-28') as { weather: Weather };
    expect(weatherOf('19007G17KT 9999 FEW040 26/16 Q1006 NOSIG')).toEqual({ ok: true, value: request.weather });
  });

  it('leads to the very same assessment', () => {
    const read = weatherOf('19007G17KT 26/16 Q1006');
    const request = takeoffRequest('takeoff-28');
    expect(read.ok).toBe(true);
    if (!read.ok) return;
    expect(assessTakeoff({ ...(request as object), weather: read.value } as never)).toEqual(
      assessTakeoff(request as never),
    );
  });

  it.each([
    ['00000KT', { from: { value: 0, unit: 'degTrue' }, speed: { value: 0, unit: 'kt' } }],
    ['VRB03KT', { from: 'variable', speed: { value: 3, unit: 'kt' } }],
    ['///05KT', { from: 'not reported', speed: { value: 5, unit: 'kt' } }],
    [
      '24008G15MPS',
      { from: { value: 240, unit: 'degTrue' }, speed: { value: 8, unit: 'mps' }, gust: { value: 15, unit: 'mps' } },
    ],
    [
      '24010KT 200V280',
      {
        from: { value: 240, unit: 'degTrue' },
        speed: { value: 10, unit: 'kt' },
        range: { from: { value: 200, unit: 'degTrue' }, to: { value: 280, unit: 'degTrue' } },
      },
    ],
  ])('turns the wind %s into one that a request takes', (group, wind) => {
    const result = weatherOf(`${group} 26/16 Q1006`);
    expect(result).toMatchObject({ ok: true, value: { wind: { source: 'METAR', ...wind } } });
    if (result.ok) expect(readWeather(result.value)).toEqual(result);
  });

  it('leaves out a dew point that is missing, and takes a pressure in inches', () => {
    const result = weatherOf('19007KT 26/// A2970');
    expect(result).toMatchObject({ ok: true, value: { qnh: { value: 29.7, unit: 'inHg' } } });
    expect(result.ok && 'dewPoint' in result.value).toBe(false);
    expect(weatherOf('19007KT 26/16 Q1005 A2970')).toMatchObject({ value: { qnh: { value: 1005, unit: 'hPa' } } });
  });

  it.each([
    ['26/16 Q1006', ['wind: no wind: the report has no such group']],
    ['/////KT 26/16 Q1006', ['wind: no wind: the report has solidi in its place']],
    ['190//KT 26/16 Q1006', ['wind.speed: no wind speed: the report has solidi in its place']],
    ['19007KT Q1006', ['temperature: no temperature: the report has no such group']],
    ['19007KT ///// Q1006', ['temperature: no temperature: the report has solidi in its place']],
    ['19007KT 26/16', ['qnh: no QNH: the report has no such group']],
    ['19007KT 26/16 Q////', ['qnh: no QNH: the report has solidi in its place']],
    ['19007KT 26/16 A////', ['qnh: no QNH: the report has solidi in its place']],
    [
      'RMK 19007KT 26/16 Q1006',
      [
        'wind: no wind: the report has no such group',
        'temperature: no temperature: the report has no such group',
        'qnh: no QNH: the report has no such group',
      ],
    ],
    ['19007KT 55/16 Q1006', ['temperature.value: 55 degC is not within -40 to 50 degC']],
    ['190120KT 26/16 Q1006', ['wind.speed.value: 120 kt is not within 0 to 100 kt']],
  ])('says what a request lacks: %s', (groups, lines) => expect(faults(groups)).toEqual(lines));

  it('has no weather in a report that is NIL', () => {
    expect(faults('NIL')).toEqual([': the report is NIL: no observation']);
  });
});
