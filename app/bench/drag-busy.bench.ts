import type { Page } from 'playwright-core';
import type { BenchRow } from '../../cli/bench-row.ts';
import { busyPart } from './busy-part.ts';
import { type Busy, busyIn, drag, MOVES } from './drag-by-mouse.ts';
import { watchDrags } from './drag-watch.ts';
import { withApp, withPage } from './open-app.ts';
import { pasteOnIce } from './paste-on-ice.ts';
import { budget, median, short } from './rows.ts';

const ROLES = ['F5', 'X3', 'F7', 'X9'] as const;

/** The same drag in a drill as full as any: 24 spots and 66 acts, pasted onto bare ice. */
const bench = (): Promise<BenchRow[]> =>
  withApp(app =>
    withPage(app, async page => {
      await pasteOnIce(page, app, busyPart());
      await check(page);
      const watched = await page.evaluateHandle(watchDrags);
      const busyMs: Busy[] = [];
      for (const role of ROLES) busyMs.push(await busyIn(page, () => drag(page, role, 1)));
      const seen = await watched.evaluate(one => one.stop());
      const pictures = seen.shownMs.length / busyMs.length;
      if (pictures < MOVES / 3)
        throw new Error(`${MOVES} moves gave ${pictures} pictures: the drag did not take`);
      const perPicture = (of: (busy: Busy) => number): string => short(median(busyMs.map(of)) / pictures);
      return [
        budget({
          name: 'a spot of 24 dragged, 66 acts: from the move to new figures on screen',
          values: seen.shownMs,
          most: 16,
          share: 0.95,
          note: `${seen.shownMs.length} pictures, ${seen.unchangedCount} moves that changed nothing; the page's own thread works ${perPicture(one => one.taskMs)} ms for each: scripts ${perPicture(one => one.scriptMs)}, styles and layout ${perPicture(one => one.layoutMs)}`,
        }),
      ];
    }),
  );

export default bench;

const check = async (page: Page): Promise<void> => {
  const count = await page.locator('.board [data-thing]').count();
  if (count !== 25) throw new Error(`the full drill has ${count} things on the board`);
};
