import type { Game } from '@icewright/book';
import { edit, endStep } from '../../shell/book.ts';

/** Takes moments out with what came of them and what a second pair of eyes said, as one step of undo. */
export function removeMoments(gameId: string, game: Game, ids: readonly string[]): void {
  const gone = new Set(ids);
  const change = edit(gameId);
  endStep(gameId);
  change.transact(() => {
    for (const list of ['follows', 'opinions'] as const)
      for (const [id, { moment }] of Object.entries(game[list]))
        if (gone.has(moment)) change.remove([list, id]);
    for (const id of ids) change.remove(['moments', id]);
  });
  endStep(gameId);
}
