import type { Page } from 'playwright-core';
import type { BenchRow } from '../../cli/bench-row.ts';
import { startApp } from '../../test/browser.ts';
import { burnedCounter, filmPath, openFilmFile, shownFrame } from '../../test/film-page.ts';

const JUMPS = 15;
/** Between two jumps, as long as a person needs at least; neither player works then on the one before. */
const PAUSE_MS = 600;

/**
 * Exact frame after a jump, by the film room's own reader against a plain video element seeking the same file, by turns in
 * one run; and a step of one frame. The picture's burned counter is checked at every jump before its time counts.
 */
export default async function bench(): Promise<BenchRow[]> {
  const app = await startApp();
  const rows: BenchRow[] = [];
  try {
    for (const [name, frameCount, said] of [
      ['A.mp4', 600, '720p H.264'],
      ['B.mp4', 960, '720p H.264, a key frame every 250'],
    ] as const) {
      const { page, context } = await app.newPage();
      await openFilmFile(page, app.url, filmPath(name));
      // The runner that strips types names inner functions by this helper, which a page does not have.
      await page.evaluate('globalThis.__name = value => value');
      rows.push(await jumpsOf(page, frameCount, said));
      if (name === 'B.mp4') rows.push(await stepsOf(page));
      await context.close();
    }
  } finally {
    await app.close();
  }
  return rows;
}

const jumpsOf = async (page: Page, frameCount: number, said: string): Promise<BenchRow> => {
  const ours: number[] = [];
  const plain: number[] = [];
  for (let i = 0; i < JUMPS; i++) {
    // Spread over the film by a stride that is coprime to its length; none near the one before.
    const frame = (i * 389 + 57) % frameCount;
    ours.push(await jumpMs(page, frame));
    const counter = await burnedCounter(page);
    if (counter !== frame) throw new Error(`asked for frame ${frame}, the picture says ${counter}`);
    await page.waitForTimeout(PAUSE_MS);
    plain.push(await seekMs(page, frame / frameCount));
    await page.waitForTimeout(PAUSE_MS);
  }
  const ratio = medianOf(ours) / medianOf(plain);
  return {
    name: `jump to an exact frame over a plain video element, ${said}`,
    bar: '≤ 0.8',
    median: ratio,
    spread: `ours ${spreadOf(ours)} ms, plain ${spreadOf(plain)} ms`,
    unit: '×',
    meets: ratio <= 0.8,
    note: `${JUMPS} jumps, software decoding, page included`,
  };
};

const stepsOf = async (page: Page): Promise<BenchRow> => {
  await jumpMs(page, 620);
  const steps: number[] = [];
  for (let i = 1; i <= 20; i++) steps.push(await jumpMs(page, 620 - i));
  return {
    name: 'one frame back, from the cache',
    bar: '≤ 16 ms',
    median: medianOf(steps),
    spread: spreadOf(steps),
    unit: 'ms',
    meets: medianOf(steps) <= 16,
  };
};

/** From the press of Enter in the jump field until the canvas holds the frame. */
const jumpMs = async (page: Page, frame: number): Promise<number> => {
  await page.getByLabel('Jump to a time or a frame').fill(`${frame}`);
  const ms = await page.evaluate(
    wanted =>
      new Promise<number>(resolve => {
        const canvas = document.querySelector<HTMLCanvasElement>('canvas[data-testid="picture"]')!;
        const began = performance.now();
        const look = () => {
          if (canvas.dataset.frame !== `${wanted}`) return;
          observer.disconnect();
          resolve(performance.now() - began);
        };
        const observer = new MutationObserver(look);
        observer.observe(canvas, { attributes: true });
        document.querySelector<HTMLFormElement>('form.jump')!.requestSubmit();
        look();
      }),
    frame,
  );
  await shownFrame(page, frame);
  return ms;
};

const seekMs = (page: Page, share: number): Promise<number> =>
  page.evaluate(
    at =>
      new Promise<number>(resolve => {
        const key = '__plain' as const;
        const held = window as unknown as { [key]?: HTMLVideoElement };
        const source = document.querySelector<HTMLVideoElement>('.picture video')!.src;
        const video = (held[key] ??= Object.assign(document.createElement('video'), {
          src: source,
          muted: true,
        }));
        if (!video.isConnected) document.body.append(video);
        const go = () => {
          const began = performance.now();
          video.requestVideoFrameCallback(() => resolve(performance.now() - began));
          video.currentTime = at * video.duration;
        };
        if (video.readyState >= 2) go();
        else video.addEventListener('loadeddata', () => setTimeout(go, 200), { once: true });
      }),
    share,
  );

const medianOf = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[values.length >> 1]!;

const spreadOf = (values: readonly number[]): string => {
  const sorted = [...values].sort((a, b) => a - b);
  return `${sorted[0]!.toFixed(0)} to ${sorted[sorted.length - 1]!.toFixed(0)}, median ${medianOf(values).toFixed(0)}`;
};
