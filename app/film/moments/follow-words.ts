import type { Follow } from '@icewright/book';

/** What can come of a moment, in the order in which it usually does, with its key while a moment is chosen. */
export const FOLLOW_STEPS: readonly { readonly step: Follow['step']; readonly said: string }[] = [
  { step: 'lost', said: 'lost' },
  { step: 'hunted', said: 'hunted' },
  { step: 'regained', said: 'won back' },
  { step: 'transition', said: 'transition' },
  { step: 'chanceForUs', said: 'chance for us' },
  { step: 'chanceForThem', said: 'chance for them' },
  { step: 'whistle', said: 'whistle' },
];

export const followSaid = (step: Follow['step']): string => FOLLOW_STEPS.find(one => one.step === step)!.said;
