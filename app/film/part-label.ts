import type { Game } from '@icewright/book';
import { isLive } from './live/live-part.ts';

/** What a film that is added is called: the first is the whole game, the others a part or a camera by a free number. */
export function labelFor(films: Game['films'], as: 'part' | 'camera'): string {
  const parts = Object.values(films).filter(part => !isLive(part));
  if (parts.length === 0) return 'whole game';
  const taken = new Set(parts.map(({ label }) => label));
  let number = 2;
  while (taken.has(`${as} ${number}`)) number += 1;
  return `${as} ${number}`;
}

/** Whether another film of the game is called so already; spaces and capitals aside. */
export const isTaken = (films: Game['films'], partId: string, label: string): boolean =>
  Object.entries(films).some(([id, one]) => id !== partId && same(one.label) === same(label));

const same = (label: string): string => label.trim().toLowerCase();
