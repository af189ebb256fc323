import type { DrillPlan, Gear, SmallGame } from '../drill/drill.ts';
import { boardsDistance } from '../rink/boards.ts';
import type { Rink } from '../rink/rink.ts';
import type { Finding } from '../run/run-result.ts';
import type { IcePoint } from '../units/points.ts';
import type { Row } from '../units/provenance.ts';
import { ICE_PER_SKATER_SQM, NET_DEPTH_RATIO, NET_ROOM_M, SMALL_NET_OPENING_M } from './flow-rows.ts';
import { gameAreaOf, gameIceSqM } from './game-area.ts';
import { skatersOfGames } from './game-flow-of.ts';

/**
 * What is wrong with the small games of a drill: a region over the boards (value: metres past them), less ice than
 * `ICE_PER_SKATER_SQM` for each who plays at once (m²), a net of the game outside its region or nearer to the boards than `NET_ROOM_M`
 * (metres, from its posts and back), fewer here than play at once (skaters). `skaters` is a whole number ≥ 0. Empty when there is nothing to say.
 */
export const findSmallGame = (plan: DrillPlan, rink: Rink, skaters: number): readonly Finding[] => {
  const shares = skatersOfGames(plan, skaters);
  return Object.entries(plan.games ?? {}).flatMap(([id, game]) => [
    ...offTheIce(game, rink),
    ...crowded(game, rink),
    ...game.nets.flatMap(net => netWrong(game, plan.gear[net], rink)),
    ...tooFew(game, shares[id] ?? 0),
  ]);
};

const finding = (
  kind: Finding['kind'],
  weight: Finding['weight'],
  atM: IcePoint,
  value: number,
  threshold: number,
  unit: string,
  row: Pick<Row, 'status' | 'source'>,
): Finding => ({
  kind,
  weight,
  timeS: 0,
  atM,
  spots: [],
  value,
  threshold,
  unit,
  status: row.status,
  source: row.source,
});

const GEOMETRY = { status: 'derived', source: 'where the drawing has it, on this sheet' } as const;

const middleOf = (game: SmallGame): IcePoint => ({
  xM: (game.fromM.xM + game.toM.xM) / 2,
  yM: (game.fromM.yM + game.toM.yM) / 2,
});

const offTheIce = (game: SmallGame, rink: Rink): readonly Finding[] => {
  const region = gameAreaOf(game);
  const overM = Math.max(
    rink.area.minXM - region.minXM,
    region.maxXM - rink.area.maxXM,
    rink.area.minYM - region.minYM,
    region.maxYM - rink.area.maxYM,
  );
  return overM > ROUNDING_M
    ? [finding('gameOffTheIce', 'look', middleOf(game), overM, 0, 'm', GEOMETRY)]
    : [];
};

const ROUNDING_M = 0.01;

const crowded = (game: SmallGame, rink: Rink): readonly Finding[] => {
  const atOnce = game.usCount + game.themCount;
  const eachSqM = gameIceSqM(game, rink) / Math.max(1, atOnce);
  if (atOnce === 0 || eachSqM >= ICE_PER_SKATER_SQM.value) return [];
  return [
    finding(
      'gameTooCrowded',
      'look',
      middleOf(game),
      eachSqM,
      ICE_PER_SKATER_SQM.value,
      'm²',
      ICE_PER_SKATER_SQM,
    ),
  ];
};

const netWrong = (game: SmallGame, net: Gear | undefined, rink: Rink): readonly Finding[] => {
  if (net === undefined) return [];
  const region = gameAreaOf(game);
  const outM = Math.max(
    region.minXM - net.atM.xM,
    net.atM.xM - region.maxXM,
    region.minYM - net.atM.yM,
    net.atM.yM - region.maxYM,
  );
  const roomM = Math.min(...cornersOf(net, rink).map(corner => boardsDistance(rink.boards, corner)));
  return [
    ...(outM > ROUNDING_M ? [finding('netOutsideGame', 'know', net.atM, outM, 0, 'm', GEOMETRY)] : []),
    ...(roomM < NET_ROOM_M.value
      ? [finding('netNearBoards', 'look', net.atM, roomM, NET_ROOM_M.value, 'm', NET_ROOM_M)]
      : []),
  ];
};

/** Both posts and the two ends of the back of a net that stands where its mouth is. */
const cornersOf = (net: Gear, rink: Rink): readonly IcePoint[] => {
  const openingM = net.kind === 'smallNet' ? SMALL_NET_OPENING_M.value : 2 * rink.layout.postCentreYM;
  const depthM = NET_DEPTH_RATIO.value * openingM;
  const [cos, sin] = [Math.cos(net.facingRad), Math.sin(net.facingRad)];
  return [0, depthM].flatMap(backM =>
    [-openingM / 2, openingM / 2].map(acrossM => ({
      xM: net.atM.xM - backM * cos - acrossM * sin,
      yM: net.atM.yM - backM * sin + acrossM * cos,
    })),
  );
};

const tooFew = (game: SmallGame, here: number): readonly Finding[] => {
  const atOnce = game.usCount + game.themCount;
  if (here >= atOnce) return [];
  return [finding('tooFewSkaters', 'look', middleOf(game), here, atOnce, 'skaters', ROSTER)];
};

const ROSTER = {
  status: 'derived',
  source: 'who is here and not in a drawn line, against who plays at once',
} as const;
