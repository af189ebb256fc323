import { type Drill, type DrillAct, findRankBetween } from '@icewright/book';
import { type ActId, type Cue, levelOf, type Run, type SpotId } from '@icewright/engine';
import { actTimes } from '@icewright/picture';
import { cueSaid, roleOf } from '../act-words.ts';
import { actsOf, newActId } from '../route-writes.ts';
import type { Write } from '../write.ts';

/** An act that starts at another time: how the drill is written for it, and in words. */
export interface Retimed {
  readonly writes: readonly Write[];
  readonly said: string;
  /** When it starts then, seconds after the whistle: never before what it hangs on. */
  readonly startS: number;
}

/** Nearer than this to what it hangs on, an act starts with it and waits for nothing: a tenth is what is shown. */
const AT_ONCE_S = 0.05;
const LONGEST_S = 120;

/**
 * The plainest rule: what hangs on the whistle, or on the act before, is written as so many seconds after it. What hangs on
 * another cue keeps it and waits so many seconds more, as a hold before it. Null when the act was not played.
 */
export const retimed = (
  drill: Drill,
  run: Run,
  spotId: SpotId,
  actId: ActId,
  toS: number,
  holdId: ActId = newActId(),
): Retimed | null => {
  const spot = drill.spots[spotId];
  const times = actTimes(run, spotId, actId);
  if (spot === undefined || times === null) return null;
  const acts = actsOf(spot);
  const index = acts.findIndex(([id]) => id === actId);
  const act = acts[index]?.[1];
  if (act === undefined) return null;
  const before = acts[index - 1];
  const asked = { drill, run, spotId, actId, act, toS: tenth(toS), fromS: times.startS };
  if (before?.[1].kind === 'hold' && act.cue === undefined) return holdChanged(asked, before[0], before[1]);
  if (act.cue === undefined || act.cue.on === 'after' || act.cue.on === 'whistle')
    return afterBefore(asked, before?.[0]);
  return holdAdded(asked, act.cue, before?.[1].rank, holdId);
};

interface Asked {
  readonly drill: Drill;
  readonly run: Run;
  readonly spotId: SpotId;
  readonly actId: ActId;
  readonly act: DrillAct;
  readonly toS: number;
  readonly fromS: number;
}

/** Seconds after the act before, or after the whistle. */
const afterBefore = (asked: Asked, beforeId: ActId | undefined): Retimed => {
  const { spotId, actId, act, toS } = asked;
  const freeS = beforeId === undefined ? 0 : (actTimes(asked.run, spotId, beforeId)?.endS ?? 0);
  const seconds = tenth(between(toS - freeS));
  const path = ['spots', spotId, 'acts', actId, 'cue'];
  const who = roleOf(asked.drill, spotId);
  if (beforeId !== undefined) {
    const cue: Cue | undefined = seconds < AT_ONCE_S ? undefined : { on: 'after', seconds };
    const said = cue ? `${who} waits ${seconds} s after the act before` : `${who} goes on at once`;
    return { writes: [{ path, value: cue }], said, startS: freeS + seconds };
  }
  // The whistle is answered one reaction after it: what is asked sooner is the whistle itself.
  const answersS =
    act.cue?.on === 'whistle' ? asked.fromS : levelOf(asked.drill.level).model.expectedReactionS;
  const isWhistle = toS <= answersS + AT_ONCE_S;
  return {
    writes: [{ path, value: isWhistle ? { on: 'whistle' } : { on: 'after', seconds } }],
    said: isWhistle ? `${who} starts on the whistle` : `${who} starts ${seconds} s after the whistle`,
    startS: isWhistle ? answersS : seconds,
  };
};

/** Keeps its cue, and waits so long after it. */
const holdAdded = (asked: Asked, cue: Cue, beforeRank: number | undefined, holdId: ActId): Retimed => {
  const { drill, spotId, actId, act, fromS, toS } = asked;
  const cameS = fromS - slowerToRead(drill, act);
  const seconds = tenth(between(toS - cameS));
  const who = roleOf(drill, spotId);
  if (seconds < AT_ONCE_S || toS <= fromS) {
    return { writes: [], said: `${who} starts ${cueSaid(drill, cue)}, no sooner`, startS: fromS };
  }
  const rank = findRankBetween(beforeRank, act.rank) ?? act.rank;
  return {
    writes: [
      { path: ['spots', spotId, 'acts', holdId], value: { rank, cue, kind: 'hold', seconds } },
      { path: ['spots', spotId, 'acts', actId, 'cue'], value: undefined },
    ],
    said: `${who} waits ${seconds} s ${moreThan(cueSaid(drill, cue))}`,
    startS: cameS + seconds,
  };
};

/** A hold before it gets longer or shorter; of no length it goes, and gives its cue back. */
const holdChanged = (asked: Asked, holdId: ActId, hold: Extract<DrillAct, { kind: 'hold' }>): Retimed => {
  const { drill, spotId, actId, toS } = asked;
  const startS = actTimes(asked.run, spotId, holdId)?.startS ?? asked.fromS;
  const seconds = tenth(between(toS - startS));
  const who = roleOf(drill, spotId);
  const said = cueSaid(drill, hold.cue);
  if (seconds < AT_ONCE_S) {
    return {
      writes: [
        { path: ['spots', spotId, 'acts', holdId], value: undefined },
        { path: ['spots', spotId, 'acts', actId, 'cue'], value: hold.cue },
      ],
      said: `${who} starts ${said}`,
      startS: startS + slowerToRead(drill, asked.act),
    };
  }
  return {
    writes: [{ path: ['spots', spotId, 'acts', holdId, 'seconds'], value: seconds }],
    said: `${who} waits ${seconds} s ${moreThan(said)}`,
    startS: startS + seconds,
  };
};

/** A reactive act takes longer to answer a cue than a hold does: it is read first. */
const slowerToRead = (drill: Drill, act: DrillAct): number => {
  const { model } = levelOf(drill.level);
  const isRead = act.kind === 'chase' || act.kind === 'steal' || act.kind === 'gap' || act.kind === 'screen';
  return isRead ? model.reactionS - model.expectedReactionS : 0;
};

/** "when X1 receives" → "once X1 has it" would be another word for the same: the cue keeps its own. */
const moreThan = (said: string): string => (said === 'at once' ? 'first' : `more, ${said}`);

const tenth = (seconds: number): number => Math.round(seconds * 10) / 10;

const between = (seconds: number): number => Math.min(LONGEST_S, Math.max(0, seconds));
