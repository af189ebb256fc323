import type { Game, Team } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { useState } from 'react';
import { clockText } from '../../film/film-clock.ts';
import { gameTitle } from '../../film/game-words.ts';
import { personWords } from '../../film/people-words.ts';
import { Act } from '../../parts/act.tsx';
import { daySaid } from '../../parts/figures.ts';
import { saveFile } from '../../parts/save-file.ts';
import { freezeDrawnOf } from './freeze-drawn.ts';

/** A freeze as one page to print. */
export function FreezeSheetAct(props: {
  readonly game: Game;
  readonly freezeId: string;
  readonly team: Team;
}) {
  const { game, team } = props;
  const [state, setState] = useState<'rest' | 'working' | 'failed'>('rest');
  const freeze = game.freezes[props.freezeId as Id<'freeze'>];
  if (freeze === undefined) return null;
  const isPlaced = Object.keys(freeze.skaters).length > 0;
  const save = async () => {
    const drawn = freezeDrawnOf(freeze, game, team, placed => personWords(placed, team));
    if (drawn === undefined) return setState('failed');
    setState('working');
    try {
      const { paperPdf } = await import('../../parts/paper-pdf.ts');
      const { drawFreezeSheet } = await import('@icewright/picture');
      const habit = freeze.habit && team.habits[freeze.habit];
      const at = clockText(freeze.filmTimeS, 1);
      const title = freeze.title || (habit ? habit.title : `Freeze at ${at}`);
      const sheet = {
        team: team.name,
        title,
        facts: [
          { small: daySaid(game.day), strong: gameTitle(game) },
          { small: 'at', strong: at },
        ],
        says: habit ? habit.says : '',
        freeze: drawn,
      };
      const pages = [(pen: Parameters<typeof drawFreezeSheet>[0]) => drawFreezeSheet(pen, sheet)];
      saveFile(await paperPdf({ title, paper: 'a4', pages: () => pages }), `${title} ${game.day}.pdf`);
      setState('rest');
    } catch {
      setState('failed');
    }
  };
  return (
    <>
      <Act
        working={state === 'working'}
        notNow={isPlaced ? undefined : 'place somebody first'}
        onPress={() => void save()}
      >
        Sheet (PDF)
      </Act>
      {state === 'failed' && (
        <span className="warm" role="alert">
          The sheet could not be made: the pins do not hold the picture, or the browser cannot. Nothing was
          changed.
        </span>
      )}
    </>
  );
}
