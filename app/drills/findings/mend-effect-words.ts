import { changesDrill, type MendEffect, type RateInterval } from '@icewright/engine';
import { percentSaid } from '../../parts/figures.ts';

/** What a mend does to what is wanted, in parts: the figure among them can be asked why. */
export interface EffectWords {
  /** Set before all when it is no longer the same drill. */
  readonly warning: string;
  readonly before: string;
  /** Empty when no rep comes to the question. */
  readonly figure: string;
  readonly after: string;
}

/** `want`: what is wanted, as a sentence; `isDone`: it has been done. */
export function effectWords(effect: MendEffect, want: string, isDone: boolean): EffectWords {
  const isOther = changesDrill(effect);
  const warning = !isOther ? '' : isDone ? 'That changed the drill: ' : 'It changes the drill: ';
  const begins = isOther ? want : capital(want);
  const { before, after } = effect;
  const was = `, ${isDone ? 'was' : 'now'} in ${before === null ? 'none' : percentSaid(before.rateRatio)}.`;
  if (after === null) return { warning, before: `${begins} in no rep`, figure: '', after: was };
  return {
    warning,
    before: `${begins} in `,
    figure: percentSaid(after.rateRatio),
    after: ` of reps that come to it${was}`,
  };
}

/** The same in one line, its interval in it: it is read out. */
export function effectSaid(effect: MendEffect, want: string, isDone: boolean): string {
  const { warning, before, figure, after } = effectWords(effect, want, isDone);
  const interval = effect.after === null ? '' : ` (${intervalSaid(effect.after)})`;
  return `${warning}${before}${figure}${figure === '' ? '' : interval}${after}`;
}

export const intervalSaid = ({ lowerRatio, upperRatio }: RateInterval): string =>
  `95 % interval ${Math.round(lowerRatio * 100)} to ${Math.round(upperRatio * 100)}`;

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
