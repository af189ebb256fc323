import { type Drill, newId, type Team } from '@icewright/book';
import { type DrillPlan, drillPlanFromFreeze } from '@icewright/engine';
import { drawSpot, drawUpright, svgParts } from '@icewright/picture';
import { useMemo } from 'react';
import { drillSceneOf } from '../../film/drill-scene.ts';
import { fitOfFreeze, rinkOfSheet, sceneOfFreeze, sheetOfGame } from '../../film/fit-of-freeze.ts';
import { useIsNarrow } from '../../parts/use-is-narrow.ts';
import { useDocument } from '../../shell/book.ts';

/** The skaters of the freeze that the drill was made from, faint under it, turned as the drill was. */
export function FreezeGhosts({
  from,
  team,
}: {
  readonly from: NonNullable<Drill['from']>;
  readonly team: Team;
}) {
  const game = useDocument('game', from.game).value;
  const isUpright = useIsNarrow(701);
  const freeze = game?.freezes[from.freeze];
  const spots = useMemo((): readonly DrillPlan['spots'][never][] => {
    if (game === undefined || freeze === undefined) return [];
    const rink = rinkOfSheet(sheetOfGame(game, team));
    const fitted = fitOfFreeze(freeze, rink);
    if (fitted.kind !== 'fit') return [];
    const scene = drillSceneOf(freeze, sceneOfFreeze(freeze, fitted.fit, rink));
    return Object.values(drillPlanFromFreeze(scene, { attacks: freeze.attacks, newId }).spots);
  }, [game, freeze, team]);
  const markup = useMemo(
    () =>
      svgParts(pen => {
        const draw = () => {
          for (const { side, kind, role, atM, facingRad } of spots)
            drawSpot(pen, { side, kind, role, atM, facingRad, ghost: true });
        };
        isUpright ? drawUpright(pen, draw) : draw();
      }, {}),
    [spots, isUpright],
  );
  if (game !== undefined && spots.length === 0) return null;
  // biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there
  return <g className="freeze-ghosts" dangerouslySetInnerHTML={{ __html: markup }} />;
}
