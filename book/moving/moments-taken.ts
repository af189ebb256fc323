import type { Follow, Game, Moment, Opinion } from '../documents/game.ts';

/** What a file adds to a game. Ids are kept, so the same file twice adds nothing. */
export interface MomentsTaken {
  readonly moments: Readonly<Record<string, Moment>>;
  readonly follows: Readonly<Record<string, Follow>>;
  readonly opinions: Readonly<Record<string, Opinion>>;
  /** Moments of the file that the game has already; they are left as they are. */
  readonly alreadyCount: number;
  /** Moments after the end of their film; they are left out. */
  readonly outsideCount: number;
  /** Words for skaters and units that the team does not have: their moments came in without. */
  readonly unknown: readonly string[];
}

/** The frames of a film that is open, for times that were rounded on the way. */
export interface FilmFrames {
  readonly frameCount: number;
  readonly endS: number;
  readonly timeOf: (frameIndex: number) => number;
  readonly frameAt: (timeS: number) => number;
}

/** A moment as it was read, before it is known whether the game has it. */
export interface ReadMoment {
  readonly id: string;
  readonly moment: Moment;
  readonly follows: readonly (readonly [id: string, follow: Follow])[];
  readonly isOutside: boolean;
  readonly unknown?: readonly string[];
}

/** A step that came of a moment. Its id is made of what it says, so that it is the same whenever it comes in. */
export const followRead = (
  moment: string,
  step: Follow['step'],
  filmTimeS: number,
  frameIndex: number,
  frames: FilmFrames | undefined,
): readonly [string, Follow] => {
  const exactS = frames?.timeOf(frameIndex) ?? filmTimeS;
  return [
    `${moment.slice(0, 40)}-${step}-${frameIndex}`,
    {
      moment: moment as Follow['moment'],
      step,
      frameIndex,
      filmTimeS: Math.abs(exactS - filmTimeS) <= ROUNDED_S ? exactS : filmTimeS,
    },
  ];
};

/** Half a millisecond, and what binary figures add to it. */
export const ROUNDED_S = 0.000_501;

export function takenOf(game: Game, read: readonly ReadMoment[]): MomentsTaken {
  const isHere = ({ id }: ReadMoment) => game.moments[id as keyof Game['moments']] !== undefined;
  const fresh = read.filter(one => !isHere(one) && !one.isOutside);
  return {
    moments: Object.fromEntries(fresh.map(({ id, moment }) => [id, moment])),
    follows: Object.fromEntries(fresh.flatMap(({ follows }) => follows)),
    opinions: {},
    alreadyCount: read.filter(isHere).length,
    outsideCount: read.filter(one => !isHere(one) && one.isOutside).length,
    unknown: [...new Set(fresh.flatMap(({ unknown = [] }) => unknown))],
  };
}
