import { describe, expect, it } from 'vitest';
import { type Changes, codes, takeoff, totals } from './scenario.ts';

const marks = (changes: Changes, name = 'takeoff-28') =>
  takeoff(name, changes).marks.map(({ id, at, shareOfRunway, speed, reasons }) =>
    at === undefined ? [id, ...codes(reasons)] : [id, at.value, shareOfRunway?.value, ...(speed ? [speed.value] : [])],
  );
const none = (code: string) => ['latest-lift-off', 'acceleration-check', 'latest-reject-point'].map((id) => [id, code]);
const metres = (value: number) => ({ value, unit: 'm' });
const along = (knots: number): Changes => ({
  'runway.obstacles': [],
  'weather.wind': { source: 'METAR', from: { value: 112, unit: 'degTrue' }, speed: { value: knots, unit: 'kt' } },
});
const lightOnly = { axes: [{ quantity: 'mass', unit: 'kg', values: [800, 900] }], unit: 'kias', cells: [45, 46] };

describe('the marks of a take-off', () => {
  it('are none where anything that they rest on is not known', () => {
    expect(marks({ 'runway.obstacles': undefined })).toEqual(none('obstacles-not-assessed'));
    expect(marks({ configuration: 'flap-0' })).toEqual(none('mark-not-known'));
    expect(marks({ 'performanceData.calibrations': [] })).toEqual(none('mark-not-known'));
    expect(marks({ 'performanceData.takeoff.0.liftOffSpeed': lightOnly })).toEqual(none('mark-not-known'));
  });

  it('are none in a wind of more than half the lift-off speed, 48 KIAS', () => {
    expect(marks(along(25), 'takeoff-10')).toEqual(none('mark-wind-too-strong'));
    expect(marks(along(24), 'takeoff-10').map(([, at]) => typeof at)).toEqual(['number', 'number', 'number']);
  });

  it('have no reject point without a braking coefficient', () => {
    expect(marks({ brakingCoefficient: undefined })).toEqual([
      ...marks({}).slice(0, 2),
      ['latest-reject-point', 'mark-needs-braking'],
    ]);
  });

  it('count from where the roll starts, and show their share from the painted end', () => {
    // 830 - 100 m less the 256.4 m in the air, 616.2 - 359.8: 473.6 m and half of it; 573.6 and 336.8 of 830 m.
    expect(marks({ lineUpLoss: metres(100) }).slice(0, 2)).toEqual([
      ['latest-lift-off', 473, 69],
      ['acceleration-check', 236, 40, 34],
    ]);
  });

  it('reject the later, the more there is to stop in and the sooner the pilot brakes', () => {
    const reject = (changes: Changes) => marks(changes)[2]?.[1];
    // 50.4 KCAS are 51.95 KTAS, with 3.53 kt of tailwind 28.54 m/s after 573.6 m: 0.7102 m/s². With v² = 1.4203 x,
    // x + 3 v + v² / (2 x 0.2 x 9.80665) = 1.36209 x + 3.5753 root x is 860 m at 568.8 m.
    expect(reject({ 'runway.ends.1.declaredDistances.ASDA.value': 860 })).toBe(568);
    // With 2 s 1.36209 x + 2.3836 root x is 830 m at 567.7 m.
    expect(reject({ 'policies.reactionTime': { value: 2, unit: 's' } })).toBe(567);
  });

  it('end where the wheels would leave the runway, and where nothing is left to fly over', () => {
    // 12 m of pines just behind a clearway that is as long as nothing.
    const tall = { 'runway.obstacles.0.height.value': 120 };
    expect(marks(tall, 'takeoff-10')).toEqual(none('mark-none-obstacles'));
    // 722 m are asked for; with 256.4 m in the air less than the roll is left of 600 m.
    const short = ['TORA', 'TODA', 'ASDA'].map((key) => [`runway.ends.1.declaredDistances.${key}.value`, 600]);
    expect(marks(Object.fromEntries(short))).toEqual(none('mark-none-roll'));
  });
});

