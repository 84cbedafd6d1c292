import { describe, expect, it } from 'vitest';
import { criterion, judged, landing, takeoff } from './scenario.ts';

const metres = (value: number) => ({ value, unit: 'm' });
const marks = ({ marks: found }: ReturnType<typeof takeoff> | ReturnType<typeof landing>) =>
  Object.fromEntries(found.map(({ id, at, shareOfRunway }) => [id, [at?.value, shareOfRunway?.value]]));

describe('where the roll starts', () => {
  // 600 m of runway that rises by 18 ft, 5.4864 m, and 300 m of clearway; the pines stand 450 m beyond the end.
  const linedUp = () =>
    takeoff('takeoff-10', {
      'runway.length.value': 600,
      'runway.ends.0.elevation.value': 420,
      'runway.ends.0.declaredDistances': { TORA: metres(600), TODA: metres(900) },
      'runway.ends.1.declaredDistances': undefined,
      'runway.obstacles.0.beyond.value': 450,
      lineUpLoss: metres(50),
    });

  it('is what obstacles stand above and away from, on a surface that rises only to the end', () => {
    const [inputs] = linedUp().trace.flatMap((entry) =>
      entry.kind === 'step' && entry.record === 'flight-path.required-gradient' ? [entry.inputs] : [],
    );
    // In 550 m 5.0292 m; the factored distance, 689.86 m, ends beyond: 28 m in the 310.14 m left of 1 000.
    expect(inputs?.['obstacleTop']).toBeCloseTo(28 + 5.0292, 4);
    expect(inputs?.['startHeight']).toBeCloseTo(15.24 + 5.0292, 4);
    expect(judged(linedUp(), 'obstacle')).toMatchObject({ verdict: 'within', value: 10.8, limit: 9.1 });
    // 20.269 + 0.10851 x 310.1 - 33.029 m are 68.6 ft above them; after 551.9 m, with 448.1 m left, 117.7 ft.
    expect(criterion(linedUp(), 'obstacle').reasons[0]?.parameters).toMatchObject({
      factored_ft: 68,
      unfactored_ft: 117,
    });
  });

  it('is what the marks count from, and their share from the painted end', () => {
    // 1 000 m less 28 m / 0.10851 and 219.57 m in the air: 522.4 m, 572.4 of 600 m from the end.
    expect(marks(linedUp())['latest-lift-off']).toEqual([522, 95]);
  });

  it('moves no go-around: the pines stand where they stand', () => {
    const far = { 'runway.obstacles.0.beyond.value': 600 };
    const shorter = { ...far, 'runway.ends.0.declaredDistances.TORA.value': 730 };
    // 715.5 m by the gradients of the climb and the runway, 6.352 and 1.873 %.
    for (const changes of [far, shorter])
      expect(marks(landing('landing-10', changes))['latest-go-around-point']).toEqual([715, 86]);
  });
});
