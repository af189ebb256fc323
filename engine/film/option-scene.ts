import type { OptionScene, OptionSkater } from '../pass/option-parts.ts';
import type { PuckModel } from '../puck/puck-model.ts';
import { nearestBoardsPoint } from '../rink/along-boards.ts';
import { type Boards, boardsDistance } from '../rink/boards.ts';
import type { SkaterModel } from '../skater/model.ts';
import { otherEnd, type Side } from '../units/ends.ts';
import { type None, noneBecause } from '../units/none.ts';
import type { IcePoint } from '../units/points.ts';
import type { FrozenScene, FrozenSkater } from './frozen-scene.ts';

export interface CarrierScene {
  readonly kind: 'scene';
  /** As the carrier's side sees it: `us` is the side that has the puck. */
  readonly scene: OptionScene;
  readonly side: Side;
  /** Ids (and 'puck') whose place lay on or outside the boards within its ±, and was moved just inside. */
  readonly moved: readonly string[];
}

/**
 * A frozen scene as `passOptions` asks for it, metres, from the side that has the puck. One picture tells no speeds,
 * so nobody has one. The error of a place may put it outside the boards; whoever is on the ice at all is then taken
 * just inside, and named. Goalies are no receivers, but may cut a pass off. None without a puck or a carrier.
 */
export const optionSceneOf = (
  scene: FrozenScene,
  puck: PuckModel,
  modelOf: (skater: FrozenSkater) => SkaterModel,
): CarrierScene | None<'noPuck' | 'noCarrier'> => {
  if (scene.puck === undefined) return noneBecause('noPuck');
  const carrier = scene.skaters.find(({ id }) => id === scene.puck?.carrierId);
  if (carrier === undefined) return noneBecause('noCarrier');
  const { boards, layout } = scene.rink;
  const moved: string[] = [];
  const insideOf = (id: string, atM: IcePoint): IcePoint => {
    const inside = movedInside(boards, atM, 2 * puck.puckRadiusM);
    if (inside !== atM) moved.push(id);
    return inside;
  };
  const of = (side: Side, hasGoalies: boolean): OptionSkater[] =>
    scene.skaters
      .filter(one => one.side === side && (hasGoalies || one.kind === 'skater' || one === carrier))
      .map(one => ({ id: one.id, kind: one.kind, atM: insideOf(one.id, one.atM), model: modelOf(one) }));
  const isOurs = carrier.side === 'us';
  return {
    kind: 'scene',
    side: carrier.side,
    scene: {
      boards,
      puck,
      puckM: insideOf('puck', scene.puck.atM),
      carrierId: carrier.id,
      us: of(carrier.side, false),
      them: of(isOurs ? 'them' : 'us', true),
      attacks: isOurs ? scene.attacks : otherEnd(scene.attacks),
      blueLineXM: layout.blueLineInnerXM,
    },
    moved,
  };
};

/** The same point, or where it is `roomM` from the boards when it is nearer to them or outside. */
const movedInside = (boards: Boards, atM: IcePoint, roomM: number): IcePoint => {
  if (boardsDistance(boards, atM) >= roomM) return atM;
  const { pointM, normal } = nearestBoardsPoint(boards, atM);
  return { xM: pointM.xM + normal.xM * roomM, yM: pointM.yM + normal.yM * roomM };
};
