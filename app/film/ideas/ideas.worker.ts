import { newId } from '@icewright/book';
import {
  type End,
  type FlowSetting,
  type FreezeScene,
  type Idea,
  ideasOf,
  isNone,
  type LevelId,
  levelOf,
  type NoProblem,
  problemOf,
  type RinkChoice,
  rinkOf,
  type Standard,
} from '@icewright/engine';

/** What ideas are asked for, as it goes to the worker. */
export interface IdeasAsk {
  readonly scene: FreezeScene;
  readonly attacks: End;
  readonly standard: Standard;
  readonly rink: RinkChoice;
  readonly level: LevelId;
  readonly flow: FlowSetting;
  /** Whom the freeze names as judged. */
  readonly judgedId: string | undefined;
}

export type IdeasSaid =
  | { readonly kind: 'idea'; readonly idea: Idea }
  | { readonly kind: 'none'; readonly reason: NoProblem }
  | { readonly kind: 'done' };

const SEED = 11;

/** Plays ideas one after the other; whoever no longer wants them ends the worker. */
addEventListener('message', ({ data }: MessageEvent<IdeasAsk>) => {
  const rink = rinkOf(data.rink);
  const problem = problemOf(data.scene, data.attacks, data.standard, rink, data.judgedId);
  const say = (said: IdeasSaid) => postMessage(said);
  if (isNone(problem)) {
    say({ kind: 'none', reason: problem.reason });
    return;
  }
  const setting = { rink, level: levelOf(data.level), seed: SEED, flow: data.flow };
  for (const idea of ideasOf(problem, setting, newId)) say({ kind: 'idea', idea });
  say({ kind: 'done' });
});