describe('an addition to the lift-off speed', () => {
  const added = (knots: number) => ({ liftOffSpeedAddition: { value: knots, unit: 'kt' } });
  const table = 'performanceData.takeoff.0';
  /** One printed figure for 1 050 kg, 51 KIAS. */
  const heavy: Changes = {
    factorSet: 'uk-light-aeroplane-leaflet',
    [`${table}.distance`]: { axes: [], unit: 'm', cells: 400 },
    [`${table}.groundRoll`]: { axes: [], unit: 'm', cells: 200 },
    [`${table}.associatedConditions.mass`]: { value: 1050, unit: 'kg' },
    [`${table}.associatedConditions.pressureAltitude`]: { value: 2000, unit: 'ftPA' },
    [`${table}.associatedConditions.temperature`]: { value: 30, unit: 'degC' },
  };
  const reasons = (changes: Changes) =>
    takeoff('takeoff-28', changes)
      .criteria.find(({ id }) => id === 'takeoff-distance')
      ?.reasons.map(({ code, parameters }) => [code, parameters]);
  const tread = (changes: Changes) => totals(takeoff('takeoff-28', changes))['speed addition'];

  it('lengthens the roll by the square of the speeds, and the run with it', () => {
    const faster = takeoff('takeoff-28', added(2));
    // 359.8 m x (52 / 50.16)² = 386.7 m; 386.7 x 1.25 = 483.3 m.
    expect(faster.criteria.find(({ id }) => id === 'takeoff-run')).toMatchObject({ value: { value: 484 } });
    const { factor = 0 } = faster.stairs?.steps.find(({ step }) => step === 'speed addition') ?? {};
    expect(factor).toBeCloseTo(643.1 / 616.2, 3);
  });

  it('is paid for from the speed of the table, and earns nothing below it', () => {
    // At 850 kg 45 KIAS are printed: with 6 kt the table's 51, with 7 one more: 52 and 51 KIAS are 53.6 and 52.8 KCAS.
    const light = { ...heavy, 'mass.value': 850 };
    expect(tread({ ...light, ...added(2) })).toBeUndefined();
    expect(tread({ ...light, ...added(6) })).toBeUndefined();
    const before = totals(takeoff('takeoff-28', light))['surface'] as number;
    // 400 m x 1.159 x 1.2 with 200 m x 1.159 and the 92.7 m of the grass on the ground.
    const roll = 200 * 1.15905 + 0.2 * 400 * 1.15905;
    expect(tread({ ...light, ...added(7) })).toBeCloseTo(before + roll * ((53.6 / 52.8) ** 2 - 1), 0);
  });

  it('has no price without the speed of the table, or a calibration', () => {
    const notAt1050 = {
      ...heavy,
      [`${table}.liftOffSpeed`]: {
        axes: [{ quantity: 'mass', unit: 'kg', values: [850, 1000] }],
        unit: 'kias',
        cells: [45, 49],
      },
    };
    expect(reasons({ ...notAt1050, ...added(2) })).toEqual([
      ['off-table', { table: 'lift-off speed', quantity: 'mass', given: 1050, min: 850, max: 1000, unit: 'kg' }],
    ]);
    expect(reasons({ 'performanceData.calibrations': [], ...added(2) })).toEqual([
      ['no-calibration', { flap: '15', speed_kias: 50, purpose: 'the cost of the speed addition' }],
    ]);
    const ignored = { 'policies.speedAdditionInDistance': 'ignored' };
    expect(reasons({ 'performanceData.calibrations': [], ...added(2), ...ignored })).toEqual([]);
  });

  it('is not spoken of where the distance has no figure', () => {
    const snow = takeoff('takeoff-28', { 'runway.surface': { kind: 'snow' }, ...added(2) });
    expect(snow.trace.some((entry) => entry.kind === 'decision' && entry.code === 'speed-addition-paid')).toBe(false);
  });
});
