import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PictureCache, pictureCountFor } from './picture-cache.ts';

describe('the cache of pictures', () => {
  it('never holds more than it may, keeps the newest near ones, and closes whatever leaves', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        fc.array(fc.nat(200), { minLength: 1, maxLength: 120 }),
        (most, frames) => {
          const cache = new PictureCache(most);
          const open = new Set<object>();
          for (const frame of frames) {
            const picture = { close: () => open.delete(picture) } as unknown as ImageBitmap;
            open.add(picture);
            cache.put(frame, picture, frame);
            expect(cache.get(frame)).toBe(picture);
            expect(open.size).toBeLessThanOrEqual(most);
          }
          cache.clear();
          expect(open.size).toBe(0);
        },
      ),
    );
  });

  it('is bounded in bytes: about 160 MB whatever the picture', () => {
    for (const [width, height] of [
      [1280, 720],
      [1920, 1080],
      [3840, 2160],
    ] as const) {
      expect(pictureCountFor(width, height) * width * height * 4).toBeLessThanOrEqual(
        Math.max(160 * 2 ** 20, 8 * width * height * 4),
      );
    }
  });
});
