import type { Drill } from '@icewright/book';
import {
  gameAreaOf,
  type IceArea,
  type IcePoint,
  type Id,
  type Rink,
  type SmallGame,
  weAttack,
} from '@icewright/engine';
import { gameWordsAt } from '@icewright/picture';
import type { Write } from '../write.ts';

/** The corners of a game's region, in the order in which they are named; each is across from the one as far from the end of the list. */
export const CORNERS = [
  { x: 'minXM', y: 'minYM', said: 'our end, right' },
  { x: 'minXM', y: 'maxYM', said: 'our end, left' },
  { x: 'maxXM', y: 'minYM', said: 'their end, right' },
  { x: 'maxXM', y: 'maxYM', said: 'their end, left' },
] as const;

/** A corner as this drill's people call it: in one that plays to the other end, our end and our left are there. */
export const cornerSaid = (corner: number, { spots }: Pick<Drill, 'spots'>): string =>
  CORNERS[weAttack(Object.values(spots)) === 'plusX' ? corner : CORNERS.length - 1 - corner]!.said;

/** From side boards to side boards, a third of the sheet along: what cross ice is. */
const NEW_M = { xM: 20, yM: 40 };
/** A go, seconds: the play of a shift of international men is 44 s (facts of work and rest); a round figure under it. */
const NEW_SHIFT_S = 40;
/** Smaller than this there is nothing to play on, and no way to take its corners apart. */
const LEAST_M = 4;

export const cornerOf = (game: SmallGame, corner: number): IcePoint => {
  const region = gameAreaOf(game);
  const { x, y } = CORNERS[corner]!;
  return { xM: region[x], yM: region[y] };
};

/** Where a game is taken hold of: at its words. */
export const gameGrabM = (
  game: Pick<SmallGame, 'fromM' | 'toM'>,
  rink: Rink,
  isUpright: boolean,
): IcePoint => {
  const { x, y } = gameWordsAt(game, rink, isUpright, 1);
  return { xM: x, yM: -y };
};

/** A new game about a place, pushed inside the sheet; the nets that lie in it are its nets. */
export function newGame(drill: Drill, atM: IcePoint, area: IceArea): Drill['games'][never] {
  const halfX = Math.min(NEW_M.xM, area.maxXM - area.minXM) / 2;
  const halfY = Math.min(NEW_M.yM, area.maxYM - area.minYM) / 2;
  const middleX = Math.min(area.maxXM - halfX, Math.max(area.minXM + halfX, atM.xM));
  const middleY = Math.min(area.maxYM - halfY, Math.max(area.minYM + halfY, atM.yM));
  const ranks = Object.values(drill.games).map(game => game.rank);
  const region = {
    fromM: rounded({ xM: middleX - halfX, yM: middleY - halfY }),
    toM: rounded({ xM: middleX + halfX, yM: middleY + halfY }),
  };
  return {
    rank: Math.max(-1, ...ranks) + 1,
    ...region,
    usCount: 3,
    themCount: 3,
    nets: netsInside(drill, region),
    resets: 'coach',
    shiftS: NEW_SHIFT_S,
  };
}

/** The writes that put one corner there, kept inside the sheet; the corner across stays. */
export function cornerMoved(
  drill: Drill,
  id: Id<'game'>,
  corner: number,
  toM: IcePoint,
  rink: Rink,
): Write[] {
  const game = drill.games[id];
  if (game === undefined) return [];
  const fixed = cornerOf(game, 3 - corner);
  const own = cornerOf(game, corner);
  const { area } = rink;
  const at = rounded({
    xM: apartFrom(fixed.xM, own.xM, Math.min(area.maxXM, Math.max(area.minXM, toM.xM))),
    yM: apartFrom(fixed.yM, own.yM, Math.min(area.maxYM, Math.max(area.minYM, toM.yM))),
  });
  const region = gameAreaOf({ fromM: fixed, toM: at });
  return [
    { path: ['games', id, 'fromM'], value: { xM: region.minXM, yM: region.minYM } },
    { path: ['games', id, 'toM'], value: { xM: region.maxXM, yM: region.maxYM } },
  ];
}

/** Nets whose mouth stands inside the region. */
export const netsInside = (drill: Drill, region: Pick<SmallGame, 'fromM' | 'toM'>): Id<'gear'>[] => {
  const { minXM, maxXM, minYM, maxYM } = gameAreaOf(region);
  return (Object.entries(drill.gear) as [Id<'gear'>, Drill['gear'][never]][]).flatMap(
    ([id, { kind, atM }]) =>
      (kind === 'net' || kind === 'smallNet') &&
      atM.xM >= minXM &&
      atM.xM <= maxXM &&
      atM.yM >= minYM &&
      atM.yM <= maxYM
        ? [id]
        : [],
  );
};

/** Never nearer to the other side than the least, on the side where it was. */
const apartFrom = (fixed: number, own: number, wanted: number): number =>
  own >= fixed ? Math.max(fixed + LEAST_M, wanted) : Math.min(fixed - LEAST_M, wanted);

const rounded = ({ xM, yM }: IcePoint): IcePoint => ({
  xM: Math.round(xM * 100) / 100,
  yM: Math.round(yM * 100) / 100,
});
