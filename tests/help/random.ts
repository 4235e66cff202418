/** Numbers that look random and are the same for the same seed, for books made up by a generator. */

export type Random = () => number;

/**
 * From 0 up to 1: the multiplicative congruential generator with modulus 2^31 − 1 and multiplier 48271
 * (S. Park and K. Miller, CACM 31 (1988) 1192 and 36 (1993) 108; from memory). Good for making books up, no more.
 */
export function seeded(seed: number): Random {
  let state = 1 + (Math.abs(Math.trunc(seed)) % (MODULUS - 1));
  return () => {
    // The product stays below 2^53, where numbers are exact.
    state = (state * 48_271) % MODULUS;
    return (state - 1) / (MODULUS - 1);
  };
}

const MODULUS = 2_147_483_647;
