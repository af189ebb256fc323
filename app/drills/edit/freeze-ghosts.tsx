import { type Drill, newId, type Team } from '@icewright/book';
import { type DrillPlan, drillPlanFromFreeze, type End, otherEnd } from '@icewright/engine';
import { drawSpot, drawUpright, svgParts } from '@icewright/picture';
import { useMemo } from 'react';
import { useIsNarrow } from '../../parts/use-is-narrow.ts';
import { useFreezeScene } from './use-freeze-scene.ts';

/** The skaters of the freeze that the drill was made from, faint under it, turned as the drill was. */
export function FreezeGhosts({
  from,
  attacks,
  team,
}: {
  readonly from: NonNullable<Drill['from']>;
  /** The end that we play towards in the drill. */
  readonly attacks: End;
  readonly team: Team;
}) {
  const frozen = useFreezeScene(from, team);
  const isUpright = useIsNarrow(701);
  const spots = useMemo((): readonly DrillPlan['spots'][never][] => {
    if (frozen.kind !== 'scene') return [];
    // A plan from a freeze has us attack plusX.
    const seen = attacks === 'plusX' ? frozen.attacks : otherEnd(frozen.attacks);
    return Object.values(drillPlanFromFreeze(frozen.scene, { attacks: seen, newId }).spots);
  }, [frozen, attacks]);
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
  if (spots.length === 0 && !(frozen.kind === 'none' && frozen.reason === 'loading')) return null;
  // biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there
  return <g className="freeze-ghosts" dangerouslySetInnerHTML={{ __html: markup }} />;
}
