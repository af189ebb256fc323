import type { Follow, Game, Moment } from '../documents/game.ts';
import {
  figure,
  habitCalled,
  type MomentTeam,
  SEEN,
  STEP_SAID,
  skaterCalled,
  skaterNamed,
  stepCalled,
  THEIRS,
  unitCalled,
  unitNamed,
  verdictCalled,
} from './moment-words.ts';
import { followsOf, type MomentsToExport, momentOf } from './moments-out.ts';
import { type FilmFrames, followRead, type MomentsTaken, takenOf } from './moments-taken.ts';
import { type VttCue, vttOf } from './web-vtt.ts';

const BETWEEN = ' · ';
const THEN = 'Then: ';

/**
 * WebVTT of the moments, each over its stretch, or over a second where none is kept. One film: times are its own. Each cue
 * says habit and verdict, who and how things stood, what came, and the coach's words, a line each; its name says the frame.
 */
export const momentsVtt = ({ game, team, ids }: MomentsToExport): string => {
  const came = followsOf(game);
  return vttOf(
    ids
      .map(id => [id, momentOf(game, id)] as const)
      .map(([id, one]) => ({
        name: `moment ${id}, frame ${one.frameIndex}${one.fromS === undefined || one.toS === undefined ? ' alone' : ''}`,
        fromS: one.fromS ?? one.filmTimeS,
        toS: one.toS ?? one.filmTimeS + 1,
        words: [
          `${team.habits[one.habit]?.title ?? 'habit'}: ${SEEN[one.verdict]}`,
          stoodWords(team, one),
          cameWords(one, came.get(id) ?? []),
          one.note.trim() && `“${one.note.replace(/\s+/g, ' ').trim()}”`,
        ]
          .filter(Boolean)
          .join('\n'),
      }))
      .sort((a, b) => a.fromS - b.fromS),
  );
};

const stoodWords = (team: MomentTeam, one: Moment): string =>
  [
    one.ofOthers && THEIRS,
    skaterNamed(team, one),
    one.strength,
    one.period !== undefined && `period ${one.period}`,
    one.score && `${one.score.us} : ${one.score.them}`,
    one.unit && `with ${unitNamed(team, one)}`,
  ]
    .filter(Boolean)
    .join(BETWEEN);

const cameWords = (one: Moment, came: readonly Follow[]): string =>
  came.length === 0
    ? ''
    : THEN +
      came
        .map(({ step, filmTimeS }) => `${STEP_SAID[step]} ${figure(filmTimeS - one.filmTimeS, 3)} s`)
        .join('; ');

/** Where cues go: the film they are of, with its frames, and who stands for them. */
export interface CuesInto {
  readonly game: Game;
  readonly team: MomentTeam;
  readonly film: Moment['film'];
  readonly frames: FilmFrames;
  /** Signs the moments: a cue does not say who marked it. */
  readonly by: string;
  readonly taggedAt: string;
}

/**
 * Moments from cues that say, each of them, a habit of the team and what was seen; undefined when one does not, and the
 * meaning has to be asked. A cue that this program wrote is the same moment again. What a cue says beyond that is its note.
 */
export function readMomentsVtt(cues: readonly VttCue[], into: CuesInto): MomentsTaken | undefined {
  const said = cues.map(cue => sayingOf(cue, into.team));
  if (cues.length === 0 || said.some(one => one === undefined)) return undefined;
  return takenOf(
    into.game,
    cues.map((cue, i) => momentOfCue(cue, said[i]!, into)),
  );
}

interface Saying {
  readonly moment: Pick<Moment, 'habit' | 'verdict' | 'note'> & Partial<Moment>;
  readonly came: readonly { readonly step: Follow['step']; readonly sinceS: number }[];
}

