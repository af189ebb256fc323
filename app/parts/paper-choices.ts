import type { Paper } from '@icewright/picture';

export const PAPER_CHOICES: readonly { readonly value: Paper; readonly said: string }[] = [
  { value: 'a4', said: 'A4' },
  { value: 'letter', said: 'letter' },
];
