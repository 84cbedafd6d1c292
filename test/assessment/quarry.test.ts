import { describe, expect, it } from 'vitest';
import { printed } from './recompute.ts';
import { type Changes, codes, judged, landing, takeoff, totals } from './scenario.ts';

// Wet paved 04 at 1 853 ft: 700 m of run, 60 m of clearway, 80 m of stopway, a threshold displaced by 60 m.
const pressureAltitude_ft = 1853 + 145442.156 * (1 - (1009 / 1013.25) ** 0.1902631);
const slope = ((1853 - 1846) * 0.3048) / 700;
const headwindUsed_kt = 0.5 * 8 * Math.cos((19 * Math.PI) / 180);
// A printed 1.00 for wet paved is data.
const corrected =
  printed.takeoffDistance(1010, pressureAltitude_ft, 24) * (1 - 0.01 * headwindUsed_kt) * 1.0 * (1 + 5 * slope);
const landed = printed.landingDistance(pressureAltitude_ft, 24) * (1 - 0.009 * headwindUsed_kt) * 1.15;
const up = (metres: number) => Math.ceil(metres - 1e-9);

const distance = (changes?: Changes) => judged(takeoff('quarry-takeoff-04', changes), 'takeoff-distance');
const declared = (key: string, metres: number) => ({
  [`runway.ends.0.declaredDistances.${key}`]: { value: metres, unit: 'm' },
});

describe('the either/or of performance class B', () => {
  const assess = () => takeoff('quarry-takeoff-04');

  it('is decided by the alternative: 1.25 x the distance is more than the run', () => {
    expect(up(1.25 * corrected)).toBeGreaterThan(700);
    expect(assess().verdict).toBe('within');
    const decision = assess().trace.find((entry) => entry.kind === 'decision' && entry.code === 'safety-alternative');
    expect(decision).toMatchObject({
      parameters: {
        tests: '1 x distance against TORA, 1.15 x distance against TODA, 1.3 x distance against ASDA',
      },
    });
  });

  it('compares the tightest of the three, here 1.3 x the distance with the ASDA', () => {
    expect(distance()).toEqual({
      verdict: 'within',
      value: up(1.3 * corrected),
      limit: 780,
      margin: 780 - up(1.3 * corrected),
    });
    expect(totals(assess())['slope']).toBe(Number(corrected.toFixed(1)));
    expect(totals(assess())['safety factor']).toBe(Number((1.3 * corrected).toFixed(1)));
    expect(assess().stairs?.available.value).toBe(780);
  });

  it('says which of its tests that is, and names the roll for what it is', () => {
    const criterion = (id: string, changes?: Changes) =>
      takeoff('quarry-takeoff-04', changes).criteria.find((each) => each.id === id);
    expect(criterion('takeoff-distance')?.reasons[0]).toMatchObject({
      code: 'tightest-test',
      parameters: { factor: 1.3, against: 'ASDA' },
      text: 'The tightest of its tests: 1.30 x the distance against the ASDA.',
    });
    // Against the TORA the alternative has no factor.
    expect(criterion('takeoff-run')?.quantity).toBe('ground roll');
    const bare = { ...declared('TODA', 700), ...declared('ASDA', 700) };
    expect(criterion('takeoff-run', bare)?.quantity).toBe('ground roll with the safety factor');
    expect(criterion('takeoff-distance', bare)?.reasons).toEqual([]);
    expect(criterion('takeoff-run', { ...bare, safetyFactor: 'none' })?.quantity).toBe('ground roll');
  });

  it('is outside without stopway and clearway, by 1.25 x the distance', () => {
    const bare = { ...declared('TODA', 700), ...declared('ASDA', 700) };
    expect(distance(bare)).toEqual({
      verdict: 'outside',
      value: up(1.25 * corrected),
      limit: 700,
      margin: 700 - up(1.25 * corrected),
    });
  });

  it('is open with a clearway alone, and with a stopway alone', () => {
    // A stopway without a clearway: TODA is the run, which 1.15 x the distance still fits.
    expect(up(1.15 * corrected)).toBeLessThanOrEqual(700);
    expect(distance(declared('TODA', 700))).toMatchObject({ verdict: 'within', limit: 780 });
    // A clearway without a stopway: ASDA is the run, which 1.3 x the distance does not fit.
    expect(distance(declared('ASDA', 700))).toMatchObject({ verdict: 'outside' });
  });

  it('fails with the first of the three: the distance itself against the TORA', () => {
    const short = up(corrected) - 1;
    const changes = { ...declared('TORA', short), 'runway.length.value': 700 };
    const failed = distance(changes);
    expect(failed).toMatchObject({ verdict: 'outside' });
    // One metre more, and the alternative passes.
    expect(distance({ ...changes, ...declared('TORA', short + 1) })).toMatchObject({ verdict: 'within' });
  });

  it('fails with the second: 1.15 x the distance against the TODA', () => {
    const short = up(1.15 * corrected) - 1;
    const changes = { ...declared('TORA', 600), ...declared('TODA', short) };
    expect(distance(changes)).toMatchObject({ verdict: 'outside' });
    expect(distance({ ...changes, ...declared('TODA', short + 1) })).toMatchObject({
      verdict: 'within',
      value: short + 1,
      limit: short + 1,
      margin: 0,
    });
  });

  it('fails with the third: 1.3 x the distance against the ASDA', () => {
    const short = up(1.3 * corrected) - 1;
    expect(distance(declared('ASDA', short))).toMatchObject({ verdict: 'outside' });
    expect(distance(declared('ASDA', short + 1))).toEqual({
      verdict: 'within',
      value: short + 1,
      limit: short + 1,
      margin: 0,
    });
  });

  it('loses what lining up takes off every declared distance', () => {
    const lost = 780 - up(1.3 * corrected) + 1;
    expect(distance({ lineUpLoss: { value: lost, unit: 'm' } })).toMatchObject({ verdict: 'outside' });
    expect(distance({ lineUpLoss: { value: lost - 1, unit: 'm' } })).toMatchObject({ verdict: 'within', margin: 0 });
  });

  it('does not shorten a take-off by the displaced threshold', () => {
    expect(distance({ 'runway.ends.0.displacedThreshold': undefined })).toEqual(distance());
  });

  it('starts its climb-out from 1.25 x the distance whichever alternative decides', () => {
    const [toHeap] = assess().trace.flatMap((entry) =>
      entry.kind === 'step' && entry.record === 'flight-path.required-gradient' ? [entry.inputs['distance']] : [],
    );
    expect(toHeap).toBeCloseTo(700 + 900 - 1.25 * corrected, 6);
    expect(judged(assess(), 'obstacle').verdict).toBe('within');
  });
});

