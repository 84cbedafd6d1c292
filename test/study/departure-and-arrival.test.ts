import { describe, expect, it } from 'vitest';
import { assessLanding, assessTakeoff } from '../../src/assessment/index.ts';
import {
  assessDepartureAndArrival,
  type DepartureAndArrivalRequest,
  readDepartureAndArrivalRequest,
} from '../../src/study/index.ts';
import { pressureAltitude_ft, printed, wind } from '../assessment/recompute.ts';
import { landingRequest, takeoffRequest } from '../assessment/scenario.ts';

const schema = 'groundroll/departure-and-arrival-request/1';

function arrivalWithout(name: string, ...keys: string[]) {
  return Object.fromEntries(Object.entries(landingRequest(name)).filter(([key]) => !keys.includes(key)));
}

function flight(changes: object = {}, name = 'landing-10'): DepartureAndArrivalRequest {
  return {
    schema,
    sequence: 'departure then arrival',
    departure: takeoffRequest('takeoff-28'),
    arrival: arrivalWithout(name, 'mass', 'performanceData'),
    ...changes,
  } as DepartureAndArrivalRequest;
}

function inAndOut(changes: object = {}): DepartureAndArrivalRequest {
  return {
    schema,
    sequence: 'arrival then departure',
    arrival: landingRequest('landing-10'),
    departure: {
      schema: 'groundroll/takeoff-request/1',
      runwayInUse: '28',
      configuration: 'flap-15',
    },
    departureTemperature: { value: 33, unit: 'degC' },
    ...changes,
  } as DepartureAndArrivalRequest;
}

