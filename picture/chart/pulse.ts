import type { Pen } from '../pen/pen.ts';
import { drawRule } from './rule.ts';

/** The moments of a film, or of a game, on its minutes. */
export interface Pulse {
  readonly minutes: number;
  readonly periods: readonly { readonly name: string; readonly startMinute: number }[];
  readonly moments: readonly PulseMoment[];
  readonly goals?: readonly { readonly atMinute: number; readonly words: string }[];
  readonly nowMinute?: number;
}

export interface PulseMoment {
  readonly atMinute: number;
  readonly outcome: 'done' | 'missed' | 'unseen';
  /** What it cost or was worth, 0 to 1: the height. */
  readonly cost: number;
  /** Of the habit that is looked at; the others stand back. */
  readonly chosen: boolean;
  readonly id?: string;
}

export const PULSE_HEIGHT_PX = 98;
const LEFT_PX = 34;
const BASE_PX = 40;
const TALL_PX = 32;
const LOW_PX = 8;
const RULE_PX = 78;

/** Where a minute lies, so that a screen can seek by a click. */
export const pulseX = (pulse: Pulse, width: number, minute: number): number =>
  LEFT_PX + (minute / Math.max(pulse.minutes, 1e-9)) * (width - LEFT_PX - 2);

/** Done above the line, missed below it, height = cost, a small ring on the line = could not be seen. Px. */
export const drawPulse = (pen: Pen, pulse: Pulse, width: number): void => {
  const at = (minute: number): number => pulseX(pulse, width, minute);
  pen.text('axis', 'done', 0, 30);
  pen.text('axis', 'missed', 0, 58);
  pen.path('baseLine', sink => {
    sink.moveTo(LEFT_PX, BASE_PX);
    sink.lineTo(width - 2, BASE_PX);
  });
  for (const chosen of [false, true]) {
    for (const moment of pulse.moments)
      if (moment.chosen === chosen) drawMoment(pen, moment, at(moment.atMinute));
  }
  for (const goal of pulse.goals ?? [])
    pen.text('axis', goal.words, at(goal.atMinute), 9, { anchor: 'middle' });
  drawMinutes(pen, pulse, at);
  if (pulse.nowMinute !== undefined) drawUpright(pen, 'playLine', at(pulse.nowMinute), 0, RULE_PX + 4);
};

const drawMoment = (pen: Pen, moment: PulseMoment, x: number): void =>
  pen.group('moment', moment.id === undefined ? {} : { id: moment.id }, () => {
    if (moment.outcome === 'unseen') {
      pen.circle(moment.chosen ? 'pulseUnseen' : 'pulseOtherUnseen', x, BASE_PX, 3);
      return;
    }
    const width = moment.chosen ? 5 : 3;
    const height = LOW_PX + (TALL_PX - LOW_PX) * Math.max(0, Math.min(1, moment.cost));
    const isDone = moment.outcome === 'done';
    const mark = !moment.chosen ? 'pulseOther' : isDone ? 'pulseDone' : 'pulseMissed';
    pen.path(mark, sink => sink.rect(x - width / 2, isDone ? BASE_PX - height : BASE_PX, width, height));
  });

/** One segment a minute, figures every five, a double bar where a period begins. */
const drawMinutes = (pen: Pen, pulse: Pulse, at: (minute: number) => number): void => {
  const periods = pulse.periods.length > 0 ? pulse.periods : [{ name: '0', startMinute: 0 }];
  periods.forEach((period, index) => {
    const start = at(period.startMinute);
    const endMinute = periods[index + 1]?.startMinute ?? pulse.minutes;
    const each = at(period.startMinute + 1) - start;
    const figures = [{ at: 0, words: period.name, strong: true }];
    for (let minute = 5; minute < endMinute - period.startMinute - 1; minute += 5) {
      figures.push({ at: each * minute, words: `${minute}`, strong: false });
    }
    drawRule(pen, { x: start, y: RULE_PX, width: at(endMinute) - start, each, height: 4, figures });
    if (index === 0) return;
    for (const x of [start - 1.5, start + 1.5]) drawUpright(pen, 'barLine', x, 8, RULE_PX + 4);
  });
};

const drawUpright = (pen: Pen, mark: 'playLine' | 'barLine', x: number, from: number, to: number): void =>
  pen.path(mark, sink => {
    sink.moveTo(x, from);
    sink.lineTo(x, to);
  });
