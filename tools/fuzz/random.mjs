import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/**
 * The random choices of one input. Seed and number of the input decide them alone, so that any input can be made again
 * by itself.
 */
export class Choices {
  #generator;

  /** @param {number} seed @param {number} index */
  constructor(seed, index) {
    this.#generator = xoroshiro128plus(Math.imul(seed ^ Math.imul(index + 1, 0x9e3779b1), 0x85ebca6b));
    // Near seeds begin alike.
    for (let i = 0; i < 8; i += 1) this.#generator.next();
  }

  /** A whole number from 0 up to, not including, `end`. */
  below(end) {
    return (this.#generator.next() >>> 0) % end;
  }

  /** True once in so many times. */
  oneIn(times) {
    return this.below(times) === 0;
  }

  /** @template T @param {readonly T[]} list @returns {T} */
  of(list) {
    return list[this.below(list.length)];
  }

  /** A number from `min` to `max`. */
  within(min, max) {
    return min + ((this.#generator.next() >>> 0) / 0xffffffff) * (max - min);
  }

  /** As many characters of the alphabet. */
  text(alphabet, length) {
    let text = '';
    for (let i = 0; i < length; i += 1) text += alphabet.charAt(this.below(alphabet.length));
    return text;
  }
}
