import type { VARIANTS } from '@icewright/book';

/** What a version is for, as a word under its drill. */
export const VARIANT_SAID: Readonly<Record<(typeof VARIANTS)[number], string>> = {
  simpler: 'simpler',
  harder: 'harder',
  halfIce: 'half ice',
  fewer: 'with fewer',
};