describe('the latest lift-off', () => {
  const at = (changes: Changes) =>
    takeoff('quarry-takeoff-04', { 'runway.obstacles': [], ...changes }).marks.find(
      ({ id }) => id === 'latest-lift-off',
    )?.at?.value;

  it('moves with the clearway, but never beyond the run', () => {
    const before = at({}) as number;
    expect(before).toBeLessThan(700);
    expect(at(declared('TODA', 800))).toBe(before + 40);
    expect(at(declared('TODA', 1200))).toBe(700);
    expect(at({ ...declared('TODA', 1200), lineUpLoss: { value: 20, unit: 'm' } })).toBe(680);
  });
});

describe('landing on the wet runway with its displaced threshold', () => {
  const assess = () => landing('quarry-landing-04');

  it('is within 70 % of the distance from that threshold', () => {
    const required = up(landed / 0.7);
    expect(judged(assess(), 'landing-distance')).toEqual({
      verdict: 'within',
      value: required,
      limit: 640,
      margin: 640 - required,
    });
    expect(assess().verdict).toBe('within');
    expect(totals(assess())['surface']).toBe(Number(landed.toFixed(1)));
  });

  it('takes the landing distance from the runway less the displacement where none is published', () => {
    const unpublished = landing('quarry-landing-04', { 'runway.ends.0.declaredDistances.LDA': undefined });
    expect(judged(unpublished, 'landing-distance')).toEqual(judged(assess(), 'landing-distance'));
  });

  it('would lose distance over the bank from the end of the runway, which is why it is displaced', () => {
    expect(codes(assess().reasons)).not.toContain('approach-loss');
    const atTheEnd = landing('quarry-landing-04', {
      'runway.ends.0.displacedThreshold': undefined,
      ...declared('LDA', 700),
    });
    // 5 m above that end, 40 m before it, and as much clearance as the screen is high.
    const tangent = Math.tan((3 * Math.PI) / 180);
    const lost = (5 - 40 * tangent) / tangent;
    expect(judged(atTheEnd, 'landing-distance')).toMatchObject({ limit: Math.floor(700 - lost) });
    const reason = atTheEnd.reasons.find(({ code }) => code === 'approach-loss');
    expect(reason?.parameters).toMatchObject({ lost_m: up(lost), obstacle: 'haul road bank' });
  });
});
