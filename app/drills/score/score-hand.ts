import type { Run, SpotId } from '@icewright/engine';
import type { ScoreLayout } from '@icewright/picture';
import { useRef } from 'react';
import type { Chosen } from '../chosen.ts';
import type { Hand } from '../use-hand.ts';

/** What every part of the score that can be taken hold of works with. */
export interface ScoreHand {
  readonly hand: Hand;
  readonly run: Run;
  readonly layout: ScoreLayout;
  readonly chosen: Chosen;
  readonly forFingers: boolean;
  readonly onChoose: (chosen: Chosen) => void;
  /** What the hand is doing, in words; empty when it does nothing. */
  readonly onSay: (words: string) => void;
  /** The seconds of the picture stand still while the hand moves. */
  readonly onHold: (isHeld: boolean) => void;
  readonly isHeld: boolean;
}

/**
 * What can be taken hold of, and while a hand moves also what was there when it began: an act that would never start as
 * the hand stands now must stay under the hand.
 */
export const useStillUnderHand = <Part>(
  parts: readonly Part[],
  keyOf: (part: Part) => string,
  isHeld: boolean,
): readonly Part[] => {
  const before = useRef(parts);
  if (!isHeld) before.current = parts;
  if (!isHeld) return parts;
  const here = new Set(parts.map(keyOf));
  return [...parts, ...before.current.filter(part => !here.has(keyOf(part)))];
};

/** Writes shown while a hand moves are those of the kept drill; this ends them, kept or not. */
export const letGo = ({ hand, onHold, onSay }: ScoreHand, isKept: boolean): void => {
  if (isKept) hand.letGo();
  else hand.putBack();
  onHold(false);
  onSay('');
};

/** The rep as it is now, for a hand that moves while it is played again and again: only the events are read. */
export const runAtStart = (run: Run): Run => ({ ...run, events: [...run.events] });

/** The stave nearest to a height of the drawing. */
export const staveNear = (
  layout: ScoreLayout,
  y: number,
): { readonly spot: SpotId; readonly index: number } | null => {
  const near = layout.staves
    .map(({ spot, zeroY, pitchPx }, index) => ({ spot, index, awayPx: Math.abs(zeroY - pitchPx / 2 - y) }))
    .sort((one, other) => one.awayPx - other.awayPx)[0];
  return near ?? null;
};
