import type { Game } from '@icewright/book';
import { type Dispatch, type SetStateAction, useEffect, useState } from 'react';
import { momentOfFreeze } from './moment-of-freeze.ts';

/** The moment that is chosen in the list. It follows the freeze that is opened: the one that its picture is of, or none. */
export function useChosenMoment(
  game: Game,
  freezeId: string | undefined,
  atFirst: string | undefined,
): [string | undefined, Dispatch<SetStateAction<string | undefined>>] {
  const [momentId, setMomentId] = useState(atFirst);
  // biome-ignore lint/correctness/useExhaustiveDependencies: when another freeze is opened, not when the game changes
  useEffect(() => {
    if (freezeId !== undefined) setMomentId(before => momentOfFreeze(game, freezeId, before));
  }, [freezeId]);
  return [momentId, setMomentId];
}
