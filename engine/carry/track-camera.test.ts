import { describe, expect, it } from 'vitest';
import { inverse3 } from '../film/matrix.ts';
import type { Matrix3 } from '../film/pins.ts';
import { randomOf } from '../random/random.ts';
import { moved, pictureOfScene, someScene } from './drawn-scene.reference.ts';
import type { GreyPicture } from './grey-picture.ts';
import { cameraTrackerOf, type TrackedFrame } from './track-camera.ts';

const [WIDTH, HEIGHT] = [400, 240];

/** A camera that pans 14 px a picture over a flat scene, zooming a little; the picture holds still in one corner. */
const moveAt = (frame: number): Matrix3 => {
  const zoom = 1 + 0.004 * frame;
  return [zoom, 0, -14 * frame, 0.0005 * frame, zoom, 2 * frame, 1e-6 * frame, 0, 1];
};

const filmOf = (seed: number, count: number): GreyPicture[] => {
  const random = randomOf(seed);
  const scene = someScene(random, 20, 700);
  return Array.from({ length: count }, (_, frame) => {
    const picture = pictureOfScene(scene, inverse3(moveAt(frame)), WIDTH, HEIGHT, random, 2);
    stamp(picture);
    return picture;
  });
};

/** A score box: checks that do not move. */
const BOX = { leftPx: 40, topPx: 20, rightPx: 160, bottomPx: 60 };
const stamp = ({ grey, widthPx }: GreyPicture): void => {
  for (let y = BOX.topPx; y < BOX.bottomPx; y++) {
    for (let x = BOX.leftPx; x < BOX.rightPx; x++)
      grey[y * widthPx + x] = ((x >> 3) + (y >> 3)) % 2 ? 220 : 20;
  }
};

const trackedOf = (film: readonly GreyPicture[], leftOut = [BOX]): TrackedFrame[] => {
  const tracker = cameraTrackerOf({ seed: 1, leftOut });
  return film.map((picture, frame) => tracker.next(frame, picture));
};

const medianMissPx = ({ frameIndex, keyFrame, pairs }: TrackedFrame): number => {
  const missesPx: number[] = [];
  const back = inverse3(moveAt(keyFrame));
  for (let i = 0; i < pairs.length; i += 4) {
    const [sx, sy] = moved(back, pairs[i]!, pairs[i + 1]!);
    const [x, y] = moved(moveAt(frameIndex), sx, sy);
    missesPx.push(Math.hypot(x - pairs[i + 2]!, y - pairs[i + 3]!));
  }
  return missesPx.sort((a, b) => a - b)[missesPx.length >> 1]!;
};

describe('following a camera', () => {
  const film = filmOf(2, 16);

  it('ties every picture to a key picture, well under a pixel off, and takes new keys as the view leaves', () => {
    const tracked = trackedOf(film);
    expect(tracked[0]).toMatchObject({ frameIndex: 0, keyFrame: 0, isKey: true });
    expect(tracked.some(({ lost }) => lost)).toBe(false);
    expect(tracked.filter(({ isKey }) => isKey).length).toBeGreaterThan(1);
    expect(tracked.filter(({ isKey }) => isKey).length).toBeLessThan(10);
    for (const frame of tracked.slice(1)) {
      expect(frame.pairs.length / 4).toBeGreaterThan(16);
      expect(medianMissPx(frame), `picture ${frame.frameIndex}`).toBeLessThan(0.25);
    }
  });

  it('holds to the moving scene though a box in the picture stands still, told or not', () => {
    for (const leftOut of [[BOX], []]) {
      const tracked = trackedOf(film.slice(0, 5), leftOut);
      for (const frame of tracked.slice(1)) expect(medianMissPx(frame)).toBeLessThan(0.25);
    }
  });

  it('notices a cut and begins anew there', () => {
    const tracked = trackedOf([...film.slice(0, 4), ...filmOf(77, 3)]);
    expect(tracked.map(({ lost }) => lost ?? '-')).toEqual(['-', '-', '-', '-', 'cut', '-', '-']);
    expect(tracked[4]).toMatchObject({ isKey: true, keyFrame: 4 });
    expect(tracked[5]!.keyFrame).toBe(4);
  });

  it('says that there is nothing to follow on a blank picture', () => {
    const blank: GreyPicture = {
      widthPx: WIDTH,
      heightPx: HEIGHT,
      grey: new Uint8Array(WIDTH * HEIGHT).fill(200),
    };
    expect(trackedOf([blank, blank]).map(({ lost }) => lost)).toEqual([undefined, 'tooFewPoints']);
  });
});
