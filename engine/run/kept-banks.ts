import type { BankSearch } from '../pass/bank-pass.ts';
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

interface Searched extends Pick<BankAsked, 'boards' | 'fromM'> {
  readonly speedMps: number;
  readonly byBounces: Map<1 | 2, BankSearch>;
}

const searched = new WeakMap<PassDeed, Searched>();

/**
 * The search for passes that leave from there, with all that it knows of the boards already, when it was begun before for the same act
 * from the same place at the same speed: in many reps and in a drag the passer mostly stands where he stood, and the receiver is elsewhere.
 */
export const keptOrBegun = (
  { boards, act, fromM }: BankAsked,
  bounceCount: 1 | 2,
  begin: () => BankSearch,
): BankSearch => {
  const { speedMps } = act;
  let kept = searched.get(act);
  if (
    kept?.boards !== boards ||
    kept.speedMps !== speedMps ||
    kept.fromM.xM !== fromM.xM ||
    kept.fromM.yM !== fromM.yM
  ) {
    kept = { boards, fromM, speedMps, byBounces: new Map() };
    searched.set(act, kept);
  }
  const before = kept.byBounces.get(bounceCount);
  if (before) return before;
  const search = begin();
  kept.byBounces.set(bounceCount, search);
  return search;
};

const isSame = (a: BankAsked, b: BankAsked): boolean =>
  a.boards === b.boards &&
  a.act.speedMps === b.act.speedMps &&
  a.fromM.xM === b.fromM.xM &&
  a.fromM.yM === b.fromM.yM &&
  a.nowS === b.nowS &&
  isSameForeseen(a.foreseen, b.foreseen);
