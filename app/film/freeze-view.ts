import type { Freeze, Placed } from '@icewright/book';
import {
  type FilmPoint,
  type FitResult,
  filmFromIce,
  type IcePoint,
  iceFromFilm,
  type Landmark,
  landmarksOf,
  type PinFit,
  pictureOnIce,
  type Rink,
  type SceneOfFreeze,
  SURELY_SDS,
} from '@icewright/engine';
import type { Lengths } from '../parts/figures.ts';
import { fitOfFreeze, ownFitOf, sceneOfFreeze } from './fit-of-freeze.ts';
import { landmarkWords } from './landmark-words.ts';

/** One pin as the room shows it. */
export interface PinView {
  readonly id: string;
  readonly number: number;
  readonly landmark: string;
  readonly words: string;
  readonly at: FilmPoint;
  readonly iceM?: IcePoint;
  readonly leftOut: boolean;
  readonly residualPx?: number;
  readonly disagrees: boolean;
}

export interface PersonView {
  readonly id: string;
  readonly placed: Placed;
  /** Absent when the picture is not held, or the feet have no place on the ice. */
  readonly atM?: IcePoint;
  readonly unplaced?: string;
}

/** A freeze with everything that can be computed from it: made anew at every change, in well under a millisecond. */
export interface FreezeView {
  readonly freeze: Freeze;
  readonly rink: Rink;
  /** How the team counts lengths. */
  readonly lengths: Lengths;
  readonly landmarks: readonly Landmark[];
  readonly pins: readonly PinView[];
  readonly fitted?: FitResult;
  readonly fit?: PinFit;
  /** The picture is held by pins of other frames, carried here, and not by its own. */
  readonly isCarried: boolean;
  readonly people: readonly PersonView[];
  readonly ice?: SceneOfFreeze;
  /** The part of the ice that the picture shows. */
  readonly seenM: readonly IcePoint[];
  /** How well the picture is held at the puck, or at its middle, and at the worst place of the ice in view: 95 %, metres. */
  readonly held?: {
    readonly where: 'puck' | 'middle';
    readonly alongM: number;
    readonly acrossM: number;
    readonly worstM: number;
  };
}

export const freezeViewOf = (freeze: Freeze, rink: Rink, lengths: Lengths = 'metres'): FreezeView => {
  const landmarks = landmarksOf(rink);
  const iceOf = new Map(landmarks.map(one => [one.id as string, one.atM]));
  const isPinned = Object.values(freeze.pins).some(pin => !pin.leftOut && iceOf.has(pin.landmark));
  const fitted = isPinned ? ownFitOf(freeze, rink) : undefined;
  const isCarried = fitted?.kind !== 'fit' && freeze.carried !== undefined;
  const result = isCarried ? fitOfFreeze(freeze, rink) : fitted;
  const fit = result?.kind === 'fit' ? result.fit : undefined;
  const ice = fit && sceneOfFreeze(freeze, fit, rink);
  const seenM = fit ? pictureOnIce(fit, freeze.picture, rink.boards) : [];
  const held = fit && heldAt(freeze, fit, seenM);
  return {
    freeze,
    rink,
    lengths,
    landmarks,
    pins: pinViews(freeze, iceOf, fit),
    ...(fitted ? { fitted } : {}),
    ...(fit ? { fit } : {}),
    isCarried,
    people: peopleViews(freeze, ice),
    ...(ice ? { ice } : {}),
    seenM,
    ...(held ? { held } : {}),
  };
};

/** Pins that disagree, and any one of those counted may be the wrong one: none can be pointed at. */
export const isAnyPin = (freeze: Freeze, fit: PinFit | undefined): boolean =>
  fit?.disagreement?.kind === 'oneOf' &&
  fit.disagreement.pins.length === Object.values(freeze.pins).filter(pin => !pin.leftOut).length;

