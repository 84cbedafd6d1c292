import { describe, expect, it } from 'vitest';
import { assessDepartureAndArrival, readDepartureAndArrivalRequest } from '../../src/study/index.ts';
import { landingRequest, performanceData, takeoffRequest } from '../assessment/scenario.ts';

const schema = 'groundroll/departure-and-arrival-request/1';

const without = (request: object, ...keys: string[]) =>
  Object.fromEntries(Object.entries(request).filter(([key]) => !keys.includes(key)));

const arrival = (...keys: string[]) => without(landingRequest('landing-10'), 'mass', 'performanceData', ...keys);

const flight = (changes: object = {}) => ({
  schema,
  sequence: 'departure then arrival',
  departure: takeoffRequest('takeoff-28'),
  arrival: arrival(),
  ...changes,
});

const takeoffLater = { schema: 'groundroll/takeoff-request/1', runwayInUse: '28', configuration: 'flap-15' };

const inAndOut = (changes: object = {}) => ({
  schema,
  sequence: 'arrival then departure',
  arrival: landingRequest('landing-10'),
  departure: takeoffLater,
  departureTemperature: { value: 33, unit: 'degC' },
  ...changes,
});

const faults = (request: unknown) => {
  const result = readDepartureAndArrivalRequest(request);
  return result.ok ? [] : result.faults.map(({ path, message }) => `${path}: ${message}`);
};

/** Performance data whose first take-off axis of masses runs backwards. */
function disordered() {
  const data = performanceData('corran-four') as { takeoff: { distance: { axes: { values: number[] }[] } }[] };
  data.takeoff[0]?.distance.axes[0]?.values.reverse();
  return data;
}

describe('a fault of what the second end takes from the first', () => {
  it('is named once, at the first, beside the first end’s own faults', () => {
    const departure = { ...takeoffRequest('takeoff-28', { performanceData: disordered() }), runwayInUse: 'west' };
    const found = faults(flight({ departure }));
    expect(found.some((line) => line.startsWith('departure.performanceData.takeoff[0]'))).toBe(true);
    expect(found).toContain('departure.runwayInUse: "west" is not a runway designator');
    expect(found.filter((line) => line.startsWith('arrival'))).toEqual([]);
  });

  it('is named once in and out of one field too', () => {
    const found = faults(inAndOut({ arrival: landingRequest('landing-10', { 'runway.length.value': -1 }) }));
    expect(found.filter((line) => line.includes('runway.length.value'))).toEqual([
      expect.stringMatching(/^arrival\.runway\.length\.value: -1 m is not within /),
    ]);
    expect(found.filter((line) => line.startsWith('departure'))).toEqual([]);
  });

  it('is named at both where both state it', () => {
    const runway = { ...takeoffRequest('takeoff-28').runway, length: { value: -1, unit: 'm' } };
    const found = faults(
      flight({ departure: { ...takeoffRequest('takeoff-28'), runway }, arrival: { ...arrival(), runway } }),
    );
    expect(found.map((line) => line.split(':')[0])).toEqual([
      'departure.runway.length.value',
      'arrival.runway.length.value',
    ]);
  });
});

describe('what only the reader of one end can see', () => {
  const notPainted = (end: string) => `${end}.runwayInUse: 09 is not painted at either end (10, 28)`;

  it('is named at both ends where both state it', () => {
    const departure = takeoffRequest('takeoff-28', { runwayInUse: '09' });
    expect(faults(flight({ departure, arrival: { ...arrival(), runwayInUse: '09' } }))).toEqual([
      notPainted('departure'),
      notPainted('arrival'),
    ]);
    const landing = landingRequest('landing-10', { runwayInUse: '09' });
    expect(faults(inAndOut({ arrival: landing, departure: { ...takeoffLater, runwayInUse: '09' } }))).toEqual([
      notPainted('arrival'),
      notPainted('departure'),
    ]);
  });

  it('is named once where the second end takes it from the first, beside what is the first end’s own', () => {
    const landing = landingRequest('landing-10', { runwayInUse: '09', 'runway.obstacles.0.end': '27' });
    const found = faults(inAndOut({ arrival: landing }));
    expect(found).toContain(notPainted('arrival'));
    expect(found.filter((line) => line.startsWith('arrival.runway.obstacles[0].end: '))).toHaveLength(1);
    expect(found.filter((line) => line.startsWith('departure'))).toEqual([]);
  });
});

