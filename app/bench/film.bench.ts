import type { Page } from 'playwright-core';
import type { BenchRow, BenchStop } from '../../cli/bench-row.ts';
import { type RunningApp, startApp } from '../../test/browser.ts';
import { JUMPS, jumpsRow, keptReadyRow, REST_MS } from './film-jumps.ts';
import { hugeFilm } from './huge-film.ts';
import { memoryOf, openPage, withApp, withPage } from './open-app.ts';
import { checkNumber, openTimed } from './open-film.ts';
import { jumpInRoom, jumpRead, stepInRoom } from './room-picture.ts';
import { atShare, budget, median, short } from './rows.ts';
import { type NumberedFilm, someFilms } from './some-films.ts';

const STEPS = 30;
const LONG_STEPS = 180;
const MANY_STEPS = 120;
const PRESS_EVERY_MS = 125;

/** Exact frames in the film room, against a plain video element that seeks the same file in the same run; each figure as it comes. */
const bench = async function* (): AsyncGenerator<BenchRow | BenchStop> {
  const app = await startApp();
  let huge: NumberedFilm | null = null;
  try {
    const { films, said, canBeHuge } = someFilms();
    for (const film of films) yield* rowsOf(app, film, said);
    huge = canBeHuge ? hugeFilm(films[0]!) : null;
  } finally {
    await app.close();
  }
  if (huge) yield await hugeRow(huge);
};

export default bench;

/** Three times by a team that never had it. */
const hugeRow = async (film: NumberedFilm): Promise<BenchRow> => {
  const values: number[] = [];
  for (let time = 0; time < 3; time++) {
    values.push(await withApp(app => withPage(app, page => openTimed(app, page, film))));
  }
  return budget({ name: `film ${film.name}: first frame`, values, most: 1000 });
};

/** A part that takes longer than it may ends the figures of its film, and says so. */
const rowsOf = async function* (
  app: RunningApp,
  film: NumberedFilm,
  said: string,
): AsyncGenerator<BenchRow | BenchStop> {
  const { page: room, context } = await openPage(app);
  try {
    for (const [name, part] of partsOf(app, room, film, said)) {
      const row = await within(PART_MOST_S, part()).catch(error => ({
        stopped: `film ${film.name}: ${name} gave no figure: ${error instanceof Error ? error.message : String(error)}`,
      }));
      yield row;
      if ('stopped' in row) return;
    }
  } finally {
    await context.close();
  }
};

const PART_MOST_S = 150;

const within = <Result>(mostS: number, work: Promise<Result>): Promise<Result> =>
  new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new Error(`not within ${mostS} s`)), mostS * 1000);
    work.then(resolve, reject).finally(() => clearTimeout(timer));
  });

const partsOf = (
  app: RunningApp,
  room: Page,
  film: NumberedFilm,
  said: string,
): readonly (readonly [name: string, part: () => Promise<BenchRow>])[] => [
  [
    'the first frame',
    async () =>
      budget({
        name: `film ${film.name}: first frame after it is chosen`,
        values: [await openTimed(app, room, film)],
        most: 1000,
      }),
  ],
  ['jumps', () => jumpsRow(app, room, film, said)],
  [
    'steps',
    async () =>
      budget({
        name: `film ${film.name}: ±1 frame from the cache`,
        values: await stepsFromCache(room, film),
        most: 16,
      }),
  ],
  ['steps back', () => backRow(room, film)],
  ['memory', () => memoryRow(room, film)],
  ['jumps round moments', () => momentsRow(room, film)],
  ['jumps in a film kept ready', () => keptReadyRow(app, room, film, said)],
];

const momentsRow = async (room: Page, film: NumberedFilm): Promise<BenchRow> => {
  const moments = await roundMoments(room, film);
  return budget({
    name: `film ${film.name}: the frame after a jump round a marked moment`,
    values: moments.map(({ ms }) => ms),
    most: 150,
    share: 0.95,
    note: `${moments.filter(({ isCopy }) => isCopy).length} of ${moments.length} from a copy first; median ${short(median(moments.map(({ ownMs }) => ownMs)))} ms until the film's own picture`,
  });
};

