import type { Page } from 'playwright-core';
import type { NumberedFilm } from './some-films.ts';

/** A page with nothing but a video element and a film: what a browser does with a jump by itself. */
export async function openPlainVideo(page: Page, film: NumberedFilm): Promise<void> {
  await page.goto('about:blank');
  await page.setContent('<input type="file"><video muted playsinline preload="auto" width="960"></video>');
  await page.locator('input').setInputFiles(film.path);
  await page.evaluate(async () => {
    const video = document.querySelector('video')!;
    video.src = URL.createObjectURL(document.querySelector('input')!.files![0]!);
    await new Promise((resolve, reject) => {
      video.addEventListener('loadeddata', resolve, { once: true });
      video.addEventListener('error', reject, { once: true });
    });
  });
}

/**
 * Milliseconds until that frame is seen: the element says that it stands there, and has handed its picture to the screen
 * (requestVideoFrameCallback), whichever is later.
 */
export const seekPlainVideo = (page: Page, timeS: number): Promise<number> =>
  page.evaluate(async at => {
    const video = document.querySelector('video')!;
    const sought = new Promise(resolve => video.addEventListener('seeked', resolve, { once: true }));
    const presented = new Promise(resolve => video.requestVideoFrameCallback(resolve));
    const from = performance.now();
    video.currentTime = at;
    await Promise.all([sought, presented]);
    return performance.now() - from;
  }, timeS);
