import { readdirSync, readFileSync } from 'node:fs';
import { Ajv, type ValidateFunction } from 'ajv';
import { beforeAll, describe, expect, it } from 'vitest';
import { assessLanding, assessTakeoff, type LandingRequest, type TakeoffRequest } from '../../src/assessment/index.ts';
import { checkValues, formulaRecords } from '../../src/register/index.ts';
import { worksheet, worksheetJson } from '../../src/worksheet/index.ts';
import { example, landing, takeoff } from '../assessment/scenario.ts';

const requests = readdirSync(new URL('../../examples/requests/', import.meta.url))
  .filter((file) => /(takeoff|landing).*\.json$/.test(file))
  .map((file) => file.replace('.json', ''));

const assess = (request: TakeoffRequest | LandingRequest) =>
  request.schema === 'groundroll/takeoff-request/1' ? assessTakeoff(request) : assessLanding(request);

function assessed(name: string) {
  const result = assess(example(name) as TakeoffRequest | LandingRequest);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.value;
}

const cases = [
  ...requests.map((name) => [name, assessed(name)] as const),
  ['an undetermined take-off', takeoff('takeoff-28', { configuration: 'flap-0' })] as const,
  ['a take-off without a list of obstacles', takeoff('takeoff-28', { 'runway.obstacles': undefined })] as const,
  ['a landing in a variable wind', landing('landing-10', { 'weather.wind.from': 'variable' })] as const,
];

/** The schemas that the build ships. */
function validator(name: string): ValidateFunction {
  const file = new URL(`../../schemas/${name}.json`, import.meta.url);
  const formats = { date: /^\d{4}-\d{2}-\d{2}$/ };
  return new Ajv({ strict: true, strictTypes: false, strictTuples: false, formats }).compile(
    JSON.parse(readFileSync(file, 'utf8')),
  );
}

const validate: Record<string, ValidateFunction> = {};
beforeAll(() => {
  for (const name of ['takeoff-assessment', 'landing-assessment', 'worksheet', 'takeoff-request', 'landing-request']) {
    validate[name] = validator(name);
  }
});

const json = (value: unknown) => JSON.parse(JSON.stringify(value)) as unknown;
const errors = (name: string, value: unknown) => {
  const check = validate[name] as ValidateFunction;
  return check(value) ? [] : check.errors;
};

it('covers the requests of the examples', () => expect(requests.length).toBeGreaterThanOrEqual(6));

describe.each(cases)('the documents of %s', (_name, assessment) => {
  const kind = assessment.schema.split('/')[1] ?? '';

  it('are what the shipped schemas say', () => {
    expect(errors(kind, json(assessment))).toEqual([]);
    expect(errors(kind.replace('assessment', 'request'), json(assessment.request))).toEqual([]);
    const sheet = worksheet(assessment, formulaRecords, checkValues);
    expect(errors('worksheet', JSON.parse(worksheetJson(sheet)))).toEqual([]);
    expect(errors('worksheet', JSON.parse(worksheetJson(worksheet(assessment, formulaRecords))))).toEqual([]);
  });

  it('come to the same again from the request that they repeat', () => {
    const again = assess((json(assessment) as typeof assessment).request);
    expect(again.ok && json(again.value)).toEqual(json(assessment));
  });

  it('are refused by the schema with a key too many, a key too few, and a verdict of another word', () => {
    const changed = (change: (document: Record<string, unknown>) => void) => {
      const document = json(assessment) as Record<string, unknown>;
      change(document);
      return errors(kind, document);
    };
    const another = changed((document) => {
      document['verdict'] = 'fine';
    });
    const more = changed((document) => {
      document['colour'] = 'none';
    });
    const fewer = changed((document) => {
      delete document['windOnRunway'];
    });
    for (const found of [another, more, fewer]) expect(found).not.toEqual([]);
  });
});
