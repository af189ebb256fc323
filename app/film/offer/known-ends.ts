import type { Game } from '@icewright/book';
import { cameraPlaceOf, type KnownEnds, type Rink } from '@icewright/engine';
import { ownFitOf } from '../fit-of-freeze.ts';
import type { FreezeView } from '../freeze-view.ts';

/** What tells which end is which: pins of this picture, and where the camera stood for other pinned pictures of this film. */
export const knownEnds = (game: Game, view: FreezeView, freezeId: string, rink: Rink): KnownEnds => {
  const pins = view.pins.flatMap(({ iceM, at, leftOut }) => (iceM && !leftOut ? [{ iceM, filmPx: at }] : []));
  const { film } = view.freeze;
  for (const [id, freeze] of Object.entries(game.freezes)) {
    if (id === freezeId || freeze.film !== film || Object.keys(freeze.pins).length < 4) continue;
    const result = ownFitOf(freeze, rink);
    const camera = result.kind === 'fit' ? cameraPlaceOf(result.fit.filmFromIce, freeze.picture) : null;
    if (camera !== null) return { pins, cameraM: camera };
  }
  return { pins };
};
