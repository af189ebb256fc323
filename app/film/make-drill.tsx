import type { Game, Team } from '@icewright/book';
import type { Desk } from './freeze-desk.ts';
import type { FreezeView } from './freeze-view.ts';

export function MakeDrill(_: {
  readonly gameId: string;
  readonly game: Game;
  readonly desk: Desk;
  readonly view: FreezeView;
  readonly team: Team;
}) {
  return null;
}
