import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { designatorDirection, magneticFromTrue, nearestDesignators } from '../../src/magnetism/index.ts';
import { DomainError, degEast, degMagnetic, degTrue } from '../../src/units/index.ts';
import { evenly } from '../evenly.ts';

const direction = evenly(0, 360);

/** How far two directions are apart, 0 to 180. */
function apart(a: number, b: number): number {
  return Math.abs(((((a - b) % 360) + 540) % 360) - 180);
}

function found(bearing: number): string[] {
  const result = nearestDesignators({ direction: degMagnetic(bearing) });
  return result.kind === 'one' ? [result.designator] : [result.first, result.second];
}

describe('nearestDesignators', () => {
  it('gives every designator that is as near as any, and no other', () => {
    fc.assert(
      fc.property(fc.oneof(direction, fc.integer({ min: 0, max: 360 })), (bearing) => {
        const distances = Array.from({ length: 36 }, (_, i) => apart(bearing, 10 * (i + 1)));
        const least = Math.min(...distances);
        const nearest = distances.flatMap((each, i) => (each - least <= 2e-9 ? [i + 1] : []));
        expect(
          found(bearing)
            .map(Number)
            .sort((a, b) => a - b),
        ).toEqual(nearest);
      }),
    );
  });

  it('says how far the direction is from that of the designator', () => {
    fc.assert(
      fc.property(direction, (bearing) => {
        const result = nearestDesignators({ direction: degMagnetic(bearing) });
        if (result.kind === 'tie') return;
        expect(Math.abs(result.offset)).toBeLessThanOrEqual(5);
        expect(apart(Number(result.designator) * 10 + result.offset, bearing)).toBeLessThan(1e-9);
      }),
    );
  });

  it('gives both sides of a 5, also across north', () => {
    expect(found(185)).toEqual(['18', '19']);
    expect(found(5)).toEqual(['36', '01']);
    expect(found(355)).toEqual(['35', '36']);
    expect(found(184.999)).toEqual(['18']);
    expect(found(185.001)).toEqual(['19']);
  });

  it('does not lose a tie in the last bit of a conversion', () => {
    const bearing = magneticFromTrue({ direction: degTrue(16.1), variation: degEast(1.1) });
    expect(bearing).not.toBe(15);
    expect(found(bearing)).toEqual(['01', '02']);
  });

  it('numbers north 36 and says that this is recalled', () => {
    for (const bearing of [0, 360, 4.9, 355.1]) {
      expect(nearestDesignators({ direction: degMagnetic(bearing) })).toMatchObject({
        designator: '36',
        access: 'recalled',
      });
    }
    expect(nearestDesignators({ direction: degMagnetic(5) })).toMatchObject({ access: 'recalled' });
    expect(nearestDesignators({ direction: degMagnetic(355) })).toMatchObject({ access: 'recalled' });
    expect(nearestDesignators({ direction: degMagnetic(10) })).toMatchObject({ designator: '01', access: 'read' });
  });

  it.each([-0.001, 360.001, Number.NaN, Number.POSITIVE_INFINITY, '183', undefined])('refuses %s', (bearing) => {
    const call = () => nearestDesignators({ direction: bearing as never });
    expect(call).toThrow(DomainError);
    expect(call).toThrow(/^direction: /);
  });

  it('does not accept a true direction', () => {
    // @ts-expect-error designators are magnetic
    nearestDesignators({ direction: degTrue(183) });
  });
});

describe('designatorDirection', () => {
  it('undoes nearestDesignators: the direction is ten times the number, and what it rounds lies in the spread', () => {
    fc.assert(
      fc.property(direction, (bearing) => {
        for (const designator of found(bearing)) {
          const stated = designatorDirection({ designator });
          expect(apart(stated.direction, bearing)).toBeLessThanOrEqual(5 + 1e-9);
          expect(apart(stated.spreadFrom, stated.direction)).toBe(5);
          expect(apart(stated.spreadTo, stated.direction)).toBe(5);
          expect((stated.spreadTo - stated.spreadFrom + 360) % 360).toBe(10);
        }
      }),
    );
  });

  it.each([
    ['09L', 9, 'L', 90],
    ['9L', 9, 'L', 90],
    ['27', 27, 'none', 270],
    ['18C', 18, 'C', 180],
    ['36R', 36, 'R', 360],
    ['01', 1, 'none', 10],
    ['1', 1, 'none', 10],
  ])('reads %s', (designator, number, side, bearing) => {
    expect(designatorDirection({ designator })).toMatchObject({
      number,
      side,
      direction: bearing,
      directionFrom: 'designator',
    });
  });

  it('keeps the spread on the compass', () => {
    expect(designatorDirection({ designator: '36' })).toMatchObject({ spreadFrom: 355, spreadTo: 5 });
    expect(designatorDirection({ designator: '01' })).toMatchObject({ spreadFrom: 5, spreadTo: 15 });
  });

  it.each(['00', '0', '37', '99', '009', '9LL', '09X', 'L', '', ' 09', '09 ', '09l', '-9', '9.5', '09T', '1e1', '9\n'])(
    'refuses "%s"',
    (designator) => {
      const call = () => designatorDirection({ designator });
      expect(call).toThrow(DomainError);
      expect(call).toThrow(/^designator: /);
    },
  );

  it.each([9, null, undefined, {}, ['09'], Object.create(null), Symbol('09')])(
    'refuses what is no text',
    (designator) => {
      expect(() => designatorDirection({ designator: designator as never })).toThrow(DomainError);
    },
  );

  it('never throws anything but its own error, and shortens what it quotes', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 3000 }), (designator) => {
        try {
          expect(designatorDirection({ designator }).number).toBeGreaterThan(0);
        } catch (error) {
          expect(error).toBeInstanceOf(DomainError);
          expect((error as DomainError).message.length).toBeLessThan(200);
        }
      }),
    );
  });
});