function found(request: DepartureAndArrivalRequest) {
  const result = assessDepartureAndArrival(request);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

const texts = (request: DepartureAndArrivalRequest) => found(request).sentences.map(({ text }) => text);
const faults = (request: unknown) => {
  const result = readDepartureAndArrivalRequest(request);
  return result.ok ? [] : result.faults.map(({ path, message }) => `${path}: ${message}`);
};

describe('both ends of a flight', () => {
  it('are the two assessments by themselves, with one verdict and sentences in the order of flight', () => {
    const both = found(flight());
    expect(both.departure).toEqual((assessTakeoff(takeoffRequest('takeoff-28')) as { value: unknown }).value);
    expect(both.arrival).toEqual((assessLanding(landingRequest('landing-10')) as { value: unknown }).value);
    expect(both.verdict).toBe('within');
    expect(texts(flight())).toEqual([
      'Take-off on 28 at Vesikorpi, then landing on 10 at Vesikorpi: within limits.',
      'No fuel burnt is stated: the landing mass is the take-off mass, 940 kg.',
      'Take-off on 28: within limits; tightest is crosswind, 1 kt to spare.',
      'Landing on 10: within limits; tightest is crosswind, 1 kt to spare.',
    ]);
  });

  it('lands with the mass less the fuel burnt, in either unit', () => {
    const burnt = found(flight({ fuelBurnt: { value: 35, unit: 'kg' } }));
    expect(burnt.arrival.request.mass).toEqual({ value: 905, unit: 'kg' });
    expect(burnt.sentences[1]?.text).toBe('Landing mass 905 kg: the take-off mass 940 kg less 35 kg of fuel burnt.');
    const inPounds = found(flight({ fuelBurnt: { value: 100, unit: 'lb' } }));
    expect(inPounds.arrival.request.mass.value).toBeCloseTo(940 - 45.359237, 6);
  });

  it('is outside when either end is, and undetermined when one is and the other within', () => {
    expect(found(flight({}, 'landing-28')).verdict).toBe('outside');
    const open = flight();
    const { obstacles: _, ...runway } = open.departure.runway as { obstacles?: unknown };
    const departure = { ...open.departure, runway } as never;
    expect(found({ ...open, departure } as never).verdict).toBe('undetermined');
    const outside = { ...flight({}, 'landing-28'), departure };
    expect(found(outside as never).verdict).toBe('outside');
  });

  it('is plain JSON with the limits of use', () => {
    const both = found(flight());
    expect(JSON.parse(JSON.stringify(both))).toEqual(both);
    expect(both.limitsOfUse.length).toBeGreaterThan(0);
    expect(both.notAssessed).toHaveLength(1);
    expect(texts(flight()).join(' ')).not.toMatch(/safe/i);
  });
});

describe('in and out of one field', () => {
  it('departs later, from the same field in the warmer air', () => {
    const both = found(inAndOut());
    expect(both.verdict).toBe('within');
    expect(both.departure.request.runway).toEqual(both.arrival.request.runway);
    expect(both.departure.request.weather).toEqual({
      ...both.arrival.request.weather,
      temperature: { value: 33, unit: 'degC' },
    });
    const alone = takeoffRequest('takeoff-28', { 'weather.temperature.value': 33, brakingCoefficient: undefined });
    const { lineUpLoss: _, ...same } = alone;
    expect(both.departure).toEqual((assessTakeoff(same as never) as { value: unknown }).value);
    const required = printed.takeoffDistance(940, pressureAltitude_ft, 33) * (1 - 0.045 * wind(292).used) * 1.2 * 1.25;
    expect(texts(inAndOut())).toEqual([
      'Landing on 10 at Vesikorpi, then take-off on 28 at Vesikorpi: within limits.',
      'No other mass is stated for the departure: it is the landing mass, 940 kg.',
      'The departure is assessed at 33 °C, the landing at 26 °C; the rest of the weather stays as reported.',
      'Landing on 10: within limits; tightest is crosswind, 1 kt to spare.',
      `Take-off on 28: within limits; tightest is take-off distance, ${830 - Math.ceil(required)} m to spare.`,
    ]);
  });

  it('says so when the field takes the landing and not the departure', () => {
    const hot = inAndOut({ departureTemperature: { value: 37, unit: 'degC' } });
    expect(found(hot).verdict).toBe('outside');
    expect(texts(hot)[5]).toBe(
      'The field takes the landing, and the departure is outside limits: landing now may mean staying.',
    );
  });

  it('takes a mass and a weather of its own for the departure', () => {
    const { departureTemperature: _, ...rest } = inAndOut() as { departureTemperature?: unknown };
    const { departure, arrival } = inAndOut();
    const own = {
      ...rest,
      departure: { ...departure, mass: { value: 900, unit: 'kg' }, weather: arrival.weather },
    } as never;
    expect(texts(own)[1]).toBe('The departure is assessed at 900 kg, the landing at 940 kg.');
    expect(texts(own)).toHaveLength(4);
  });
});

describe('the reader', () => {
  it('reads both forms', () => {
    expect(readDepartureAndArrivalRequest(flight())).toEqual({ ok: true, value: flight() });
    expect(readDepartureAndArrivalRequest(inAndOut())).toEqual({ ok: true, value: inAndOut() });
  });

  it('gives all faults of both ends with their paths', () => {
    const broken = flight({ fuelBurnt: { value: -1, unit: 'kg' }, colour: 'red' });
    const both = {
      ...broken,
      departure: { ...broken.departure, mass: { value: 'heavy', unit: 'kg' } },
      arrival: { ...broken.arrival, runwayInUse: 'west' },
    };
    expect(faults(both)).toEqual([
      'departure.mass.value: "heavy" is not a number',
      'arrival.runwayInUse: "west" is not a runway designator',
      'fuelBurnt.value: -1 kg is not within 0 to 2000 kg',
      'colour: is not a key of this document',
    ]);
  });

  it('gives what is inconsistent at either end, and what is missing of the second', () => {
    const open = flight();
    const both = {
      ...open,
      departure: { ...open.departure, runwayInUse: '09' },
      arrival: { ...open.arrival, runway: undefined, configuration: 'flap-15' },
    };
    const { runway: _, ...arrival } = both.arrival as { runway?: unknown };
    expect(faults({ ...both, arrival })).toEqual([
      'departure.runwayInUse: 09 is not painted at either end (10, 28)',
      'arrival.runway: is missing',
    ]);
    expect(faults({ ...both, arrival: { ...open.arrival, configuration: 'flap-15' } })).toEqual([
      'departure.runwayInUse: 09 is not painted at either end (10, 28)',
      'arrival.configuration: "flap-15" is not a landing configuration of these data: "flap-35"',
    ]);
  });

  it('names a fault of what both ends share once, where it stands', () => {
    const open = flight();
    const data = structuredClone(open.departure.performanceData) as unknown as {
      takeoff: { distance: { axes: { values: number[] }[] } }[];
    };
    data.takeoff[0]?.distance.axes[0]?.values.reverse();
    const shared = faults({ ...open, departure: { ...open.departure, performanceData: data } });
    expect(shared.length).toBeGreaterThan(0);
    expect(shared.filter((line) => line.startsWith('arrival.'))).toEqual([]);
  });

  it('refuses a landing mass that is not the take-off mass less the burn, and a burn of everything', () => {
    expect(faults(flight({ arrival: landingRequest('landing-10') }))).toEqual([]);
    const heavier = landingRequest('landing-10', { 'mass.value': 960 });
    expect(faults(flight({ arrival: heavier }))).toEqual([
      'arrival.mass: 960 kg is not the take-off mass less the fuel burnt, 940 kg; leave it out or state the burn',
    ]);
    expect(faults(flight({ fuelBurnt: { value: 940, unit: 'kg' } }))[0]).toBe(
      'fuelBurnt: 940 kg is not less than the take-off mass, 940 kg',
    );
  });

  it('refuses what belongs to the other form, two aeroplanes, and two fields', () => {
    expect(faults(flight({ departureTemperature: { value: 30, unit: 'degC' } }))).toHaveLength(1);
    expect(faults(inAndOut({ fuelBurnt: { value: 30, unit: 'kg' } }))).toHaveLength(1);
    const { departureTemperature: _, ...neither } = inAndOut() as { departureTemperature?: unknown };
    expect(faults(neither)).toEqual([
      'departureTemperature: one of the temperature at the departure and a weather of its own is needed',
    ]);
    const other = landingRequest('landing-10', { 'performanceData.identity.name': 'Another' });
    expect(faults(flight({ arrival: other }))).toEqual([
      'arrival.performanceData.identity.name: "Another" is not the aeroplane of the other end, "Corran Four"',
    ]);
    const { departure } = inAndOut();
    const { runway } = takeoffRequest('takeoff-28', { 'runway.aerodrome': 'Elsewhere' });
    expect(faults(inAndOut({ departure: { ...departure, runway } }))).toEqual([
      'departure.runway.aerodrome: "Elsewhere" is not the field of the arrival, "Vesikorpi"',
    ]);
  });

  it('never throws, whatever it is given', () => {
    for (const json of [undefined, null, 1, [], {}, { schema }, flight({ departure: null })])
      expect(readDepartureAndArrivalRequest(json).ok).toBe(false);
    expect(assessDepartureAndArrival({ schema } as never).ok).toBe(false);
  });
});
