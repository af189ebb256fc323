import type { ActId, DrillPlan, Finding, Lengths, LevelId, Rink, Run, SpotId } from '@icewright/engine';
import { cornerCentreOf } from '@icewright/engine';
import { drawPlace } from '../ice/act-marks.ts';
import { drawNet } from '../ice/net.ts';
import { tracePoints } from '../ice/polyline.ts';
import { drawRink, type RinkSetting } from '../ice/rink.ts';
import { sheetPoint } from '../ice/sheet-point.ts';
import { drawSpot, drawWaiting } from '../ice/spot.ts';
import { drawPucks, drawPylon } from '../ice/things.ts';
import { isSmall } from '../pen/is-small.ts';
import type { Pen } from '../pen/pen.ts';
import { byRank } from './by-rank.ts';
import { cueKey } from './cue-letters.ts';
import { drawFlags } from './draw-flags.ts';
import { drawGame } from './draw-game.ts';
import { drawGoalieWays } from './draw-goalie-way.ts';
import { drawLabels } from './draw-labels.ts';
import { drawLeftPuck, drawRoute, drawTicks } from './draw-lines.ts';
import { drillLinesOf } from './drill-lines.ts';
import { puckInSight } from './puck-in-sight.ts';

export interface DrillSetting extends RinkSetting {
  /** As it was played: passes, chases and ticks lie where the run has them. */
  readonly run?: Run;
  /** For the ticks when there is no run. */
  readonly level?: LevelId;
  readonly selected?: { readonly spot: SpotId; readonly act?: ActId };
  /** Flags with numbers, in this order; those of the run when left out, none when empty. */
  readonly findings?: readonly Finding[];
  /** Without one tick a second: small drawings are calmer without. */
  readonly ticks?: boolean;
  /** With where goalies went by the puck alone. */
  readonly goalieWays?: boolean;
  /** How lengths are written beside lines; metres when left out. */
  readonly lengths?: Lengths;
}

/** The whole drill as a still picture on its sheet. */
export const drawDrill = (pen: Pen, plan: DrillPlan, rink: Rink, setting: DrillSetting = {}): void => {
  drawRink(pen, rink, setting);
  drawDrillOnly(pen, plan, rink, setting);
};

/** The drill without the sheet, for a screen that keeps the sheet drawn below it. */
export const drawDrillOnly = (pen: Pen, plan: DrillPlan, rink: Rink, setting: DrillSetting = {}): void => {
  const lines = drillLinesOf(plan, rink, setting);
  for (const [id, game] of byRank(plan.games ?? {}))
    pen.group('game', { game: id }, () => drawGame(pen, game, rink));
  for (const gear of Object.values(plan.gear)) drawGear(pen, gear, rink);
  for (const [, spot] of byRank(plan.spots)) drawWaiting(pen, spot);
  drawCuePlaces(pen, plan);
  for (const line of lines) if (line.kind === 'pass' || line.kind === 'gap') drawRoute(pen, line, plan);
  for (const line of lines) if (line.kind !== 'pass' && line.kind !== 'gap') drawRoute(pen, line, plan);
  if (setting.ticks ?? !isSmall(pen))
    for (const line of lines) if (line.kind === 'route') drawTicks(pen, line);
  for (const line of lines) drawLeftPuck(pen, line, plan);
  for (const puck of Object.values(plan.pucks)) drawPucks(pen, puckInSight(puck, plan, pen.k), puck.count);
  for (const [id, spot] of byRank(plan.spots)) {
    pen.group('spot', { spot: id }, () =>
      drawSpot(pen, {
        ...spot,
        selected: setting.selected?.spot === id && setting.selected.act === undefined,
      }),
    );
  }
  if (setting.goalieWays && setting.run) drawGoalieWays(pen, plan, setting.run);
  drawHandles(pen, plan, setting);
  const labels = drawLabels(pen, plan, rink, lines, setting.run);
  drawFlags(pen, setting.findings ?? setting.run?.findings ?? [], plan, rink, labels);
};

/** Places that somebody must come to, each once, however many wait for it. */
const drawCuePlaces = (pen: Pen, plan: DrillPlan): void => {
  const seen = new Set<string>();
  for (const { acts } of Object.values(plan.spots)) {
    for (const { cue } of Object.values(acts)) {
      if (cue?.on !== 'reaches' || seen.has(cueKey(cue))) continue;
      seen.add(cueKey(cue));
      drawPlace(pen, sheetPoint(cue.atM), cue.withinM);
    }
  }
};

const NET_DEPTH_M = 1.016;
/** A small net beside a full one: about 4 × 3 ft, common practice, no source. */
export const SMALL_NET_RATIO = 2 / 3;

const drawGear = (pen: Pen, gear: DrillPlan['gear'][string], rink: Rink): void => {
  if (gear.kind === 'pylon') drawPylon(pen, gear.atM);
  else if (gear.kind === 'net' || gear.kind === 'smallNet') {
    const scale = gear.kind === 'smallNet' ? SMALL_NET_RATIO : 1;
    const openingM = 2 * scale * (rink.layout.postCentreYM - rink.layout.postDiameterM / 2);
    const depthM = scale * NET_DEPTH_M;
    drawNet(pen, { atM: gear.atM, facingRad: gear.facingRad, openingM, depthM }, 'netMoved');
  } else drawDivider(pen, gear, rink);
};

/** A divider lies square to the way it faces, from boards to boards. */
const drawDivider = (pen: Pen, gear: DrillPlan['gear'][string], rink: Rink): void => {
  const at = sheetPoint(gear.atM);
  const alongX = Math.abs(Math.sin(gear.facingRad)) > Math.SQRT1_2;
  const half = alongX
    ? halfChord(rink, 'yM', Math.abs(at.y), rink.boards.lengthM / 2)
    : halfChord(rink, 'xM', Math.abs(at.x), rink.boards.widthM / 2);
  pen.path('divider', sink =>
    tracePoints(
      sink,
      alongX
        ? [
            { x: -half, y: at.y },
            { x: half, y: at.y },
          ]
        : [
            { x: at.x, y: -half },
            { x: at.x, y: half },
          ],
    ),
  );
};

/** Half the way from boards to boards at this distance from the middle: shorter where the corners are round. */
const halfChord = (rink: Rink, across: 'xM' | 'yM', fromMiddleM: number, fullM: number): number => {
  const centre = cornerCentreOf(rink.boards);
  const intoM = fromMiddleM - centre[across];
  const radiusM = rink.boards.cornerRadiusM;
  if (intoM <= 0) return fullM;
  return fullM - radiusM + Math.sqrt(Math.max(0, radiusM * radiusM - intoM * intoM));
};

/** Handles of the selected spot's routes, at the points the coach set. */
const drawHandles = (pen: Pen, plan: DrillPlan, setting: DrillSetting): void => {
  const { selected } = setting;
  const spot = selected && plan.spots[selected.spot];
  if (!selected || !spot) return;
  for (const [id, act] of byRank(spot.acts)) {
    if (act.kind !== 'skate' && act.kind !== 'carry') continue;
    if (selected.act !== undefined && selected.act !== id) continue;
    act.throughM.forEach((point, index) => {
      const at = sheetPoint(point);
      pen.group('handle', { spot: selected.spot, act: id, index: `${index}` }, () =>
        pen.circle('handle', at.x, at.y, 0.45 * pen.k),
      );
    });
  }
};
