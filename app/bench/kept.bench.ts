import type { BenchRow } from '../../cli/bench-row.ts';
import { withApp, withPage } from './open-app.ts';
import { budget } from './rows.ts';

/** Odd, so that the last one leaves the spot a step away from where it stood. */
const CHANGES = 41;
const STEP_M = 0.1;

/** From a change in the page until the page says that the server has written it down. */
const bench = (): Promise<BenchRow[]> =>
  withApp(app =>
    withPage(app, async page => {
      await page.goto(`${app.url}/drills/drill-middle-first`);
      await page.getByText(/^In this rep/).waitFor();
      const before = await placeOnServer(app.url);
      const spot = page.getByRole('button', { name: /^F3, one of/ });
      await spot.focus();
      await page.locator('.kept', { hasText: /^Kept/ }).waitFor();
      const timesMs: number[] = [];
      for (let change = 0; change < CHANGES; change++) {
        timesMs.push(
          await page.evaluate(
            async key => {
              const line = document.querySelector('.kept')!;
              let wasUnkept = false;
              const kept = new Promise<void>(resolve => {
                const watch = new MutationObserver(() => {
                  const said = line.textContent ?? '';
                  if (said.startsWith('Not kept')) wasUnkept = true;
                  if (!wasUnkept || !said.startsWith('Kept')) return;
                  watch.disconnect();
                  resolve();
                });
                watch.observe(line, { subtree: true, childList: true, characterData: true });
              });
              const from = performance.now();
              const press = new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true });
              document.activeElement!.dispatchEvent(press);
              await kept;
              return performance.now() - from;
            },
            change % 2 === 0 ? 'ArrowRight' : 'ArrowLeft',
          ),
        );
      }
      const after = await placeOnServer(app.url);
      if (Math.abs(after - before - STEP_M) > 1e-6)
        throw new Error(`the page said kept, and the server has ${after} m after ${before} m`);
      return [
        budget({
          name: 'kept: from a change to the word that it is on disc',
          values: timesMs.slice(5),
          most: 1000,
          share: 0.95,
          note: 'written with synchronous=FULL before it is acknowledged',
        }),
      ];
    }),
  );

export default bench;

/** Where the spot stands along the ice, in what the server gives out. */
const placeOnServer = async (url: string): Promise<number> => {
  const answer = await fetch(`${url}/api/teams/team-lanterns/file`);
  const { documents } = (await answer.json()) as {
    documents: { id: string; value: { spots: Record<string, { role: string; atM: { xM: number } }> } }[];
  };
  const drill = documents.find(({ id }) => id === 'drill-middle-first')!;
  return Object.values(drill.value.spots).find(({ role }) => role === 'F3')!.atM.xM;
};
