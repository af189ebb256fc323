import type { FilmFrames, Game, Moment, MomentsTaken, TableMoment, Team, VttCue } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { edit, endStep } from '../../shell/book.ts';
import { type FrameIndex, frameAtTime, frameBeginningAt, timeOfFrame } from '../frame-index.ts';

/** Where moments from a file go: a part of a game, with its frames. */
export interface TakeInto {
  readonly gameId: string;
  readonly game: Game;
  readonly team: Team;
  readonly film: Id<'film'>;
  readonly index: FrameIndex;
  /** A long film is looked through so far; what lies beyond has no frame yet. Undefined when all of it is. */
  readonly knownToS: number | undefined;
}

export interface Took {
  readonly newIds: readonly string[];
  readonly alreadyCount: number;
  /** After the end of the film. */
  readonly outsideCount: number;
  /** Skaters and units of the file that this team does not have. */
  readonly unknown: readonly string[];
}

/** The frames of the open film, for times that a file rounded. A long film's index may still grow: its end is known. */
export function framesOf({ game, film, index }: TakeInto): FilmFrames {
  const part = game.films[film];
  return {
    frameCount: Math.max(index.frameCount, part?.frameCount ?? 0),
    endS: Math.max(index.endS, part?.durationS ?? 0),
    timeOf: frameIndex => timeOfFrame(index, frameIndex),
    frameAt: timeS => {
      const beginning = frameBeginningAt(index, timeS);
      return beginning < 0 ? frameAtTime(index, timeS) : beginning;
    },
  };
}

/** Writes what a file of moments adds, as one step of undo. */
export function takeFile({ gameId }: TakeInto, taken: MomentsTaken): Took {
  const change = edit(gameId);
  endStep(gameId);
  change.transact(() => {
    for (const list of ['moments', 'follows', 'opinions'] as const)
      for (const [id, one] of Object.entries(taken[list])) change.set([list, id], one);
  });
  endStep(gameId);
  return {
    newIds: Object.keys(taken.moments),
    alreadyCount: taken.alreadyCount,
    outsideCount: taken.outsideCount,
    unknown: taken.unknown,
  };
}

/** Writes the lines of a table that are not here yet; those that are stay as somebody may have changed them. */
export function takeTable(into: TakeInto, moments: readonly TableMoment[], by: string): Took {
  const byNumber = new Map(Object.entries(into.team.skaters).map(([id, { number }]) => [number, id]));
  return take(
    into,
    moments.map(({ id, skaterNumber, filmTimeS, ...one }) => {
      const skater = skaterNumber === undefined ? undefined : byNumber.get(skaterNumber);
      return [id, filmTimeS, { ...one, by, ...(skater ? { skater: skater as Id<'skater'> } : {}) }];
    }),
  );
}

/** Cues become moments of one habit, with their stretch and words. */
export function takeCues(
  into: TakeInto,
  cues: readonly VttCue[],
  meaning: Pick<Moment, 'habit' | 'verdict'>,
  by: string,
): Took {
  return take(
    into,
    cues.map(({ fromS, toS, words }) => [
      `cue-${Math.round(fromS * 1000)}-${Math.round(toS * 1000)}`,
      fromS,
      { ...meaning, note: words.replaceAll('\n', ' ').slice(0, 400), by, fromS, toS },
    ]),
  );
}

type Said = Pick<Moment, 'habit' | 'verdict' | 'note' | 'by'> & Partial<Moment>;

function take(
  { gameId, game, team, film, index }: TakeInto,
  made: readonly (readonly [id: string, filmTimeS: number, said: Said])[],
): Took {
  const isHere = (id: string) => game.moments[id as Id<'moment'>] !== undefined;
  const inside = made.filter(([, filmTimeS]) => filmTimeS <= index.endS);
  const fresh = new Map(inside.filter(([id]) => !isHere(id)).map(one => [one[0], one]));
  const change = edit(gameId);
  endStep(gameId);
  change.transact(() => {
    for (const [id, filmTimeS, said] of fresh.values()) {
      change.set(['moments', id], {
        film,
        filmTimeS,
        frameIndex: frameAtTime(index, filmTimeS),
        costGoals: said.verdict === 'missed' ? (team.habits[said.habit]?.costGoals ?? 0) : 0,
        taggedAt: new Date().toISOString(),
        ...said,
      } satisfies Moment);
    }
  });
  endStep(gameId);
  return {
    newIds: [...fresh.keys()],
    alreadyCount: inside.filter(([id]) => isHere(id)).length,
    outsideCount: made.length - inside.length,
    unknown: [],
  };
}
