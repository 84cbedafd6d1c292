import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addressOf, stateFromAddress } from '../../docs/worksheet-page/address.ts';
import { fieldKeys, fieldOf, obstacleKeys } from '../../docs/worksheet-page/fields.ts';
import { type PageState, startState, withValue } from '../../docs/worksheet-page/state.ts';

const typed = fc.string({ unit: 'grapheme', maxLength: 30 });
const values = fc.record(
  Object.fromEntries(
    fieldKeys.map((key) => {
      const { choices } = fieldOf(key);
      return [key, choices === undefined ? typed : fc.constantFrom(...choices)];
    }),
  ),
);
const obstacles = fc.array(fc.record(Object.fromEntries(obstacleKeys.map((key) => [key, typed]))), { maxLength: 5 });
const states = fc.record({ values, obstacles }) as unknown as fc.Arbitrary<PageState>;

describe('the address of the worksheet page', () => {
  it('gives back whatever is typed and chosen', () => {
    fc.assert(
      fc.property(states, (state) => {
        expect(stateFromAddress(addressOf(state))).toEqual({ ok: true, state });
      }),
    );
  });

  it('says only what differs from the start, in words that can be read', () => {
    expect(addressOf(startState)).toBe('v=1');
    const landing = withValue(withValue(startState, 'job', 'landing'), 'variationSource', 'chart, 2027');
    expect(addressOf(landing)).toBe('v=1&job=landing&variationSource=chart,+2027');
    expect(addressOf({ ...startState, obstacles: [] })).toBe('v=1&listed=0');
  });

  it('means the same for ever: a change of what the page starts with is another version', () => {
    const chosen = fieldKeys.map((key) => `${key}=${startState.values[key]}`);
    expect(chosen).toMatchInlineSnapshot(`
      [
        "job=takeoff",
        "aeroplane=corran-four",
        "takeoffConfiguration=flap-15",
        "landingConfiguration=flap-35",
        "mass=940",
        "massUnit=kg",
        "aerodrome=Vesikorpi",
        "length=830",
        "distanceUnit=m",
        "designator1=10",
        "designator2=28",
        "direction1=112",
        "direction2=292",
        "runwayNorth=true",
        "directionFrom=survey",
        "weather=figures",
        "metar=",
        "temperature=26",
        "dewPoint=16",
        "temperatureUnit=degC",
        "pressureKind=qnh",
        "pressure=1006",
        "pressureUnit=hPa",
        "windSource=METAR",
        "windKind=from",
        "windFrom=190",
        "windNorth=true",
        "windSpeed=7",
        "windGust=17",
        "windUnit=kt",
        "rangeFrom=",
        "rangeTo=",
        "variation=13",
        "variationSide=east",
        "variationSource=chart, 2026",
        "surface=grass",
        "condition=dry",
        "grassLength=up to 20 cm",
        "ground=firm",
        "conditionCode=none",
        "elevation1=387",
        "elevation2=438",
        "elevationUnit=ft",
        "liftOffSpeedAddition=",
        "approachSpeedAddition=",
        "excessHeight=",
        "factorSet=easa-class-b",
        "safetyFactor=of the set",
        "compared=",
        "comparedEdition=",
        "comparedDate=",
        "TORA1=830",
        "TODA1=830",
        "ASDA1=830",
        "LDA1=830",
        "displaced1=",
        "TORA2=830",
        "TODA2=830",
        "ASDA2=830",
        "LDA2=830",
        "displaced2=",
        "lineUpLoss=0",
        "obstacles=listed",
        "heightUnit=m",
        "verticalClearance=50",
        "approachClearance=30",
        "approachAngle=3",
        "crosswindLimit=18",
        "tailwindLimit=5",
        "brakingCoefficient=0.2",
        "headwindShare=",
        "tailwindShare=",
        "reactionTime=",
        "demonstratedCrosswind=limit",
        "favourableSlope=no credit",
        "favourableEdge=read-at-edge",
        "betweenPrintedValues=interpolate",
        "humidity=information",
        "unreportedGust=mean",
        "speedAdditionInDistance=paid for",
        "firstPrinciples=information",
      ]
    `);
    expect(startState.obstacles).toMatchInlineSnapshot(`
      [
        {
          "aside": "",
          "beyond": "25",
          "end": "28",
          "ground": "438",
          "height": "28",
          "name": "pines",
          "top": "",
        },
      ]
    `);
  });

  it.each([
    ['job=landing', ['it does not begin with v=1; version 1 is read here']],
    ['v=2&job=landing', ['it is of version "2"; version 1 is read here']],
    ['v=1&job=fly', ['job is "fly", which is none of takeoff, landing']],
    ['v=1&mas=9', ['"mas" is not a key of it']],
    ['v=1&toString=9', ['"toString" is not a key of it']],
    ['v=1&mass=9&mass=8', ['mass stands twice']],
    ['v=1&mass=%E0%A4%A', ['mass is not percent-encoded text']],
    ['v=1&mass', ['"mass" is not of the form key=value']],
    ['v=1&listed=61', ['listed is "61", which is no number of obstacles from 0 to 60']],
    ['v=1&listed=1&obstacle2.name=x', ['"obstacle2.name" is not a key of it']],
    ['v=1&obstacle1.name=x', ['"obstacle1.name" is not a key of it']],
    [`v=1&mass=${'9'.repeat(2001)}`, ['mass is longer than 2000 characters']],
    ['v=1&job=fly&mas=9', ['job is "fly", which is none of takeoff, landing', '"mas" is not a key of it']],
  ])('is refused with everything that is wrong with it: %.40s', (fragment, faults) => {
    expect(stateFromAddress(fragment)).toEqual({ ok: false, faults });
  });

  it('never throws, whatever stands in it', () => {
    const parts = fc.array(fc.tuple(fc.constantFrom('v', 'job', 'mass', 'listed', 'obstacle1.name'), fc.string()));
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          parts.map((all) => all.map((each) => each.join('=')).join('&')),
        ),
        (text) => {
          const read = stateFromAddress(text);
          if (!read.ok) expect(read.faults.length).toBeGreaterThan(0);
        },
      ),
    );
  });
});
