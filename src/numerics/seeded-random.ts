/**
 * Numbers between 0 and 1, the same ones for the same seed on every computer.
 *
 * A counter through a 32-bit mixing function (xor-shift and multiply, three rounds): its sequence does not repeat within
 * 2^32 numbers, which is far more than a sample here asks for. Not for secrets.
 *
 * @param seed - whole number; others are rounded down
 * @returns the next number at each call, 0 included, 1 not
 */
export function seededRandom(seed: number): () => number {
  let counter = Math.floor(seed) >>> 0;
  return () => {
    counter = (counter + 0x9e3779b9) >>> 0;
    let mixed = counter;
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    mixed ^= mixed >>> 16;
    return (mixed >>> 0) / 4_294_967_296;
  };
}
