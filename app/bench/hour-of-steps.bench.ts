import type { Page } from 'playwright-core';
import type { BenchRow, BenchStop } from '../../cli/bench-row.ts';
import { memoryOf, withApp, withPage } from './open-app.ts';
import { checkNumber, openTimed } from './open-film.ts';
import { jumpInRoom, stepInRoom } from './room-picture.ts';
import { budget, short } from './rows.ts';
import { type NumberedFilm, someFilms } from './some-films.ts';

/** An hour of a hand that presses eight times a second, pressed as fast as pictures come. */
const STEPS = 8 * 3600;
const LOOKS = 12;
const RUN = 45;

/** What an hour of stepping leaves in memory: on and back over the whole film, with a jump after each run of steps. */
const bench = async function* (): AsyncGenerator<BenchRow | BenchStop> {
  const film = someFilms().films[0]!;
  yield await withApp(app =>
    withPage(app, async page => {
      await openTimed(app, page, film);
      await stepped(page, film, STEPS / LOOKS, 0);
      const before = await memoryOf(page);
      const said = [before];
      const from = Date.now();
      for (let look = 1; look < LOOKS; look++) {
        await stepped(page, film, STEPS / LOOKS, look);
        said.push(await memoryOf(page));
      }
      const after = said.at(-1)!;
      const process = said.map(({ processMB }) => (processMB === null ? '?' : short(processMB))).join(', ');
      return budget({
        name: `film ${film.name}: memory gained over an hour of steps`,
        values: [after.heapMB - before.heapMB],
        most: 3,
        unit: 'MB',
        note: `${STEPS} steps in ${short((Date.now() - from) / 60_000)} min and more; heap ${said.map(({ heapMB }) => short(heapMB)).join(', ')} MB; process ${process} MB`,
      });
    }),
  );
};

export default bench;

const stepped = async (page: Page, film: NumberedFilm, count: number, look: number): Promise<void> => {
  for (let run = 0; run * RUN < count; run++) {
    // The golden ratio scatters them; room is left for a run of steps.
    const share = (0.17 + (look * 53 + run) * 0.618034) % 1;
    const start = RUN + Math.floor(share * (film.frameCount - 2 * RUN - 1));
    const by = run % 2 === 0 ? 1 : -1;
    await jumpInRoom(page, start);
    for (let step = 0; step < RUN; step++) await stepInRoom(page, by);
    if (run % 50 === 0) await checkNumber(page, film, start + by * RUN);
  }
};
