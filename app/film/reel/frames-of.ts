import { DecodeRun } from '../decode-run.ts';
import type { OpenFilm } from '../open-film.ts';

/** The pictures of a stretch of film in their order, as coded; each is closed by whoever takes it. Damaged ones are left out. */
export async function* framesOf(
  film: OpenFilm,
  fromFrame: number,
  toFrame: number,
): AsyncGenerator<{ readonly frameIndex: number; readonly frame: VideoFrame }> {
  const waiting: { frameIndex: number; frame: VideoFrame }[] = [];
  let outCount = 0;
  let wake: () => void = () => undefined;
  const run = new DecodeRun(film, (frameIndex, frame) => {
    if (frameIndex < fromFrame || frameIndex > toFrame) frame.close();
    else waiting.push({ frameIndex, frame });
    if (frameIndex >= fromFrame) outCount++;
    wake();
  });
  const cameOut = () =>
    new Promise<void>(resolve => {
      const timer = setTimeout(resolve, LONGEST_WAIT_MS);
      wake = () => {
        clearTimeout(timer);
        resolve();
      };
    });
  let fedCount = 0;
  try {
    await run.startAt(fromFrame);
    let isOver = false;
    while (true) {
      for (let next = waiting.shift(); next; next = waiting.shift()) {
        yield next;
        if (next.frameIndex >= toFrame) return;
      }
      if (isOver || run.broken || run.lastOut >= toFrame) return;
      // Pictures that came out and are not taken yet hold memory of the decoder's own: no more than a few at once.
      if (fedCount - outCount >= MOST_ON_THE_WAY) {
        const before = outCount;
        await cameOut();
        if (outCount === before) fedCount = outCount + MOST_ON_THE_WAY - 1;
        continue;
      }
      const fed = await run.feed(fromFrame);
      if (fed === undefined) {
        await run.drain();
        isOver = true;
      } else if (fed >= fromFrame) fedCount++;
    }
  } finally {
    for (const { frame } of waiting) frame.close();
    run.stop();
  }
}

/** More than any order of pictures needs before the first comes out. */
const MOST_ON_THE_WAY = 20;
/** A picture that has not come in so long will not come before others are fed. */
const LONGEST_WAIT_MS = 1000;
