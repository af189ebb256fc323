import type { Game } from '@icewright/book';
import { cameraPlaceOf, type KnownEnds } from '@icewright/engine';
import { ownFitOf } from '../fit-of-freeze.ts';
import type { FreezeView } from '../freeze-view.ts';

/** What tells which end is which: pins of this picture, and where the camera stood for other pinned pictures of this film. */
export const knownEnds = (game: Game, view: FreezeView, freezeId: string, filmPerPx: number): KnownEnds => {
  const pins = view.pins.flatMap(({ iceM, at, leftOut }) =>
    iceM && !leftOut ? [{ iceM, filmPx: { xPx: at.xPx / filmPerPx, yPx: at.yPx / filmPerPx } }] : [],
  );
  const { film } = view.freeze;
  for (const [id, freeze] of Object.entries(game.freezes)) {
    if (id === freezeId || freeze.film !== film || Object.keys(freeze.pins).length < 4) continue;
    const result = ownFitOf(freeze, view.rink);
    const cameraM = result.kind === 'fit' ? cameraPlaceOf(result.fit.filmFromIce, freeze.picture) : null;
    if (cameraM !== null) return { pins, cameraM };
  }
  return { pins };
};
