import type { IcePoint, Rink, SpotId } from '@icewright/engine';
import type { Hand } from '../use-hand.ts';
import { afterWrites, type Write } from '../write.ts';
import { putOnClipboard, takeFromClipboard } from './clipboard.ts';
import { copied } from './copied.ts';
import { halfTurned, mirrored } from './laid-elsewhere.ts';
import { pasted } from './pasted.ts';
import { movedBy } from './place-map.ts';
import { type Refusal, refusalOf } from './refusal.ts';
import { removed } from './removed.ts';
import { routesJoined } from './route-cut.ts';
import { everything, leadOf, NOTHING, type Selection, spotsPicked } from './selection.ts';
import { focusBeyond, focusSoon } from './things-in-focus.ts';
import { duplicatedToOtherEnd } from './to-other-end.ts';

/** What can be done with what is selected, by press or by key: each is one step of undo. */
export interface Arrange {
  readonly mirror: (over: 'along' | 'across') => void;
  readonly halfTurn: () => void;
  readonly toOtherEnd: () => void;
  readonly copy: () => void;
  readonly cut: () => void;
  readonly paste: () => void;
  readonly takeOff: () => void;
  readonly all: () => void;
  readonly join: () => void;
  /** Why the open act and the next one cannot be one; null when they can. */
  readonly joinNotNow: string | null;
}

export function useArrange(of: {
  readonly hand: Hand;
  readonly rink: Rink;
  readonly selection: Selection;
  readonly onSelect: (selection: Selection) => void;
  readonly onSaid: (said: string) => void;
}): Arrange {
  const { hand, rink, selection, onSelect, onSaid } = of;
  const drill = hand.kept;
  const { spotId, actId } = leadOf(selection);
  const isEmpty = selection.length === 0;

  /** Keeps the writes unless somebody would stand where nobody can. */
  const keepOrSay = (writes: readonly Write[], spots: ReadonlySet<SpotId>, said = ''): boolean => {
    const refusal = refusalAt(writes, spots);
    onSaid(refusal === null ? said : `Not done: ${refusal.said}.`);
    if (refusal === null) hand.keep(writes);
    return refusal === null;
  };
  const refusalAt = (writes: readonly Write[], spots: ReadonlySet<SpotId>): Refusal | null =>
    refusalOf(afterWrites(drill, writes), rink, spots, CENTRE_M);
  /** What becomes of ours and theirs where the ends change places. */
  const turned = (): string => {
    const spots = [...spotsPicked(selection)].flatMap(id => drill.spots[id] ?? []);
    return spots.some(({ kind }) => kind === 'skater') ? STAY_SAID : '';
  };
  const lay = (writes: readonly Write[], said: string) => {
    if (!isEmpty) keepOrSay(writes, spotsPicked(selection), said);
  };
  const selectNew = (made: Selection) => {
    onSelect(made);
    focusSoon(made);
  };
  const joined = spotId === null || actId === null ? null : routesJoined(drill, spotId, actId);

  return {
    mirror: over => lay(mirrored(drill, selection, over), over === 'across' ? turned() : ''),
    halfTurn: () => lay(halfTurned(drill, selection), turned()),
    toOtherEnd: () => {
      if (isEmpty) return;
      const made = duplicatedToOtherEnd(drill, selection);
      const isDone = keepOrSay(
        made.writes,
        new Set(made.spotIds.values()),
        [turned(), ...made.said].filter(Boolean).join(' '),
      );
      if (isDone && made.writes.length > 0) selectNew(made.selection);
    },
    copy: () => {
      if (isEmpty) return;
      putOnClipboard(copied(drill, selection));
      onSaid('Copied.');
    },
    cut: () => {
      if (isEmpty) return;
      putOnClipboard(copied(drill, selection));
      focusBeyond(selection);
      hand.keep(removed(drill, selection));
      onSaid('Cut out; paste puts it back.');
    },
    paste: async () => {
      const read = await takeFromClipboard();
      if (read.kind === 'refused') return onSaid(read.said);
      for (const byM of BESIDE_M) {
        const made = pasted(drill, read.part, movedBy(byM), spotId);
        const spots = new Set(made.spotIds.values());
        if (refusalAt(made.writes, spots) !== null) continue;
        hand.keep(made.writes);
        if (made.selection.length > 0) selectNew(made.selection);
        return onSaid(made.said.join(' '));
      }
      onSaid('There is no room on the ice for what was copied.');
    },
    takeOff: () => {
      if (isEmpty) return;
      focusBeyond(selection);
      hand.keep(removed(drill, selection));
      onSelect(NOTHING);
    },
    all: () => onSelect(everything(drill)),
    join: () => {
      if (joined === null) return;
      if ('writes' in joined) hand.keep(joined.writes);
      else onSaid(`Not joined: ${joined.notNow}.`);
    },
    joinNotNow: joined === null ? 'choose a route first' : 'notNow' in joined ? joined.notNow : null,
  };
}

const CENTRE_M: IcePoint = { xM: 0, yM: 0 };
const STAY_SAID =
  'Ours stay ours, and play towards the other end now; gaps and lanes are kept before the other net.';

/** Where a pasted part is tried: where it was copied, then beside it. */
const BESIDE_M: readonly IcePoint[] = [0, 1, 2, 3, 4, 6, 8].flatMap(step =>
  step === 0
    ? [CENTRE_M]
    : [
        { xM: 1.5 * step, yM: -1.5 * step },
        { xM: -1.5 * step, yM: 1.5 * step },
        { xM: 1.5 * step, yM: 1.5 * step },
        { xM: -1.5 * step, yM: -1.5 * step },
      ],
);
