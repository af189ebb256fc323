import type { Game, Moment } from '@icewright/book';
import { cohenKappa, isNone, type Kappa } from '@icewright/engine';
import type { ListedMoment } from './filter-moments.ts';

export interface Agreement {
  readonly bothCount: number;
  readonly sameCount: number;
  /** Null with nothing to compare, or when both always said the same one word. */
  readonly kappa: Kappa | null;
  readonly differ: readonly {
    readonly id: string;
    readonly moment: Moment;
    readonly second: Moment['verdict'];
    readonly by: string;
  }[];
}

const WORDS: readonly Moment['verdict'][] = ['done', 'missed', 'cannotSee'];

/** How far the second pair of eyes agrees with the first, over the moments that both have judged. */
export function agreementOf(moments: readonly ListedMoment[], opinions: Game['opinions']): Agreement {
  const byMoment = new Map(moments);
  const table = WORDS.map(() => WORDS.map(() => 0));
  const differ: Agreement['differ'][number][] = [];
  let bothCount = 0;
  for (const { moment: id, verdict: second, by } of Object.values(opinions)) {
    const moment = byMoment.get(id);
    if (moment === undefined) continue;
    bothCount += 1;
    table[WORDS.indexOf(moment.verdict)]![WORDS.indexOf(second)]! += 1;
    if (moment.verdict !== second) differ.push({ id, moment, second, by });
  }
  const kappa = cohenKappa(table);
  return {
    bothCount,
    sameCount: bothCount - differ.length,
    kappa: isNone(kappa) ? null : kappa,
    differ: differ.sort((a, b) => a.moment.filmTimeS - b.moment.filmTimeS),
  };
}

/** Moments that this person has not judged a second time, and did not mark in the first place. */
export const stillToJudge = (
  moments: readonly ListedMoment[],
  opinions: Game['opinions'],
  by: string,
): readonly ListedMoment[] => {
  const judged = new Set<string>(
    Object.values(opinions)
      .filter(one => one.by === by)
      .map(one => one.moment),
  );
  return moments.filter(([id, one]) => !judged.has(id) && one.by !== by);
};