describe('what is missing', () => {
  it('at the second end is named though the first lacks something else', () => {
    const departure = without(takeoffRequest('takeoff-28'), 'weather');
    expect(faults(flight({ departure, arrival: arrival('runway') }))).toEqual([
      'departure.weather: is missing',
      'arrival.runway: is missing',
    ]);
  });

  it('of the mass at both is named once, at the departure', () => {
    const departure = without(takeoffRequest('takeoff-28'), 'mass');
    expect(faults(flight({ departure }))).toEqual(['departure.mass: is missing']);
    expect(faults(flight({ departure, fuelBurnt: { value: 20, unit: 'kg' } }))).toEqual(['departure.mass: is missing']);
  });

  it('of the aeroplane, or of the field, is no throw', () => {
    const departure = without(takeoffRequest('takeoff-28'), 'performanceData');
    expect(faults(flight({ departure, arrival: without(landingRequest('landing-10'), 'mass') }))).toEqual([
      'departure.performanceData: is missing',
    ]);
    const { runway } = takeoffRequest('takeoff-28');
    const found = faults(
      inAndOut({ arrival: without(landingRequest('landing-10'), 'runway'), departure: { ...takeoffLater, runway } }),
    );
    expect(found).toContain('arrival.runway: is missing');
  });
});

describe('what the two ends say of each other', () => {
  it('a landing mass agrees to half a kilogram', () => {
    // Stated in whole units the difference of two masses is off by up to a half.
    const landing = (value: number) => ({ ...arrival(), mass: { value, unit: 'kg' } });
    expect(faults(flight({ arrival: landing(939.5) }))).toEqual([]);
    expect(faults(flight({ arrival: landing(940.5) }))).toEqual([]);
    expect(faults(flight({ arrival: landing(939.4) }))).toHaveLength(1);
    const fuelBurnt = { value: 40, unit: 'kg' };
    expect(faults(flight({ fuelBurnt, arrival: landing(900) }))).toEqual([]);
    expect(faults(flight({ fuelBurnt, arrival: landing(940) }))).toEqual([
      'arrival.mass: 940 kg is not the take-off mass less the fuel burnt, 900 kg; leave it out or state the burn',
    ]);
  });

  it('a key of the other sequence is refused with the reason', () => {
    expect(faults(flight({ departureTemperature: { value: 30, unit: 'degC' } }))).toEqual([
      'departureTemperature: belongs to an arrival then departure; the departure has its weather',
    ]);
    expect(faults(inAndOut({ fuelBurnt: { value: 30, unit: 'kg' } }))).toEqual([
      'fuelBurnt: belongs to a departure then arrival; state the mass of the departure',
    ]);
  });

  it('a temperature beside a weather of its own is one too many', () => {
    const { weather } = landingRequest('landing-10');
    expect(faults(inAndOut({ departure: { ...takeoffLater, weather } }))).toEqual([
      'departureTemperature: one of the temperature at the departure and a weather of its own is needed',
    ]);
  });
});

describe('an assessment of both ends', () => {
  const sentences = (request: object) => {
    const result = assessDepartureAndArrival(request as never);
    if (!result.ok) throw new Error(JSON.stringify(result.faults));
    return result.value.sentences.map(({ text }) => text);
  };

  it('says what is burnt', () => {
    expect(sentences(flight({ fuelBurnt: { value: 25, unit: 'kg' } }))[1]).toBe(
      'Landing mass 915 kg: the take-off mass 940 kg less 25 kg of fuel burnt.',
    );
  });

  it('gives the faults of either end and no more', () => {
    const result = assessDepartureAndArrival(flight({ arrival: arrival('runway') }) as never);
    expect(result).toEqual({ ok: false, faults: [{ path: 'arrival.runway', message: 'is missing' }] });
  });
});
