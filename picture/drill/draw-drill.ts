import type { ActId, DrillPlan, Finding, Lengths, LevelId, Rink, Run, SpotId } from '@icewright/engine';
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
import type { DrillLine } from './drill-line.ts';
import { drillLinesOf } from './drill-lines.ts';
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
  drawWords(pen, lines, rink, obstacles);
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

/** Marks that are not the same everywhere always carry their word; each stands in a free place beside its line. */
const drawWords = (pen: Pen, lines: readonly DrillLine[], rink: Rink, obstacles: Obstacle[]): void => {
  const radius = 0.5 * pen.k;
  const isOnEnd = Math.abs(Math.sin(pen.turnRad)) > 0.5;
  for (const line of lines) {
    const said = wordsOf(line, pen.k);
    if (!said) continue;
    const half = pen.measure('labelWord', said.words) / 2;
    const extent = isOnEnd ? { x: 0, y: half } : { x: half, y: 0 };
    const reaches = [1.1, 1.7, 2.4, 3.2, 4.2, 5.4].map(reach => reach * pen.k);
    const test = sheetTest(rink, radius, extent);
    const place = freePlace(said.anchor, reaches, radius, obstacles, test, extent);
    for (const share of [-1, -0.5, 0, 0.5, 1]) {
      obstacles.push({ at: { x: place.x + share * extent.x, y: place.y + share * extent.y }, radius });
    }
    pen.text('labelWord', said.words, place.x, place.y, { anchor: 'middle', drop: 0.3 * pen.k });
  }
};

const wordsOf = (
  line: DrillLine,
  k: number,
): { readonly words: string; readonly anchor: SheetPoint } | null => {
  if (line.kind === 'pass') {
    const bounce = line.way === 'bank' ? line.legs[1] : undefined;
    return bounce ? { words: 'bank', anchor: bounce } : null;
  }
  if (line.kind === 'shot' || line.words === '') return null;
  const route = polylineOf(line.kind === 'route' ? line.points : [line.from, line.to]);
  return { words: line.words, anchor: pointAt(route, Math.min(route.length / 2, 4 * k)).at };
};

const sheetTest =
  (rink: Rink, marginM: number, extent: SheetPoint = { x: 0, y: 0 }) =>
  (point: SheetPoint): boolean =>
    point.x > rink.area.minXM + marginM + extent.x &&
    point.x < rink.area.maxXM - marginM - extent.x &&
    -point.y > rink.area.minYM + marginM + extent.y &&
    -point.y < rink.area.maxYM - marginM - extent.y;

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
    for (let length = 0; length <= route.length; length += 0.6) {
      obstacles.push({ at: pointAt(route, length).at, radius: 0.35 * k });
    }
  }
  return obstacles;
};
