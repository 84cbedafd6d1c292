import { describe, expect, it } from 'vitest';
import type { AnyRequest } from '../../src/study/any-request.ts';
import { lineUpLossInput, runwayLengthInput, slopeInput } from '../../src/study/inputs/runway.ts';
import { type Changes, landingRequest, takeoffRequest } from '../assessment/scenario.ts';

const foot_m = 0.3048;
const quarry = (changes: Changes = {}) => takeoffRequest('quarry-takeoff-04', changes);
const metres = ({ value, unit }: { value: number; unit: string }) => value * (unit.startsWith('ft') ? foot_m : 1);

/** Elevations of both ends and of the two obstacles, in feet. */
const elevations = ({ runway }: AnyRequest) => ({
  ends: runway.ends.map(({ elevation }) => metres(elevation) / foot_m),
  obstacles: runway.obstacles?.map(({ topElevation, groundElevation }) =>
    [topElevation, groundElevation].map((each) => each && metres(each) / foot_m),
  ),
});
const near = (value: number) => expect.closeTo(value, 6);

describe('a longer runway', () => {
  it('keeps its slope and its higher end, and takes what stands beyond the lower one along', () => {
    // 7 ft in 700 m are 8 ft in 800 m: the 04 end and the bank beyond it are 1 ft lower, the 22 end and the heap stay.
    const longer = runwayLengthInput(quarry()).at(800);
    expect(elevations(longer)).toEqual({
      ends: [near(1845), near(1853)],
      obstacles: [
        [undefined, near(1845)],
        [near(1950), undefined],
      ],
    });
    expect(longer.runway.length).toEqual({ value: 800, unit: 'm' });
    // Downhill in the other direction of use, and the same ground.
    expect(elevations(runwayLengthInput(quarry({ runwayInUse: '22' })).at(800))).toEqual(elevations(longer));
  });

  it('keeps a level runway level', () => {
    const level = quarry({ 'runway.ends.0.elevation': { value: 1853, unit: 'ftElevation' } });
    expect(elevations(runwayLengthInput(level).at(800)).ends).toEqual([near(1853), near(1853)]);
  });

  it('takes the top of an obstacle along where that is what is known', () => {
    const top = {
      name: 'haul road bank',
      end: '04',
      beyond: { value: 40, unit: 'm' },
      topElevation: { value: 1862, unit: 'ftElevation' },
    };
    const longer = runwayLengthInput(quarry({ 'runway.obstacles.0': top })).at(800);
    expect(elevations(longer).obstacles?.[0]).toEqual([near(1861), undefined]);
  });

  it('has every declared distance longer by as much', () => {
    const distances = runwayLengthInput(quarry()).at(800).runway.ends[0]?.declaredDistances;
    expect(distances).toEqual({
      TORA: { value: 800, unit: 'm' },
      TODA: { value: 860, unit: 'm' },
      ASDA: { value: 880, unit: 'm' },
      LDA: { value: 740, unit: 'm' },
    });
  });

  it('lists no obstacles where the request lists none', () => {
    expect(runwayLengthInput(quarry({ 'runway.obstacles': undefined })).at(800).runway).not.toHaveProperty('obstacles');
    expect(runwayLengthInput(quarry({ 'runway.obstacles': [] })).at(800).runway.obstacles).toEqual([]);
  });
});

describe('the shortest runway that can be asked about', () => {
  const least = (changes: Changes) => runwayLengthInput(quarry(changes)).min;
  const bare = {
    'runway.ends.0.declaredDistances': undefined,
    'runway.ends.1.declaredDistances': undefined,
    'runway.ends.0.displacedThreshold': undefined,
  };

  it('reaches beyond a displaced threshold, at whichever end', () => {
    // Displaced by 60 m.
    expect(least({})).toBe(61);
    expect(least({ runwayInUse: '22' })).toBe(61);
    expect(least({ ...bare })).toBe(50);
  });

  it('leaves every declared distance above nothing', () => {
    // 500 of 700 m: 200 m shorter than the runway, and a metre is left of it at 201 m.
    for (const end of [0, 1]) {
      const distances = { LDA: { value: 500, unit: 'm' } };
      expect(least({ ...bare, [`runway.ends.${end}.declaredDistances`]: distances })).toBe(201);
    }
  });

  it('leaves a metre of the run after lining up', () => {
    // 400 m of run in 700 m: 300 m before it, 30 m used up in lining up, and one more.
    const short = { ...bare, 'runway.ends.0.declaredDistances': { TORA: { value: 400, unit: 'm' } } };
    expect(least({ ...short, 'lineUpLoss.value': 30 })).toBe(331);
    expect(least({ ...short, lineUpLoss: undefined })).toBe(301);
    const { min } = runwayLengthInput(
      landingRequest('quarry-landing-04', { ...short, lineUpLoss: { value: 30, unit: 'm' } }),
    );
    expect(min).toBe(301);
  });
});

describe('the slope', () => {
  it('is uphill positive in the direction of use, to just short of ten percent either way', () => {
    // 7 ft are 2.1336 m, of 700 m.
    const up = slopeInput(quarry());
    expect([up.today, up.min, up.max]).toEqual([near(0.3048), -9.9, 9.9]);
    expect(slopeInput(quarry({ runwayInUse: '22' })).today).toBeCloseTo(-0.3048, 9);
  });

  it('moves the lower end alone', () => {
    // 1 % of 700 m are 7 m; the higher of the two ends keeps its 1853 ft.
    expect(elevations(slopeInput(quarry()).at(1)).ends).toEqual([near(1853 - 7 / foot_m), near(1853)]);
    expect(elevations(slopeInput(quarry()).at(-1)).ends).toEqual([near(1853), near(1853 - 7 / foot_m)]);
  });
});

describe('the line-up loss', () => {
  it('is stated in the unit of the request, and nothing where the request says nothing', () => {
    const feet = lineUpLossInput(quarry({ lineUpLoss: { value: 30, unit: 'ft' } }));
    expect(feet).toMatchObject({ unit: 'ft', today: 30, min: 0 });
    expect(feet?.at(60)).toEqual(quarry({ lineUpLoss: { value: 60, unit: 'ft' } }));
    expect(lineUpLossInput(quarry({ lineUpLoss: undefined }))).toMatchObject({ unit: 'm', today: 0 });
    expect(lineUpLossInput(landingRequest('quarry-landing-04'))).toBeUndefined();
  });

  it('leaves a metre of the run, and is never 500 m', () => {
    expect(lineUpLossInput(quarry())?.max).toBe(499);
    const short = { 'runway.ends.0.declaredDistances': { TORA: { value: 400, unit: 'm' } } };
    expect(lineUpLossInput(quarry(short))?.max).toBe(399);
    expect(lineUpLossInput(quarry({ ...short, lineUpLoss: { value: 30, unit: 'ft' } }))?.max).toBeCloseTo(
      399 / foot_m,
      6,
    );
  });
});
