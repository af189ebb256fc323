import { megabytes } from '../megabytes.ts';
import type { useCopies } from './use-copies.ts';

/** How much is kept round the moments, once there is any of it. */
export function KeptReady({ copies }: { readonly copies: ReturnType<typeof useCopies> }) {
  if (copies.byteCount === 0) return null;
  return (
    <p className="q3 kept-ready" data-waiting={copies.waitingCount}>
      Round the moments {megabytes(copies.byteCount)} are kept ready in this browser, so that they come at
      once; they go with their moments.
    </p>
  );
}
