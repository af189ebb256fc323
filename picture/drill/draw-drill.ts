import type { ActId, DrillPlan, Finding, LevelId, Rink, Run, SpotId } from '@icewright/engine';
import { CUE_HALF_M, drawCue } from '../ice/cue.ts';
import { drawNet } from '../ice/net.ts';
import { pointAt, polylineOf, tracePoints } from '../ice/polyline.ts';
import { drawRink, type RinkSetting } from '../ice/rink.ts';
import { type SheetPoint, sheetPoint } from '../ice/sheet-point.ts';
import { drawSpot, drawWaiting, waitingLabelReachM } from '../ice/spot.ts';
import { drawFlag, drawPucks, drawPylon } from '../ice/things.ts';
import type { Pen } from '../pen/pen.ts';
import { byRank } from './by-rank.ts';
import { cueSignsOf } from './cue-letters.ts';
import { drawRoute, drawTicks } from './draw-lines.ts';
import { type DrillLine, drillLinesOf } from './drill-lines.ts';
import { freePlace, type Obstacle } from './free-place.ts';

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
}

/** The whole drill as a still picture on its sheet. */
export const drawDrill = (pen: Pen, plan: DrillPlan, rink: Rink, setting: DrillSetting = {}): void => {
  drawRink(pen, rink, setting);
  drawDrillOnly(pen, plan, rink, setting);
};

/** The drill without the sheet, for a screen that keeps the sheet drawn below it. */
export const drawDrillOnly = (pen: Pen, plan: DrillPlan, rink: Rink, setting: DrillSetting = {}): void => {
  const lines = drillLinesOf(plan, rink, setting);
  for (const gear of Object.values(plan.gear)) drawGear(pen, gear, rink);
  for (const [, spot] of byRank(plan.spots)) drawWaiting(pen, spot);
  for (const line of lines) if (line.kind === 'pass' || line.kind === 'gap') drawRoute(pen, line, plan);
  for (const line of lines) if (line.kind !== 'pass' && line.kind !== 'gap') drawRoute(pen, line, plan);
  if (setting.ticks ?? pen.k < 1.3) for (const line of lines) if (line.kind === 'route') drawTicks(pen, line);
  for (const puck of Object.values(plan.pucks)) drawPucks(pen, puck.atM, puck.count);
  for (const [id, spot] of byRank(plan.spots)) {
    pen.group('spot', { spot: id }, () =>
      drawSpot(pen, {
        ...spot,
        selected: setting.selected?.spot === id && setting.selected.act === undefined,
      }),
    );
  }
  drawHandles(pen, plan, setting);
  const obstacles = obstaclesOf(pen, plan, lines);
  drawCues(pen, plan, rink, setting, obstacles);
  drawBankWords(pen, lines, rink, obstacles);
  const findings = setting.findings ?? setting.run?.findings ?? [];
  findings.forEach((finding, index) => {
    drawFlag(pen, finding.atM, index + 1, finding.weight);
  });
};

const NET_DEPTH_M = 1.016;

const drawGear = (pen: Pen, gear: DrillPlan['gear'][string], rink: Rink): void => {
  if (gear.kind === 'pylon') drawPylon(pen, gear.atM);
  else if (gear.kind === 'net') {
    const openingM = 2 * (rink.layout.postCentreYM - rink.layout.postDiameterM / 2);
    drawNet(pen, { atM: gear.atM, facingRad: gear.facingRad, openingM, depthM: NET_DEPTH_M }, 'netMoved');
  } else drawDivider(pen, gear, rink);
};

/** A divider lies square to the way it faces, from boards to boards. */
const drawDivider = (pen: Pen, gear: DrillPlan['gear'][string], rink: Rink): void => {
  const at = sheetPoint(gear.atM);
  const alongX = Math.abs(Math.sin(gear.facingRad)) > Math.SQRT1_2;
  const half = (alongX ? rink.boards.lengthM : rink.boards.widthM) / 2;
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

const drawCues = (
  pen: Pen,
  plan: DrillPlan,
  rink: Rink,
  setting: DrillSetting,
  obstacles: Obstacle[],
): void => {
  const half = CUE_HALF_M * pen.k;
  const isOnSheet = sheetTest(rink, half);
  for (const sign of cueSignsOf(plan, setting.run)) {
    const place = freePlace(sign.anchor, [1.95 * pen.k, 2.5 * pen.k], half * 0.95, obstacles, isOnSheet);
    obstacles.push({ at: place, radius: half });
    pen.group('cue-of', { spot: sign.spot, act: sign.act }, () => drawCue(pen, place, sign.letter, sign.way));
  }
};

/** A bank pass always carries its word, for its mark is not the same everywhere. */
const drawBankWords = (pen: Pen, lines: readonly DrillLine[], rink: Rink, obstacles: Obstacle[]): void => {
  for (const line of lines) {
    const bounce = line.kind === 'pass' && line.way === 'bank' ? line.legs[1] : undefined;
    if (!bounce) continue;
    const radius = 1.05 * pen.k;
    const place = freePlace(
      bounce,
      [1.7 * pen.k, 2.4 * pen.k, 3.2 * pen.k],
      radius,
      obstacles,
      sheetTest(rink, radius),
    );
    obstacles.push({ at: place, radius });
    pen.text('labelWord', 'bank', place.x, place.y, { anchor: 'middle', drop: 0.3 * pen.k });
  }
};

const sheetTest =
  (rink: Rink, marginM: number) =>
  (point: SheetPoint): boolean =>
    point.x > rink.area.minXM + marginM &&
    point.x < rink.area.maxXM - marginM &&
    -point.y > rink.area.minYM + marginM &&
    -point.y < rink.area.maxYM - marginM;

const obstaclesOf = (pen: Pen, plan: DrillPlan, lines: readonly DrillLine[]): Obstacle[] => {
  const k = pen.k;
  const obstacles: Obstacle[] = [];
  for (const spot of Object.values(plan.spots)) {
    const at = sheetPoint(spot.atM);
    obstacles.push({ at, radius: 0.95 * k });
    const shown = Math.min(spot.waitingCount, 3);
    if (shown === 0) continue;
    for (let place = 1; place <= shown; place++) {
      const reach = 0.62 * k * place;
      obstacles.push({
        at: { x: at.x - Math.cos(spot.facingRad) * reach, y: at.y + Math.sin(spot.facingRad) * reach },
        radius: 0.72 * k,
      });
    }
    const reach = waitingLabelReachM(spot.waitingCount) * k;
    obstacles.push({
      at: { x: at.x - Math.cos(spot.facingRad) * reach, y: at.y + Math.sin(spot.facingRad) * reach },
      radius: 0.8 * k,
    });
  }
  for (const puck of Object.values(plan.pucks)) obstacles.push({ at: sheetPoint(puck.atM), radius: 0.6 * k });
  for (const line of lines) {
    const points =
      line.kind === 'route' ? line.points : line.kind === 'pass' ? line.legs : [line.from, line.to];
    if (points.length === 0) continue;
    const route = polylineOf(points);
    if ('words' in line && line.words !== '') {
      const { at } = pointAt(route, Math.min(route.length / 2, 4 * k));
      for (const x of [-1.4, 0, 1.4])
        obstacles.push({ at: { x: at.x + x * k, y: at.y - k }, radius: 0.7 * k });
    }
    for (let length = 0; length <= route.length; length += 0.6) {
      obstacles.push({ at: pointAt(route, length).at, radius: 0.35 * k });
    }
  }
  return obstacles;
};
