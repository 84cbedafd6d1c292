import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** An endless sequence of evenly distributed numbers from 0 up to, not including, 1. */
export type RandomStream = () => number;

/**
 * Independent streams of one seed, one for each input quantity: leaving one quantity out or changing its distribution
 * leaves the draws of the others as they are. Integers alone decide them, so that they are the same everywhere.
 */
export function randomStreams(seed: number, count: number): RandomStream[] {
  const generator = xoroshiro128plus(seed);
  return Array.from({ length: count }, () => {
    // 2 to the 64th numbers ahead: no stream reaches the next, and what a small seed leaves of itself in the first is past.
    generator.jump();
    const own = generator.clone();
    return () => uniformFloat64(own);
  });
}
