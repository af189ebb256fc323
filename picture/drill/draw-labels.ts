import type { DrillPlan, Rink, Run } from '@icewright/engine';
import { archTop } from '../ice/act-marks.ts';
import { CUE_HALF_M, drawCue } from '../ice/cue.ts';
import { pointAt, polylineOf } from '../ice/polyline.ts';
import { along, type SheetPoint, sheetPoint } from '../ice/sheet-point.ts';
import { queueShown, waitingLabelReachM } from '../ice/spot.ts';
import { isSmall } from '../pen/is-small.ts';
import type { Pen } from '../pen/pen.ts';
import { byRank } from './by-rank.ts';
import { type CueSign, cueSignsOf } from './cue-letters.ts';
import type { DrillLine, PassLine, SignLine } from './drill-line.ts';
import { findFreePlace, freePlace, type Obstacle } from './free-place.ts';
import { orderFigures } from './order-figures.ts';
import { puckInSight } from './puck-in-sight.ts';

/** How far from its line a word may stand, ice metres at k = 1. */
const REACHES = [1.1, 1.7, 2.4, 3.2, 4.2, 5.4] as const;
/** Farther from its line, a word of a small drawing would seem to be another's. */
const SMALL_REACHES = 3;

/** Lozenges of the cues and words beside lines, each where it covers the least. Returns the places they take. */
export const drawLabels = (
  pen: Pen,
  plan: DrillPlan,
  rink: Rink,
  lines: readonly DrillLine[],
  run: Run | undefined,
): readonly Obstacle[] => {
  const obstacles = obstaclesOf(pen, plan, lines);
  const others = obstacles.length;
  drawCues(pen, plan, rink, run, obstacles);
  drawOrder(pen, plan, lines, run, rink, obstacles);
  drawWords(pen, lines, rink, obstacles);
  return obstacles.slice(others);
};

const drawCues = (
  pen: Pen,
  plan: DrillPlan,
  rink: Rink,
  run: Run | undefined,
  obstacles: Obstacle[],
): void => {
  const half = CUE_HALF_M * pen.k;
  const isOnSheet = sheetTest(rink, half);
  const signs = cueSignsOf(plan, run);
  for (const sign of isSmall(pen) ? oneWhistle(plan, signs) : signs) {
    const place = freePlace(sign.anchor, [1.95 * pen.k, 2.5 * pen.k], half * 0.95, obstacles, isOnSheet);
    obstacles.push({ at: place, radius: half });
    pen.group('cue-of', { spot: sign.spot, act: sign.act }, () => drawCue(pen, place, sign.letter, sign.way));
  }
};

/** Small figures beside the lines of the puck: what is played first, second, third. */
const drawOrder = (
  pen: Pen,
  plan: DrillPlan,
  lines: readonly DrillLine[],
  run: Run | undefined,
  rink: Rink,
  obstacles: Obstacle[],
): void => {
  const radius = 0.42 * pen.k;
  const isOnSheet = sheetTest(rink, radius);
  for (const [line, figure] of orderFigures(plan, lines, run)) {
    const way = polylineOf(pointsOf(line));
    const { at } = pointAt(way, way.length * 0.4);
    const { place } = findFreePlace(at, [0.85 * pen.k, 1.2 * pen.k], radius, obstacles, isOnSheet);
    obstacles.push({ at: place, radius });
    pen.text('order', `${figure}`, place.x, place.y, { anchor: 'middle', drop: 0.34 * pen.k });
  }
};

/** Those who start on one whistle start together: a small drawing says it once. */
const oneWhistle = (plan: DrillPlan, signs: readonly CueSign[]): readonly CueSign[] => {
  const isStart = (sign: CueSign): boolean => {
    const spot = plan.spots[sign.spot];
    return sign.cue.on === 'whistle' && spot !== undefined && byRank(spot.acts)[0]?.[0] === sign.act;
  };
  const first = signs.find(isStart);
  return signs.filter(sign => sign === first || !isStart(sign));
};

/**
 * Marks that are not the same everywhere always carry their word; whom a chase or a gap goes to is left out of a small
 * drawing where it would cover something. Each stands in a free place beside its line.
 */
const drawWords = (pen: Pen, lines: readonly DrillLine[], rink: Rink, obstacles: Obstacle[]): void => {
  const radius = 0.5 * pen.k;
  const isOnEnd = Math.abs(Math.sin(pen.turnRad)) > 0.5;
  for (const line of lines) {
    const said = wordsOf(line, pen);
    if (!said) continue;
    const half = pen.measure('labelWord', said.words) / 2;
    const extent = isOnEnd ? { x: 0, y: half } : { x: half, y: 0 };
    const mayBeLeftOut = isSmall(pen) && !hasToBeSaid(line);
    const reaches = REACHES.slice(0, mayBeLeftOut ? SMALL_REACHES : REACHES.length).map(
      reach => reach * pen.k,
    );
    const test = sheetTest(rink, radius, extent);
    const { place, room } = findFreePlace(said.anchor, reaches, radius, obstacles, test, extent);
    if (mayBeLeftOut && room < 0) continue;
    for (const share of [-1, -0.5, 0, 0.5, 1]) {
      obstacles.push({ at: { x: place.x + share * extent.x, y: place.y + share * extent.y }, radius });
    }
    pen.text('labelWord', said.words, place.x, place.y, { anchor: 'middle', drop: 0.3 * pen.k });
  }
};

