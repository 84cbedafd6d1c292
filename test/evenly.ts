import fc from 'fast-check';

/**
 * Numbers from `min` to `max`, most of them spread evenly. `fc.double` by itself draws among the numbers a computer has,
 * and from 0 to 10 nearly all of those are next to 0; every fourth number here is one of them.
 */
export function evenly(min: number, max: number): fc.Arbitrary<number> {
  const steps = 2 ** 30;
  const even = fc.integer({ min: 0, max: steps }).map((i) => Math.min(max, min + (i / steps) * (max - min)));
  return fc.oneof({ arbitrary: even, weight: 3 }, { arbitrary: fc.double({ min, max, noNaN: true }), weight: 1 });
}
