import type { Drill, Team } from '@icewright/book';
import type { Finding, SpotId } from '@icewright/engine';
import { useMemo, useRef, useState } from 'react';
import type { Chosen } from './chosen.ts';
import { leadOf, NOTHING, type Selection, selectionOf, stillThere } from './edit/selection.ts';
import { useChosenFlag } from './findings/use-chosen-flag.ts';
import { useFlow } from './flow/use-flow.ts';
import { useMany } from './many/use-many.ts';
import { usePeople } from './people/use-people.ts';
import { useFollow } from './use-follow.ts';
import { type Hand, useHand } from './use-hand.ts';
import { useLagging } from './use-lagging.ts';
import { usePlayback } from './use-playback.ts';
import { type Computed, hasPuckAtEnd, useRun } from './use-run.ts';
import { useSteady } from './use-steady.ts';

/** The drill in the hand and its rep: one state of both. */
export interface Seen extends Computed {
  readonly hand: Hand;
}

/** A rep as it is shown: with everything that was found, in the order of the flags. */
export interface ShownRep extends Seen {
  readonly findings: readonly Finding[];
}

/** Everything one drill's page knows: what is in the hand, how it is played, what is chosen of it. */
export function useStudio(id: string, kept: Drill, team: Team) {
  const hand = useHand(id, kept);
  const people = usePeople(hand.drill, team);
  const { rink, run: rep, issues, isStale } = useRun(hand.drill, people);
  const now = useMemo(
    (): Seen => ({ hand, rink, run: rep, issues, isStale }),
    [hand, rink, rep, issues, isStale],
  );
  // What a hand moves is drawn in the same picture where it moves; all that stands around waits until the hand is still.
  const moves = hand.isHolding;
  const seen = useLagging(now, moves);
  // One rep of it, with what is wrong with many of them after what is wrong with one.
  const flowing = useFlow(seen.hand.drill, rink, seen.run, team);
  const { run, findings, blockFindings } = flowing;
  const atRest = useMemo((): ShownRep => ({ ...seen, run, findings }), [seen, run, findings]);
  // The score, the findings and the rep's events follow the hand. What is wrong with the block stays as it was.
  const moving = useMemo((): ShownRep => {
    const all = [...(now.run?.findings ?? []), ...blockFindings];
    return { ...now, run: now.run && { ...now.run, findings: all }, findings: all };
  }, [now, blockFindings]);
  const follow = useFollow(moving, moves);
  const playback = usePlayback(run?.durationS ?? 0);
  const many = useMany(seen.hand, run !== null && seen.issues.length === 0, team, people, seen !== now);

  // One selection for the ice and the score: what is picked in one is seen in the other.
  const [picked, select] = useState<Selection>(NOTHING);
  const selection = useMemo(() => stillThere(picked, hand.drill), [picked, hand.drill]);
  const { spotId, actId } = leadOf(selection);
  const chosen = useMemo((): Chosen => ({ spotId, actId }), [spotId, actId]);
  const [said, say] = useState('');
  /** What was said belongs to what was selected then. */
  const pick = useSteady((next: Selection) => {
    say('');
    select(next);
  });
  const choose = useSteady((one: Chosen) => pick(selectionOf(one)));
  const look = useSteady((finding: Finding) => {
    playback.look(finding.timeS);
    const [first] = finding.spots;
    if (first !== undefined) choose({ spotId: first, actId: finding.act ?? null });
  });
  const work = useRef<HTMLDivElement>(null);
  const flag = useChosenFlag(work, findings, look);
  const onLook = useSteady((finding: Finding, number: number) => {
    flag.choose(number);
    look(finding);
  });
  return {
    hand,
    rink,
    /** The rep of what is in the hand now. */
    rep,
    /** The drill and its rep as everything around the ice shows them. */
    seen,
    run,
    findings,
    /** The flags on the ice, as the hand moves. */
    flags: moves ? moving.findings : findings,
    atRest,
    /** The rep as the score shows it at once: a hand that works in the score sees it there first. */
    atScore: moves && hand.shown === null ? moving : atRest,
    follow,
    flowing,
    playback,
    many,
    people,
    selection,
    chosen,
    select,
    pick,
    choose,
    said,
    say,
    onLook,
    work,
    flag,
    ownsPuckAtEnd: (spot: SpotId): boolean => hasPuckAtEnd(rep, spot),
  };
}

export type StudioState = ReturnType<typeof useStudio>;
