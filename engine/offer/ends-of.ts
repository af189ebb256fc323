import type { Rink } from '../rink/rink.ts';
import type { IcePoint } from '../units/points.ts';
import { cameraOf } from './camera-of.ts';
import type { FoundView } from './find-views.ts';
import { drawnBy, type GivenPin } from './given-pins.ts';
import type { PictureFeatures } from './picture-features.ts';
import { refineOnce } from './refine-view.ts';
import { samplesOf } from './stroke-samples.ts';
import { refCreaseOf } from './strokes.ts';
import { CREASE_SEEN, CREASE_UNSEEN, NEARER_CAMERA } from './view-rows.ts';

/** How it is known which end of the sheet is which. */
export type EndsKnown = 'yourPins' | 'earlierPins' | 'refCrease' | 'open';

/** What helps to tell the ends. */
export interface KnownEnds {
  /** Where the camera stood for pins that were accepted earlier on this film, metres along the ice. */
  readonly cameraM?: IcePoint;
  /** Pins of this picture already set. */
  readonly pins?: readonly GivenPin[];
}

/**
 * Whether the sheet of a view, whose camera is taken to stand towards −y, has to be turned by half, and how that is known: by pins of this picture,
 * by where the camera stood for earlier pins, or by the officials' crease, the one marking that only one side has. Source: our own rule.
 */
export const endsOf = (
  rink: Rink,
  { map }: FoundView,
  features: PictureFeatures,
  { cameraM, pins = [] }: KnownEnds,
): { readonly known: EndsKnown; readonly isTurned: boolean } => {
  if (pins.length > 0) {
    const away = (sign: number): number[] =>
      pins.map(({ iceM, filmPx }) => {
        const drawn = drawnBy(map, { xM: sign * iceM.xM, yM: sign * iceM.yM }, features.paint);
        return drawn === null
          ? Number.POSITIVE_INFINITY
          : Math.hypot(drawn.xPx - filmPx.xPx, drawn.yPx - filmPx.yPx);
      });
    const [asIs, turned] = [middleOf(away(1)), middleOf(away(-1))];
    if (asIs !== turned) return { known: 'yourPins', isTurned: turned < asIs };
  }
  const camera = cameraOf(map);
  if (cameraM !== undefined && camera !== null) {
    const asIs = Math.hypot(camera.xM - cameraM.xM, camera.yM - cameraM.yM);
    const turned = Math.hypot(camera.xM + cameraM.xM, camera.yM + cameraM.yM);
    if (Math.min(asIs, turned) < NEARER_CAMERA.value * Math.max(asIs, turned))
      return { known: 'earlierPins', isTurned: turned < asIs };
  }
  const seen = creaseSeen(rink, map, features);
  const seenTurned = creaseSeen(rink, turnedMap(map), features);
  if (seen > CREASE_SEEN.value && seenTurned < CREASE_UNSEEN.value)
    return { known: 'refCrease', isTurned: false };
  if (seenTurned > CREASE_SEEN.value && seen < CREASE_UNSEEN.value)
    return { known: 'refCrease', isTurned: true };
  return { known: 'open', isTurned: false };
};

/** The map of the sheet turned by half. */
const turnedMap = (map: Float64Array): Float64Array => map.map((value, k) => (k % 3 === 2 ? value : -value));

/** Share of the officials' crease that is seen, 0 where hardly any of it would be in the picture. */
const creaseSeen = (rink: Rink, map: Float64Array, { paint, ice, spots }: PictureFeatures): number => {
  const samples = samplesOf([refCreaseOf(rink)], 0.2);
  const { seen, missing } = refineOnce(
    map.slice(),
    samples,
    [],
    { paint, inside: ice.inside, spots },
    2,
    false,
  );
  return seen + missing < LEAST_CREASE ? 0 : seen / (seen + missing);
};

/** A piece of ten pixels counts 1, less when thin. */
const LEAST_CREASE = 3;

const middleOf = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[values.length >> 1]!;
