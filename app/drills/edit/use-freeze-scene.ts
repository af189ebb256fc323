import type { Drill, Team } from '@icewright/book';
import type { End, FreezeScene } from '@icewright/engine';
import { useMemo } from 'react';
import { drillSceneOf } from '../../film/drill-scene.ts';
import { fitOfFreeze, rinkOfSheet, sceneOfFreeze, sheetOfGame } from '../../film/fit-of-freeze.ts';
import { useDocument } from '../../shell/book.ts';

/** The freeze a drill was made from as it stands on the ice, or why it cannot be had here. */
export type FrozenOnIce =
  | { readonly kind: 'scene'; readonly scene: FreezeScene; readonly attacks: End }
  | { readonly kind: 'none'; readonly reason: 'loading' | 'noGame' | 'noFreeze' | 'notPinned' };

export function useFreezeScene(from: NonNullable<Drill['from']>, team: Team): FrozenOnIce {
  const { state, value: game } = useDocument('game', from.game);
  const freeze = game?.freezes[from.freeze];
  return useMemo((): FrozenOnIce => {
    if (game === undefined) return { kind: 'none', reason: state === 'loading' ? 'loading' : 'noGame' };
    if (freeze === undefined) return { kind: 'none', reason: 'noFreeze' };
    const rink = rinkOfSheet(sheetOfGame(game, team));
    const fitted = fitOfFreeze(freeze, rink);
    if (fitted.kind !== 'fit') return { kind: 'none', reason: 'notPinned' };
    const scene = drillSceneOf(freeze, sceneOfFreeze(freeze, fitted.fit, rink));
    return { kind: 'scene', scene, attacks: freeze.attacks };
  }, [state, game, freeze, team]);
}
