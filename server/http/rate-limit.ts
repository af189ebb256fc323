/** How often one caller may ask: a bucket that fills again over time. */
export interface RateLimit {
  /** False when the caller has asked too often. */
  allows(caller: string): boolean;
}

/** Callers remembered at once; beyond, the emptiest memory is a full one. */
const MOST_CALLERS = 10_000;

export function rateLimitOf(
  { most, perMs }: { readonly most: number; readonly perMs: number },
  clock: () => number = Date.now,
): RateLimit {
  const buckets = new Map<string, { left: number; at: number }>();
  return {
    allows(caller) {
      const now = clock();
      const bucket = buckets.get(caller) ?? { left: most, at: now };
      bucket.left = Math.min(most, bucket.left + ((now - bucket.at) / perMs) * most);
      bucket.at = now;
      // Behind the others, so that those who asked last are forgotten last.
      buckets.delete(caller);
      buckets.set(caller, bucket);
      if (buckets.size > MOST_CALLERS) buckets.delete(buckets.keys().next().value!);
      if (bucket.left < 1) return false;
      bucket.left -= 1;
      return true;
    },
  };
}
