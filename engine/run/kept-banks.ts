import type { BankPass } from '../pass/pass-parts.ts';
import type { Boards } from '../rink/boards.ts';
import type { IcePoint } from '../units/points.ts';
import { type Foreseen, isSameForeseen } from './foresee.ts';
import type { PassDeed } from './pass-aim.ts';

/** Everything that the passes off the boards to one receiver depend on. */
export interface BankAsked {
  readonly boards: Boards;
  readonly act: PassDeed;
  readonly fromM: IcePoint;
  readonly nowS: number;
  readonly foreseen: Foreseen;
}

interface Kept {
  readonly asked: BankAsked;
  /** By bounces, as far as it was asked for. */
  readonly passes: Map<1 | 2, readonly BankPass[]>;
}

const keptBanks = new WeakMap<PassDeed, Kept>();

/**
 * The passes as they were found before for the same act (the same immutable object) when everything else is the same to the
 * last bit, else found now: so the answer never depends on what is kept. What is kept goes with the act.
 */
export const keptOrFound = (
  asked: BankAsked,
  bounceCount: 1 | 2,
  find: () => readonly BankPass[],
): readonly BankPass[] => {
  let kept = keptBanks.get(asked.act);
  if (!kept || !isSame(kept.asked, asked)) {
    kept = { asked, passes: new Map() };
    keptBanks.set(asked.act, kept);
  }
  const before = kept.passes.get(bounceCount);
  if (before) return before;
  const passes = find();
  kept.passes.set(bounceCount, passes);
  return passes;
};

const isSame = (a: BankAsked, b: BankAsked): boolean =>
  a.boards === b.boards &&
  a.act.speedMps === b.act.speedMps &&
  a.fromM.xM === b.fromM.xM &&
  a.fromM.yM === b.fromM.yM &&
  a.nowS === b.nowS &&
  isSameForeseen(a.foreseen, b.foreseen);
