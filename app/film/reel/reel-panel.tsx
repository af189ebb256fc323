import type { Team } from '@icewright/book';
import { useEffect, useState } from 'react';
import { Stills } from '../../meeting/stills.ts';
import { Act } from '../../parts/act.tsx';
import { countSaid } from '../../parts/figures.ts';
import { useComesIntoView } from '../../parts/use-comes-into-view.ts';
import { gameTitle } from '../game-words.ts';
import type { MarksLayerProps } from '../marks/marks-layer.tsx';
import { overFilmOf } from '../marks/over-film-of.ts';
import type { ListedMoment } from '../moments/filter-moments.ts';
import type { OpenFilm } from '../open-film.ts';
import { momentEntriesOf } from './moment-entries.ts';
import { ReelDesk } from './reel-desk.tsx';

type ReelOf = Pick<MarksLayerProps, 'game' | 'film' | 'player' | 'tie'> & {
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

function OpenPanel({ game, film, player, tie, team, shown }: ReelOf) {
  const { index } = player.film;
  const stills = useStills(film, player.film);
  const below = useComesIntoView<HTMLDivElement>();
  return (
    <div className="reel-below" ref={below}>
      <ReelDesk
        entries={momentEntriesOf(shown, film, index, game, team)}
        films={new Map([[film, { film: player.film, ...overFilmOf(game, film, index, tie, team) }]])}
        stills={stills}
        title={count => `${gameTitle(game)}, ${count === 1 ? 'one moment' : countSaid(count, 'moment')}`}
        onMake={() => player.pause()}
      />
    </div>
  );
}

/** Small pictures of the film, by a reader of their own while the list is open. */
const useStills = (key: string, film: OpenFilm): ReadonlyMap<string, Stills> => {
  const [stills, setStills] = useState<ReadonlyMap<string, Stills>>(new Map());
  useEffect(() => {
    const made = new Stills(film, ROW_PX);
    setStills(new Map([[key, made]]));
    return () => made.close();
  }, [key, film]);
  return stills;
};
/** Twice the width of a row's picture. */
const ROW_PX = 192;