/** Far more steps than pictures are kept, each way, as often as a hand presses. */
const backRow = async (room: Page, film: NumberedFilm): Promise<BenchRow> => {
  const steps = async (by: 1 | -1): Promise<number[]> => {
    const timesMs: number[] = [];
    for (let step = 0; step < MANY_STEPS; step++) {
      timesMs.push(await stepInRoom(room, by));
      await room.waitForTimeout(Math.max(0, PRESS_EVERY_MS - timesMs.at(-1)!));
    }
    return timesMs;
  };
  const from = Math.floor(film.frameCount * 0.55);
  await room.bringToFront();
  await jumpInRoom(room, from);
  await room.waitForTimeout(REST_MS);
  const on = await steps(1);
  await checkNumber(room, film, from + MANY_STEPS);
  await room.waitForTimeout(REST_MS);
  const back = await steps(-1);
  await checkNumber(room, film, from);
  const p95 = (values: readonly number[]) => atShare(values, 0.95);
  return {
    name: `film ${film.name}: ${MANY_STEPS} steps back, p95 against steps on`,
    bar: '≤ 1.25 × or 16 ms',
    median: p95(back) / p95(on),
    spread: `p95 ${short(p95(back))} ms`,
    unit: '×',
    meets: p95(back) <= Math.max(16, 1.25 * p95(on)),
    note: `on: median ${short(median(on))}, p95 ${short(p95(on))}, most ${short(Math.max(...on))} ms; back: ${short(median(back))}, ${short(p95(back))}, ${short(Math.max(...back))} ms; a press every ${PRESS_EVERY_MS} ms`,
  };
};

const memoryRow = async (room: Page, film: NumberedFilm): Promise<BenchRow> => {
  const { gainedMB, said } = await memoryOverSteps(room);
  return budget({
    name: `film ${film.name}: script memory gained over ${LONG_STEPS} steps`,
    values: [gainedMB],
    most: 3,
    unit: 'MB',
    note: said,
  });
};

/**
 * Jumps from far away into the seconds round three marked moments, once what is kept round them is there. The number burned
 * into the very first picture is read, be it a copy's or the film's own.
 */
const roundMoments = async (
  page: Page,
  film: NumberedFilm,
): Promise<{ ms: number; ownMs: number; isCopy: boolean }[]> => {
  await page.bringToFront();
  const at = [0.25, 0.5, 0.8].map(share => Math.floor(film.frameCount * share));
  for (const frameIndex of at) {
    await jumpInRoom(page, frameIndex);
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    for (const key of ['m', '2', 'x']) await page.keyboard.press(key);
  }
  await untilKept(page);
  const far = Math.floor(film.frameCount * 0.03);
  const jumps: { ms: number; ownMs: number; isCopy: boolean }[] = [];
  for (let jump = 0; jump < JUMPS; jump++) {
    const offset = Math.round(film.framesPerS * (-3.5 + 6 * ((0.17 + jump * 0.618034) % 1)));
    const frameIndex = at[jump % at.length]! + offset;
    await jumpInRoom(page, far);
    await page.waitForTimeout(REST_MS);
    const { number, ...times } = await jumpRead(page, frameIndex, film.blockPx);
    if (number !== frameIndex % film.numbersTo)
      throw new Error(`${film.name}: picture ${number} came first for frame ${frameIndex}`);
    jumps.push(times);
  }
  return jumps;
};

/** Until the room says of no moment any more that its seconds are still being made ready. */
const untilKept = async (page: Page): Promise<void> => {
  await page.locator('.kept-ready[data-waiting="0"]').waitFor({ timeout: 100_000 });
};

/** Back over frames that were just seen, and on again: all of them are at hand. */
const stepsFromCache = async (page: Page, film: NumberedFilm): Promise<number[]> => {
  await page.bringToFront();
  await jumpInRoom(page, Math.floor(film.frameCount / 2));
  for (let step = 0; step < 4; step++) await stepInRoom(page, 1);
  const timesMs: number[] = [];
  for (let step = 0; step < STEPS; step++) timesMs.push(await stepInRoom(page, step % 6 < 3 ? -1 : 1));
  await checkNumber(page, film, Math.floor(film.frameCount / 2) + 4);
  return timesMs;
};

/** Steps on and back with jumps between, as in an hour of work; what an hour gains is what these gain, as often as it has them. */
const memoryOverSteps = async (page: Page): Promise<{ gainedMB: number; said: string }> => {
  await jumpInRoom(page, 10);
  for (let step = 0; step < 60; step++) await stepInRoom(page, 1);
  const before = await memoryOf(page);
  for (let step = 0; step < LONG_STEPS; step++) {
    if (step % 45 === 0) await jumpInRoom(page, 10 + step);
    await stepInRoom(page, step % 45 < 30 ? 1 : -1);
  }
  const after = await memoryOf(page);
  const whole =
    before.processMB === null || after.processMB === null
      ? ''
      : `, process ${short(before.processMB)} to ${short(after.processMB)} MB`;
  return {
    gainedMB: after.heapMB - before.heapMB,
    said: `heap ${short(before.heapMB)} to ${short(after.heapMB)} MB${whole}`,
  };
};
