import { describe, expect, it } from 'vitest';
import { criterion, landing, takeoff } from './scenario.ts';

describe('without a table', () => {
  it('a landing says so of its distance, its approach and its go-around', () => {
    const bare = landing('landing-10', { 'performanceData.landing': [] });
    const parameters = { table: 'landing', configuration: 'flap-35' };
    expect(criterion(bare, 'landing-distance')).toMatchObject({
      verdict: 'undetermined',
      reasons: [{ code: 'no-table', parameters }],
    });
    expect(bare.speeds.filter(({ name }) => name === 'approach')).toEqual([]);
    const goAround = bare.marks.find(({ id }) => id === 'latest-go-around-point');
    expect(goAround?.reasons).toMatchObject([{ code: 'no-table', parameters }]);
  });

  it('a take-off says so of its distance and of the climb that would start from its speed', () => {
    const bare = takeoff('takeoff-10', { configuration: 'flap-0', 'performanceData.climb.0.configuration': 'flap-0' });
    const reason = { code: 'no-table', parameters: { table: 'take-off', configuration: 'flap-0' } };
    expect(criterion(bare, 'takeoff-distance').reasons).toMatchObject([reason]);
    expect(criterion(bare, 'obstacle').reasons).toMatchObject([reason]);
  });
});
