import { judgeStandard, type Standard } from '@icewright/engine';
import type { Chance } from './chance.ts';

/** How the freezes of a habit would be judged at one limit, of those that the standard can measure. */
export interface AtLimit {
  readonly limitM: number;
  readonly done: number;
  readonly cannotTell: number;
  readonly missed: number;
}

/** The same freezes judged at every limit from 0 to `toM`, metres. Empty for a standard without a limit in metres. */
export function atLimits(
  chances: readonly Chance[],
  standard: Standard,
  toM: number,
  stepM: number,
): readonly AtLimit[] {
  if (standard.kind === 'numbers') return [];
  const scenes = chances.flatMap(({ measured, moment }) =>
    measured?.judgement.reading === undefined || moment.verdict === 'cannotSee' ? [] : [measured.scene],
  );
  const count = Math.round(toM / stepM);
  return Array.from({ length: count + 1 }, (_, index) => {
    const limitM = index * stepM;
    const answers = scenes.map(scene => judgeStandard(scene, { ...standard, withinM: limitM }).answer);
    const of = (answer: string) => answers.filter(one => one === answer).length;
    return { limitM, done: of('yes'), cannotTell: of('cannotTell'), missed: of('no') };
  });
}
