import type { Game, Team } from '@icewright/book';
import { sheetThatFits } from '@icewright/engine';
import { useMemo } from 'react';
import { Act } from '../parts/act.tsx';
import { edit, endStep } from '../shell/book.ts';
import { namedPinsOf, sheetOfGame } from './fit-of-freeze.ts';
import type { FreezeView } from './freeze-view.ts';
import { sheetSaid } from './game-head.tsx';

/** Asks for the sheet when the pins of a freeze go with another one far better than with that of the game. */
export function WhichSheet({
  gameId,
  game,
  team,
  view,
}: {
  readonly gameId: string;
  readonly game: Game;
  readonly team: Team;
  readonly view: FreezeView;
}) {
  const { rink } = view;
  const { pins, clickSdPx } = view.freeze;
  const answer = useMemo(
    () => sheetThatFits(namedPinsOf({ pins }), rink, clickSdPx),
    [pins, rink, clickSdPx],
  );
  if (answer.kind === 'none') return null;
  const { sheet } = answer;
  const other = sheetSaid({ preset: sheet });
  return (
    <p className="note" role="status" data-testid="which-sheet">
      <span className="warm b">
        These pins fit {other} far better than {sheetSaid(sheetOfGame(game, team))}: which sheet is this?
      </span>{' '}
      Every length of this game hangs on it.{' '}
      <Act
        onPress={() => {
          endStep(gameId);
          if (sheet === team.rink.preset) edit(gameId).remove(['rink']);
          else edit(gameId).set(['rink'], { preset: sheet });
          endStep(gameId);
        }}
      >
        It is {other}
      </Act>
    </p>
  );
}
