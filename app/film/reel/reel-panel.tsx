import type { Team } from '@icewright/book';
import { useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { countSaid } from '../../parts/figures.ts';
import { gameTitle } from '../game-words.ts';
import type { MarksLayerProps } from '../marks/marks-layer.tsx';
import { overFilmOf } from '../marks/over-film-of.ts';
import type { ListedMoment } from '../moments/filter-moments.ts';
import { momentEntriesOf } from './moment-entries.ts';
import { ReelDesk } from './reel-desk.tsx';

type ReelOf = Pick<MarksLayerProps, 'game' | 'film' | 'player' | 'tie' | 'lengths'> & {
  readonly team: Team;
  /** The moments that the list shows. */
  readonly shown: readonly ListedMoment[];
};

/** From the moments that are shown: a film of them in an order, with marks, stands and sound, as a file for others. */
export function ReelPanel(props: ReelOf) {
  const [isOpen, setOpen] = useState(false);
  const { shown } = props;
  return (
    <div className="reel">
      <Act
        opens={isOpen}
        notNow={shown.length === 0 ? 'no moment is shown' : undefined}
        onPress={() => setOpen(!isOpen)}
      >
        Make a reel of those shown
      </Act>
      {isOpen && <OpenPanel {...props} />}
    </div>
  );
}

function OpenPanel({ game, film, player, tie, lengths, team, shown }: ReelOf) {
  const { index } = player.film;
  return (
    <ReelDesk
      entries={momentEntriesOf(shown, film, index, game, team)}
      films={new Map([[film, { film: player.film, ...overFilmOf(game, film, index, tie, lengths) }]])}
      title={count => `${gameTitle(game)}, ${count === 1 ? 'one moment' : countSaid(count, 'moment')}`}
      onMake={() => player.pause()}
    />
  );
}
