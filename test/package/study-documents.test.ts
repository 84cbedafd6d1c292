import fs from 'node:fs';
import path from 'node:path';
import { Ajv } from 'ajv';
import { describe, expect, it } from 'vitest';
import { factorSets } from '../../src/distance/index.ts';
import { runwayDistanceTable } from '../../src/study/index.ts';
import { landingRequest, takeoffRequest } from '../assessment/scenario.ts';
import { root } from './packed.ts';

function validator(name: string) {
  const schema = JSON.parse(fs.readFileSync(path.join(root, 'schemas', `${name}.json`), 'utf8'));
  return new Ajv({
    strict: true,
    strictTypes: false,
    strictTuples: false,
    formats: { date: /^\d{4}-\d{2}-\d{2}$/ },
  }).compile(schema);
}

describe('the JSON Schemas of studies', () => {
  it('accept a request for both ends in either form, and refuse a third', () => {
    const validate = validator('departure-and-arrival-request');
    const schema = 'groundroll/departure-and-arrival-request/1';
    const asData = { factorSet: factorSets['easa-class-b'] };
    const { mass: _, performanceData: __, ...arrival } = landingRequest('landing-10', asData);
    const flight = {
      schema,
      sequence: 'departure then arrival',
      departure: takeoffRequest('takeoff-28', asData),
      arrival,
    };
    const inAndOut = {
      schema,
      sequence: 'arrival then departure',
      arrival: landingRequest('landing-10', asData),
      departure: { schema: 'groundroll/takeoff-request/1', runwayInUse: '28', configuration: 'flap-15' },
      departureTemperature: { value: 33, unit: 'degC' },
    };
    expect([validate(flight), validate(inAndOut)]).toEqual([true, true]);
    expect(validate({ ...flight, sequence: 'both' })).toBe(false);
    expect(validate({ ...flight, arrival: { ...arrival, runwayInUse: 'west' } })).toBe(false);
  });

  it('accept a runway distance table, and refuse one without its limits of use', () => {
    const validate = validator('runway-distance-table');
    const table = runwayDistanceTable(takeoffRequest('takeoff-10'), {
      masses: [{ mass: { value: 940, unit: 'kg' }, loading: 'two up' }],
      temperatures: [
        { value: 10, unit: 'degC' },
        { value: 45, unit: 'degC' },
      ],
    });
    if (!table.ok) throw new Error(JSON.stringify(table.faults));
    expect(validate(JSON.parse(JSON.stringify(table.value)))).toBe(true);
    const { limitsOfUse: _, ...without } = table.value;
    expect(validate(without)).toBe(false);
  });
});