const wordsOf = (
  line: DrillLine,
  pen: Pen,
): { readonly words: string; readonly anchor: SheetPoint } | null => {
  if (line.kind === 'shot' || line.words === '') return null;
  if (line.kind === 'sign') return { words: line.words, anchor: line.at };
  if (line.kind === 'pass') return { words: line.words, anchor: passWordAt(line, pen) };
  const route = polylineOf(pointsOf(line));
  const isAtEnd = line.kind === 'route' && line.laneRad !== undefined;
  return {
    words: line.words,
    anchor: pointAt(route, isAtEnd ? route.length : Math.min(route.length / 2, 4 * pen.k)).at,
  };
};

/** A word stands by what it names: the bounce, the part in the air, the puck that is left, the middle of the boards' part. */
const passWordAt = (line: PassLine, pen: Pen): SheetPoint => {
  const way = polylineOf(line.legs);
  const { meant } = line;
  // One that was cut before the boards has its bounce in what was meant.
  if (meant && (line.way === 'rim' || (line.way === 'bank' && line.legs.length < 3)))
    return meant[meant.length > 2 ? 1 : 0] ?? way.points[0]!;
  const bounce = line.legs[1];
  if (line.way === 'bank' && bounce) return bounce;
  if (line.way === 'drop') return pointAt(way, 0).at;
  const airM = line.airM;
  return airM === undefined
    ? pointAt(way, way.length / 2).at
    : archTop(pen, way, 0, Math.min(airM, way.length));
};

/** Marks that are not the same everywhere never go without their word. */
const hasToBeSaid = (line: DrillLine): boolean =>
  line.kind === 'pass' || line.kind === 'sign' || (line.kind === 'route' && line.laneRad !== undefined);

const pointsOf = (line: DrillLine): readonly SheetPoint[] => {
  if (line.kind === 'route') return line.points;
  if (line.kind === 'pass') return line.legs;
  return line.kind === 'sign' ? [line.at] : [line.from, line.to];
};

const sheetTest =
  (rink: Rink, marginM: number, extent: SheetPoint = { x: 0, y: 0 }) =>
  (point: SheetPoint): boolean =>
    point.x > rink.area.minXM + marginM + extent.x &&
    point.x < rink.area.maxXM - marginM - extent.x &&
    -point.y > rink.area.minYM + marginM + extent.y &&
    -point.y < rink.area.maxYM - marginM - extent.y;

/** A facing stands before the disc. */
const signObstacle = (line: SignLine, k: number): Obstacle => ({
  at: line.sign === 'face' ? along(line.at, line.turnRad, 1.4 * k) : line.at,
  radius: 0.6 * k,
});

const obstaclesOf = (pen: Pen, plan: DrillPlan, lines: readonly DrillLine[]): Obstacle[] => {
  const k = pen.k;
  const obstacles: Obstacle[] = [];
  for (const spot of Object.values(plan.spots)) {
    const at = sheetPoint(spot.atM);
    obstacles.push({ at, radius: 0.95 * k });
    const shown = queueShown(spot.waitingCount, k);
    if (shown === 0) continue;
    for (let place = 1; place <= shown; place++) {
      const reach = 0.62 * k * place;
      obstacles.push({
        at: { x: at.x - Math.cos(spot.facingRad) * reach, y: at.y + Math.sin(spot.facingRad) * reach },
        radius: 0.72 * k,
      });
    }
    const reach = waitingLabelReachM(spot.waitingCount, k) * k;
    obstacles.push({
      at: { x: at.x - Math.cos(spot.facingRad) * reach, y: at.y + Math.sin(spot.facingRad) * reach },
      radius: 0.8 * k,
    });
  }
  for (const gear of Object.values(plan.gear)) {
    if (gear.kind === 'pylon') obstacles.push({ at: sheetPoint(gear.atM), radius: 0.6 * k });
  }
  for (const puck of Object.values(plan.pucks))
    obstacles.push({ at: sheetPoint(puckInSight(puck, plan, k)), radius: 0.6 * k });
  for (const line of lines) {
    if (line.kind === 'sign') obstacles.push(signObstacle(line, k));
    obstacles.push(...alongLine(line, k));
  }
  return obstacles;
};

const known = new WeakMap<DrillLine, { readonly k: number; readonly obstacles: readonly Obstacle[] }>();

/** The same list again for the same line: most lines stay as they were under a moving hand. */
const alongLine = (line: DrillLine, k: number): readonly Obstacle[] => {
  const before = known.get(line);
  if (before?.k === k) return before.obstacles;
  const obstacles: Obstacle[] = [];
  for (const points of [pointsOf(line), line.kind === 'pass' ? (line.meant ?? []) : []]) {
    const route = polylineOf(points);
    for (let length = 0; points.length > 0 && length <= route.length; length += 0.6) {
      obstacles.push({ at: pointAt(route, length).at, radius: 0.35 * k });
    }
  }
  known.set(line, { k, obstacles });
  return obstacles;
};
