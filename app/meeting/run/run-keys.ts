import type { AskedPress } from './run-channel.ts';

/**
 * Keys that take a meeting on: those of the keyboard, and those that clickers send, which are the page keys, B and the
 * full stop (common practice, no source).
 */
export const RUN_KEYS: readonly {
  readonly keys: string;
  readonly says: string;
  readonly does: AskedPress;
}[] = [
  { keys: 'PageDown', says: 'on', does: 'on' },
  { keys: 'ArrowRight', says: 'on', does: 'on' },
  { keys: 'ArrowDown', says: 'on', does: 'on' },
  { keys: 'Space', says: 'on', does: 'on' },
  { keys: 'Enter', says: 'on', does: 'on' },
  { keys: 'PageUp', says: 'back', does: 'back' },
  { keys: 'ArrowLeft', says: 'back', does: 'back' },
  { keys: 'ArrowUp', says: 'back', does: 'back' },
  { keys: 'n', says: 'skip to the next moment', does: 'skip' },
  { keys: 'b', says: 'black, and the picture again', does: 'black' },
  { keys: '.', says: 'black, and the picture again', does: 'black' },
  { keys: 'k', says: 'hold the film, and let it run', does: 'hold' },
];