const pinViews = (
  freeze: Freeze,
  iceOf: ReadonlyMap<string, IcePoint>,
  fit: PinFit | undefined,
): PinView[] => {
  const wrong = fit?.disagreement;
  const wrongIds =
    wrong === undefined || wrong.kind === 'several' || isAnyPin(freeze, fit)
      ? []
      : wrong.kind === 'onePin'
        ? [wrong.pin]
        : wrong.pins;
  return Object.entries(freeze.pins).map(([id, pin], i) => {
    const iceM = iceOf.get(pin.landmark);
    const drawn = pin.leftOut && fit && iceM ? filmFromIce(fit, iceM) : null;
    const residual = drawn
      ? Math.hypot(pin.at.xPx - drawn.xPx, pin.at.yPx - drawn.yPx)
      : fit?.residuals.find(one => one.pin === id)?.byPx;
    return {
      id,
      number: i + 1,
      landmark: pin.landmark,
      words: landmarkWords(pin.landmark),
      at: pin.at,
      ...(iceM ? { iceM } : {}),
      leftOut: pin.leftOut,
      ...(residual === undefined ? {} : { residualPx: residual }),
      disagrees: wrongIds.includes(id),
    };
  });
};

const peopleViews = (freeze: Freeze, ice: SceneOfFreeze | undefined): PersonView[] =>
  Object.entries(freeze.skaters).map(([id, placed]) => {
    const at = ice?.scene.skaters.find(one => one.id === id)?.atM;
    const reason = ice?.unplaced.find(one => one.id === id)?.reason;
    return {
      id,
      placed,
      ...(at ? { atM: at } : {}),
      ...(reason ? { unplaced: UNPLACED[reason] } : {}),
    };
  });

const UNPLACED = {
  aboveHorizon: 'above the ice: are these the feet?',
  nearHorizon: 'too far away to be placed',
  offTheIce: 'outside the boards: are these the feet?',
} as const;

const heldAt = (freeze: Freeze, fit: PinFit, seenM: readonly IcePoint[]): FreezeView['held'] => {
  const { widthPx, heightPx } = freeze.picture;
  const at = freeze.puck?.at ?? { xPx: widthPx / 2, yPx: heightPx / 2 };
  const placed = iceFromFilm(fit, at, { footSdPx: 0 });
  if (placed.kind === 'none') return undefined;
  return {
    where: freeze.puck ? 'puck' : 'middle',
    alongM: SURELY_SDS * Math.sqrt(placed.covM2.xxM2),
    acrossM: SURELY_SDS * Math.sqrt(placed.covM2.yyM2),
    worstM: Math.max(...[placed.atM, ...seenM].map(atM => knownToM(fit, atM))),
  };
};

/** The worse of along and across; what is farthest from all pins is known worst, so the edge of the ice in view tells it. */
const knownToM = (fit: PinFit, atM: IcePoint): number => {
  const drawn = filmFromIce(fit, atM);
  const placed = drawn && iceFromFilm(fit, drawn, { footSdPx: 0 });
  if (placed?.kind !== 'placed') return 0;
  return SURELY_SDS * Math.sqrt(Math.max(placed.covM2.xxM2, placed.covM2.yyM2));
};

/** Markings that would lie inside the picture, by where the pins so far put them. */
export const landmarksInPicture = (view: FreezeView): { id: string; at: FilmPoint }[] => {
  const { fit, freeze } = view;
  if (!fit) return [];
  return view.landmarks.flatMap(({ id, atM }) => {
    const at = filmFromIce(fit, atM);
    const inside =
      at &&
      at.xPx >= 0 &&
      at.yPx >= 0 &&
      at.xPx <= freeze.picture.widthPx &&
      at.yPx <= freeze.picture.heightPx;
    return inside ? [{ id, at }] : [];
  });
};

/** The unpinned marking that lies nearest to a place in the picture, once the picture is held. */
export const nearestUnpinned = (view: FreezeView, at: FilmPoint): string | undefined => {
  const pinned = new Set(view.pins.map(pin => pin.landmark));
  const away = (one: { at: FilmPoint }) => Math.hypot(one.at.xPx - at.xPx, one.at.yPx - at.yPx);
  return landmarksInPicture(view)
    .filter(one => !pinned.has(one.id))
    .sort((a, b) => away(a) - away(b))[0]?.id;
};
