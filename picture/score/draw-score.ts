import {
  type DrillPlan,
  type Finding,
  feetOf,
  type Lengths,
  type LineId,
  lineWords,
  type Rink,
  type Run,
  type SpotId,
} from '@icewright/engine';
import { drawRule } from '../chart/rule.ts';
import { tracePoints } from '../ice/polyline.ts';
import { drawSpot } from '../ice/spot.ts';
import type { Pen } from '../pen/pen.ts';
import { drawGoalieLine } from './goalie-line.ts';
import { drawScoreCues } from './score-cues.ts';
import { drawScoreFlags } from './score-flags.ts';
import {
  type ScoreLayout,
  type ScoreSize,
  STAVE_LINE_PX,
  STAVE_LINES,
  STAVE_TOP_MPS,
  type Stave,
  scoreLayout,
  staveY,
} from './score-layout.ts';
import { drawPuckTies } from './score-puck.ts';
import { drawSpeedLine, holdsOf } from './speed-line.ts';

export interface ScoreSetting extends ScoreSize {
  readonly selected?: SpotId;
  /** Where the play stands, seconds. */
  readonly nowS?: number;
  /** Who stands at a spot, beside its disc. */
  readonly names?: Readonly<Record<SpotId, string>>;
  /** Flags with numbers, in this order; those of the run when left out. */
  readonly findings?: readonly Finding[];
  /** How speeds are written: metres or feet a second; metres when left out. */
  readonly lengths?: Lengths;
}

const SPOT_PX_A_METRE = 13;
/** From the end of the staves: two bars of a stop stand between. */
const SPEEDS_FROM_PX = 10;
/** The narrow letters of a screen's variable font are up to this much wider than narrowed letters of the table. */
const WORDS_WIDER = 1.12;

/** The height that a score of this drill takes, px. */
export const scoreHeight = (plan: DrillPlan, run: Run): number =>
  scoreLayout(plan, run, { width: 1000 }).height;

/**
 * The drill over time: a stave a spot, higher is faster, the line wears the same mark as on the ice; lozenges are cues,
 * bars are the puck over a line, ties are passes and shots. Px.
 */
export const drawScore = (pen: Pen, run: Run, plan: DrillPlan, rink: Rink, setting: ScoreSetting): void => {
  const layout = scoreLayout(plan, run, setting);
  for (const stave of layout.staves) drawStave(pen, stave, layout);
  drawBars(pen, run, plan, layout);
  const holds = holdsOf(run);
  for (const stave of layout.staves) {
    pen.group('stave', { spot: stave.spot }, () => {
      drawSpeedLine(pen, stave, plan, run, layout, setting.selected === stave.spot, holds);
      drawGoalieLine(pen, stave, plan, rink, run, layout);
    });
  }
  drawPuckTies(pen, run, plan, rink, layout);
  drawScoreCues(pen, run, plan, layout);
  drawScoreFlags(pen, setting.findings ?? run.findings, run, layout);
  for (const stave of layout.staves) drawWho(pen, stave, plan, setting);
  drawSeconds(pen, run, layout);
  drawSpeeds(pen, layout, setting.lengths ?? 'metres');
  if (setting.nowS !== undefined) {
    const x = layout.xOf(setting.nowS);
    pen.path('playLine', sink => {
      sink.moveTo(x, layout.top);
      sink.lineTo(x, layout.ruleY + 5);
    });
  }
};

const drawStave = (pen: Pen, stave: Stave, layout: ScoreLayout): void => {
  const lines = stave.isLineAlone ? 1 : STAVE_LINES;
  for (let index = lines - 1; index >= 0; index--) {
    const y = stave.zeroY - index * STAVE_LINE_PX;
    pen.path(index === 0 ? 'staveZero' : 'staveLine', sink => {
      sink.moveTo(layout.left, y);
      sink.lineTo(layout.right, y);
    });
  }
};

