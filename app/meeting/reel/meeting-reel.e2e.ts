import { spawnSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { appOfFile } from '../../../test/app-of-file.ts';
import { seriousViolations } from '../../../test/axe.ts';
import { filmPath, shownFrame } from '../../../test/film-page.ts';
import {
  besideToneDb,
  burnedIn,
  hasReelTools,
  heardIn,
  loudestDb,
  probe,
  soundOf,
} from '../../../test/read-reel.ts';
import { withPage } from '../../../test/with-page.ts';

const app = appOfFile();

/** The third moment is of a film without sound, the fourth of one with; each gets thirty-one pictures and stands at its first. */
const PICTURES = 31;
const [FIRST, SECOND] = [770, 234];
const [STANDS_S, RATE, OTHER_RATE] = [3, 60_000 / 1001, 30];
const SLOWED_S = (2 * PICTURES) / RATE + STANDS_S;
const LENGTH_S = SLOWED_S + PICTURES / OTHER_RATE + STANDS_S;

it.skipIf(!hasReelTools)(
  'a meeting becomes one film out of two games, slowed where it is wanted, with the sound of the one that has it',
  { timeout: 180_000 },
  () =>
    withPage(app, 'meeting reel', async page => {
      const { panel, rows } = await reelOfTwo(page, app.url);
      await rows.nth(2).getByRole('combobox').selectOption({ label: 'half speed' });
      await expect
        .poll(() =>
          panel.getByLabel('All run at').evaluate(e => (e as HTMLSelectElement).selectedOptions[0]?.label),
        )
        .toBe('each as set');
      await panel.getByLabel('a title before each').uncheck();
      await panel.getByText('sound, not where it is slowed').waitFor();
      expect(await seriousViolations(page)).toEqual([]);

      const acts = panel.getByRole('button', { name: /^(MP4|WebM)/ });
      await acts.first().waitFor();
      for (let nth = 0; nth < (await acts.count()); nth++) {
        const [download] = await Promise.all([
          page.waitForEvent('download', { timeout: 80_000 }),
          acts.nth(nth).click(),
        ]);
        const path = await download.path();
        const { video, audio } = probe(path);
        expect(video).toMatchObject({ width: 1280, height: 720 });
        expect(audio).toBeDefined();
        const shown = burnedIn(path);
        const inOrder = shown.filter((one, i) => i === 0 || one.frame !== shown[i - 1]!.frame);
        const range = (from: number) => Array.from({ length: PICTURES }, (_, i) => from + i);
        expect(inOrder.map(({ frame }) => frame)).toEqual([...range(FIRST), ...range(SECOND)]);
        // Slowed: twice as long from picture to picture; and each film stands where the meeting stops.
        expect(inOrder[11]!.atS - inOrder[10]!.atS).toBeCloseTo(2 / RATE, 2);
        expect(inOrder[1]!.atS - inOrder[0]!.atS).toBeCloseTo(STANDS_S + 2 / RATE, 2);
        expect(inOrder[PICTURES]!.atS).toBeCloseTo(SLOWED_S, 1);
        expect(inOrder.at(-1)!.atS).toBeCloseTo(LENGTH_S - 1 / OTHER_RATE, 1);
        // Silent while the film without sound runs and while a picture stands; heard when the other one runs.
        expect(loudestDb(path, 0.2, SLOWED_S - 0.4)).toBeLessThan(-80);
        expect(loudestDb(path, SLOWED_S + 0.3, STANDS_S - 0.5)).toBeLessThan(-80);
        expect(loudestDb(path, LENGTH_S - 0.8, 0.6)).toBeGreaterThan(-60);
      }
    }),
);

describe.skipIf(!hasReelTools)('sound at two rates', () => {
  /** The two films of the invented team with a tone each: 1,000 Hz at 44,100 samples a second, 600 Hz at 48,000. */
  const withTones = appOfFile({
    prepare: async dataFolder => {
      mkdirSync(join(dataFolder, 'films'), { recursive: true });
      for (const [from, to, hz, rate] of [
        ['B.mp4', 'quillback-away.mp4', 1_000, 44_100],
        ['A.mp4', 'quillback-home.mp4', 600, 48_000],
      ] as const)
        spawnSync('ffmpeg', [
          ...[
            '-v',
            'error',
            '-i',
            filmPath(from),
            '-f',
            'lavfi',
            '-i',
            `sine=${hz}:sample_rate=${rate}:duration=20`,
          ],
          ...[
            '-map',
            '0:v',
            '-map',
            '1:a',
            '-c:v',
            'copy',
            '-c:a',
            'aac',
            '-shortest',
            join(dataFolder, 'films', to),
          ],
        ]);
    },
  });

  it(
    'each game is heard at its own pitch, as long as its pictures run, whichever comes first',
    { timeout: 180_000 },
    () =>
      withPage(withTones, 'reel of two rates', async page => {
        const { panel, rows } = await reelOfTwo(page, withTones.url);
        await panel.getByLabel('a title before each').uncheck();
        for (const order of [
          [1_000, 600],
          [600, 1_000],
        ] as const) {
          const [download] = await Promise.all([
            page.waitForEvent('download', { timeout: 80_000 }),
            panel
              .getByRole('button', { name: /^(MP4|WebM)/ })
              .first()
              .click(),
          ]);
          const sound = soundOf(await download.path());
          // The first picture is shown before the film stands at it, and is heard that long.
          const heard = heardIn(sound).filter(({ fromS, toS }) => toS - fromS > 0.1);
          expect(heard).toHaveLength(2);
          let beganS = 0;
          for (const [i, hz] of order.entries()) {
            const lastsS = PICTURES / (hz === 1_000 ? RATE : OTHER_RATE);
            const { fromS, toS } = heard[i]!;
            expect(Math.abs(toS - (beganS + STANDS_S + lastsS))).toBeLessThan(0.05);
            expect(Math.abs(toS - fromS - lastsS)).toBeLessThan(0.06);
            // Pieces that were made alike one by one were heard at their seams, some 30 dB down.
            expect(besideToneDb(sound, fromS + 0.1, toS - 0.1, hz)).toBeLessThan(-40);
            beganS += STANDS_S + lastsS;
          }
          await rows
            .nth(2)
            .getByRole('button', { name: /^Later/ })
            .click();
        }
      }),
  );
});

/** Leaves of an item the picture where it stands and thirty after it. */
/** The reel of the meeting in whose list only the third and the fourth moment are kept, both cut short. */
const reelOfTwo = async (page: Page, url: string) => {
  await page.addInitScript(() => Reflect.deleteProperty(window, 'showSaveFilePicker'));
  await page.goto(`${url}/film/meeting/meeting-together`);
  await cutShort(page, 2, FIRST);
  await cutShort(page, 3, SECOND);
  await page.getByRole('button', { name: 'Make a reel', exact: true }).click();
  const panel = page.getByRole('region', { name: 'A reel' });
  const rows = panel.locator('li');
  await expect.poll(() => rows.count()).toBe(4);
  for (const nth of [0, 1]) await rows.nth(nth).getByRole('checkbox').uncheck();
  return { panel, rows };
};

const cutShort = async (page: Page, nth: number, standsAt: number): Promise<void> => {
  await page.locator('.item-head').nth(nth).click();
  await shownFrame(page, standsAt);
  await page.keyboard.press('[');
  for (let step = 0; step < 3; step++) await page.keyboard.press('Shift+ArrowRight');
  await shownFrame(page, standsAt + PICTURES - 1);
  await page.keyboard.press(']');
};
