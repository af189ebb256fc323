import type { BrowserContext } from 'playwright-core';

/**
 * Pages in which the many reps of a drill never come: their workers are made and given work, and none answers, as while a
 * machine is busy with something else. A thousand reps are played anew after every change of a drill, and take more of a
 * processor than all the rest of the page: what is tested beside them need not wait for what nobody looks at.
 */
export const holdReps = (context: BrowserContext): Promise<unknown> =>
  context.addInitScript(() => {
    const Real = Worker;
    class Silent extends EventTarget {
      onmessage = null;
      onerror = null;
      postMessage(): void {}
      terminate(): void {}
    }
    globalThis.Worker = new Proxy(Real, {
      construct: (_, [url, options]: ConstructorParameters<typeof Worker>) =>
        /\/many\.worker\b/.test(`${url}`) ? new Silent() : new Real(url, options),
    });
  });