const drawWho = (pen: Pen, stave: Stave, plan: DrillPlan, setting: ScoreSetting): void => {
  const spot = plan.spots[stave.spot];
  if (!spot) return;
  const y = stave.isLineAlone ? stave.zeroY : stave.zeroY - STAVE_LINE_PX * 1.7;
  pen.place({ x: 21, y, scale: SPOT_PX_A_METRE, k: 1 }, () =>
    drawSpot(pen, {
      ...spot,
      atM: { xM: spot.kind === 'goalie' ? -0.4 : 0, yM: 0 },
      facingRad: 0,
      waitingCount: 0,
      selected: setting.selected === stave.spot,
    }),
  );
  const name = setting.names?.[stave.spot];
  if (name) pen.text('who', name, 39, y + 6);
};

/** From one row of words over the bars to the other. */
const BAR_ROW_PX = 13;

/** The two blue lines as the drill's people call them; the red one short. Goal lines stand at shots already. */
const lineWord = (line: LineId, plan: DrillPlan): string | undefined => {
  if (line === 'centreLine') return 'red line';
  return line.startsWith('blue') ? lineWords(line, plan) : undefined;
};

/** Bars with their words above, in two rows; where both are full the later bar goes without. */
const drawBars = (pen: Pen, run: Run, plan: DrillPlan, layout: ScoreLayout): void => {
  const freeFrom = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const event of run.events) {
    const words =
      event.kind === 'puckCrosses'
        ? lineWord(event.line, plan)
        : event.kind === 'pass'
          ? `${plan.spots[event.spot]?.role ?? ''} passes`
          : event.kind === 'shot'
            ? 'shot'
            : undefined;
    if (words === undefined) continue;
    const x = layout.xOf(event.timeS);
    pen.path('barLine', sink => {
      sink.moveTo(x, layout.top);
      sink.lineTo(x, layout.ruleY - 8);
    });
    const figure = event.timeS.toFixed(1);
    const wordsWidth = pen.measure('barWord', words) * WORDS_WIDER + 6;
    const figureWidth = pen.measure('barFigure', figure);
    // The rows from the lowest up: the words stand where the others have left room.
    const row = freeFrom.findIndex(from => x + 4 >= from);
    if (row < 0) continue;
    const y = layout.top - 4 - row * BAR_ROW_PX;
    pen.text('barWord', words, x + 4, y);
    pen.text('barFigure', figure, x + 4 + wordsWidth, y);
    freeFrom[row] = x + 4 + wordsWidth + figureWidth + 8;
  }
};

const drawSeconds = (pen: Pen, run: Run, layout: ScoreLayout): void => {
  const each = layout.xOf(1) - layout.xOf(0);
  const figures = [];
  const last = Math.floor(run.durationS);
  for (let second = 0; second <= last; second++) {
    figures.push({ at: second * each, words: second === last ? `${second} s` : `${second}` });
  }
  drawRule(pen, { x: layout.left, y: layout.ruleY, width: layout.right - layout.left, each, figures });
  pen.path('staveZero', sink =>
    tracePoints(sink, [
      { x: layout.left, y: layout.top + 6 },
      { x: layout.left, y: layout.ruleY },
    ]),
  );
};

/** Speeds beside the first stave of a skater: the staves are the same in feet, and the figures are those of their lines. */
const drawSpeeds = (pen: Pen, layout: ScoreLayout, lengths: Lengths): void => {
  const stave = layout.staves.find(each => !each.isLineAlone);
  if (!stave) return;
  for (const speedMps of [0, STAVE_TOP_MPS / 2, STAVE_TOP_MPS]) {
    const figure = lengths === 'feet' ? feetOf(speedMps).toFixed(0) : `${speedMps}`;
    const unit = speedMps < STAVE_TOP_MPS ? '' : lengths === 'feet' ? ' ft/s' : ' m/s';
    pen.text('axis', `${figure}${unit}`, layout.right + SPEEDS_FROM_PX, staveY(stave, speedMps) + 3.5);
  }
};