function momentOfCue(cue: VttCue, { moment, came }: Saying, into: CuesInto) {
  const { frames, film, team, by, taggedAt } = into;
  const ours = OUR_NAME.exec(cue.name ?? '');
  const id = ours?.[1] ?? `cue-${Math.round(cue.fromS * 1000)}-${Math.round(cue.toS * 1000)}`;
  const frameIndex = ours ? Number(ours[2]) : frames.frameAt(cue.fromS);
  const filmTimeS = frames.timeOf(frameIndex);
  const costGoals = moment.verdict === 'missed' ? (team.habits[moment.habit]?.costGoals ?? 0) : 0;
  return {
    id,
    isOutside: cue.fromS > frames.endS || frameIndex >= frames.frameCount,
    moment: {
      film,
      filmTimeS,
      frameIndex,
      costGoals,
      by,
      taggedAt,
      ...moment,
      ...(ours?.[3] ? {} : { fromS: cue.fromS, toS: cue.toS }),
    } satisfies Moment,
    follows: came.map(({ step, sinceS }) => {
      const timeS = filmTimeS + sinceS;
      return followRead(id, step, timeS, frames.frameAt(timeS), frames);
    }),
  };
}

const OUR_NAME = /^moment (.{1,64}), frame (\d{1,9})( alone)?$/;

function sayingOf({ words }: VttCue, team: MomentTeam): Saying | undefined {
  const [first = '', ...lines] = words.split('\n');
  const at = [...first.matchAll(/: (done|missed|cannot see)(?=$|\. )/g)].find(
    found => habitCalled(team, first.slice(0, found.index)) !== undefined,
  );
  if (at === undefined) return undefined;
  const saying = {
    moment: {
      habit: habitCalled(team, first.slice(0, at.index))!,
      verdict: verdictCalled(at[1]!)!,
      ...stoodOf(lines, team),
    },
    came: cameOf(lines),
  };
  const rest = first.slice(at.index + at[0].length).replace(/^\. /, '');
  const note = [
    rest,
    ...lines.filter(line => !isStood(line, team) && cameOf([line]).length === 0).map(unquoted),
  ];
  return { ...saying, moment: { ...saying.moment, note: note.filter(Boolean).join(' ') } };
}

const isStood = (line: string, team: MomentTeam): boolean => Object.keys(stoodOf([line], team)).length > 0;

/** How things stood, from the first line all of whose parts are understood. */
function stoodOf(lines: readonly string[], team: MomentTeam): Partial<Moment> {
  for (const line of lines) {
    const parts = line.split(BETWEEN).map(part => partOf(part, team));
    if (parts.every(part => part !== undefined)) return Object.assign({}, ...parts);
  }
  return {};
}

function partOf(part: string, team: MomentTeam): Partial<Moment> | undefined {
  if (part === THEIRS) return { ofOthers: true };
  if (/^[3-6]v[3-6]$/.test(part)) return { strength: part };
  const period = /^period ([1-9])$/.exec(part);
  if (period) return { period: Number(period[1]) };
  const score = /^(\d{1,2}) : (\d{1,2})$/.exec(part);
  if (score) return { score: { us: Number(score[1]), them: Number(score[2]) } };
  const unit = part.startsWith('with ') ? unitCalled(team, part.slice('with '.length)) : undefined;
  if (unit !== undefined) return { unit };
  const skater = skaterCalled(team, part);
  return skater === undefined ? undefined : { skater };
}

function cameOf(lines: readonly string[]): Saying['came'] {
  const line = lines.find(one => one.startsWith(THEN));
  const parts = (line?.slice(THEN.length) ?? '')
    .split('; ')
    .map(part => /^(.+) (-?\d+(?:\.\d+)?) s$/.exec(part));
  const steps = parts.flatMap(part => {
    const step = part ? stepCalled(part[1]!) : undefined;
    return step === undefined ? [] : [{ step, sinceS: Number(part![2]) }];
  });
  return steps.length === parts.length ? steps : [];
}

const unquoted = (line: string): string => /^“(.*)”$/.exec(line)?.[1] ?? line;
