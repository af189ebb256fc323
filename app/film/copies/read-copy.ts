import type { CopyWindow } from './copy-window.ts';
import { TICK_US } from './make-copy.ts';

/** The picture of one frame out of a copy: at most eight pictures are decoded for it. Undefined when it fails. */
export const readCopy = (
  window: CopyWindow,
  bytes: ArrayBuffer,
  frameIndex: number,
): Promise<VideoFrame | undefined> =>
  new Promise(resolve => {
    const at = frameIndex - window.fromFrame;
    let key = at;
    while (key > 0 && !window.chunks[key]?.isKey) key--;
    let found: VideoFrame | undefined;
    const decoder = new VideoDecoder({
      output: frame => {
        if (Math.round(frame.timestamp / TICK_US) === frameIndex && !found) found = frame;
        else frame.close();
      },
      error: () => resolve(undefined),
    });
    decoder.configure(window.config);
    for (let i = key; i <= at; i++) {
      const place = window.chunks[i]!;
      decoder.decode(
        new EncodedVideoChunk({
          type: place.isKey ? 'key' : 'delta',
          timestamp: (window.fromFrame + i) * TICK_US,
          data: new Uint8Array(bytes, place.offset, place.length),
        }),
      );
    }
    decoder.flush().then(
      () => {
        decoder.close();
        resolve(found);
      },
      () => resolve(undefined),
    );
  });
