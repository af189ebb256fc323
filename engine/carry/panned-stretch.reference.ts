import { type Camera, drawnAt, filmFromIceOf, isInPicture } from '../film/camera.reference.ts';
import { type Lens, shownOf } from '../film/lens.ts';
import { inverse3, product3 } from '../film/matrix.ts';
import { TEST_RINK } from '../film/pinned-view.reference.ts';
import type { Matrix3, Pin } from '../film/pins.ts';
import type { Random } from '../random/random.ts';
import { landmarksOf } from '../rink/landmarks.ts';
import type { PinnedFrame, TrackedStretch } from './key-path.ts';
import { placeThrough } from './scaled-map.ts';
import type { TrackedFrame } from './track-camera.ts';

/** A panning camera whose ties are made, not seen: for tests of what is reckoned from ties. */
export interface PannedStretch {
  readonly stretch: TrackedStretch;
  readonly lens: Lens;
  readonly cameras: readonly Camera[];
  pinnedAt(frameIndex: number, noisePx: number, random: Random): PinnedFrame;
}

const START: Camera = {
  placeM: [1, -33, 13],
  panRad: -0.5,
  tiltRad: 0.37,
  rollRad: 0.004,
  focalPx: 1700,
  widthPx: 1280,
  heightPx: 720,
};

/** Pans by `panRad` and zooms a little over `count` pictures; every `keyEvery`th is a key. */
export const pannedStretch = (
  random: Random,
  { count = 60, keyEvery = 10, panRad = 1, k1 = 0, noisePx = 0.2 } = {},
): PannedStretch => {
  const lens = { k1, widthPx: START.widthPx, heightPx: START.heightPx };
  const cameras = Array.from({ length: count }, (_, i) => ({
    ...START,
    panRad: START.panRad + (panRad * i) / count,
    focalPx: START.focalPx * (1 + (0.2 * i) / count),
  }));
  const matrices = cameras.map(filmFromIceOf);
  const frames: TrackedFrame[] = matrices.map((matrix, frameIndex) => {
    const isKey = frameIndex % keyEvery === 0;
    const keyFrame = isKey ? Math.max(0, frameIndex - keyEvery) : frameIndex - (frameIndex % keyEvery);
    const pairs = frameIndex === 0 ? [] : somePairs(random, matrices[keyFrame]!, matrix, lens, noisePx);
    return { frameIndex, keyFrame, pairs: Float32Array.from(pairs), isKey };
  });
  const picture = { widthPx: START.widthPx, heightPx: START.heightPx };
  return {
    stretch: { frames, picture },
    lens,
    cameras,
    pinnedAt: (frameIndex, clickPx, chance) => ({
      frameIndex,
      clickSdPx: clickPx,
      pins: landmarksOf(TEST_RINK).flatMap(({ id, atM }): Pin[] => {
        const px = drawnAt(matrices[frameIndex]!, atM);
        if (!isInPicture(START, px)) return [];
        const shown = shownOf(lens, px);
        const filmPx = {
          xPx: shown.xPx + clickPx * chance.normal(),
          yPx: shown.yPx + clickPx * chance.normal(),
        };
        return [{ id, iceM: atM, filmPx }];
      }),
    }),
  };
};

/** A camera that turns on the spot moves all points of its picture by one matrix, however far they are. */
const somePairs = (random: Random, key: Matrix3, here: Matrix3, lens: Lens, noisePx: number): number[] => {
  const move = product3(here, inverse3(key));
  const sign = move[8] < 0 ? -1 : 1;
  const pairs: number[] = [];
  for (let tries = 0; tries < 160; tries++) {
    const from = { xPx: START.widthPx * random.uniform(), yPx: START.heightPx * random.uniform() };
    const to = placeThrough(move.map(entry => sign * entry) as unknown as Matrix3, from.xPx, from.yPx);
    if (to === null || !isInPicture(START, { xPx: to[0], yPx: to[1] })) continue;
    const [a, b] = [shownOf(lens, from), shownOf(lens, { xPx: to[0], yPx: to[1] })];
    pairs.push(a.xPx, a.yPx, b.xPx + noisePx * random.normal(), b.yPx + noisePx * random.normal());
  }
  return pairs;
};
