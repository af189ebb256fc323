import { type Game, inOrder, type Team } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { countSaid } from '../../parts/figures.ts';
import { named } from '../../parts/named.ts';
import { StateField } from '../../parts/state-field.tsx';
import { clockText } from '../film-clock.ts';
import { verdictSaid } from '../moments/moment-glyph.tsx';
import { momentsOf } from '../moments/moments-of.ts';
import { areStillHere } from '../moments/still-here.ts';
import type { Player } from '../player.ts';
import { breakCount } from './live-breaks.ts';
import { isLive } from './live-part.ts';
import { filmClockOf, tiedTo, tieLive } from './tie-live.ts';

/** Beside a film of a game that was marked live: one moment that both show brings all of them onto this film. */
export function LiveTie({
  gameId,
  game,
  team,
  partId,
  player,
}: {
  readonly gameId: string;
  readonly game: Game;
  readonly team: Team;
  readonly partId: Id<'film'>;
  readonly player: Player;
}) {
  const [chosen, setChosen] = useState('');
  const [came, setCame] = useState<{ readonly words: string; readonly ids: readonly string[] }>();
  const [ranOn, setRanOn] = useState(false);
  // Undo takes the moments back, and with them what was said of their coming.
  const said = came && areStillHere(came.ids, game, partId) ? came.words : '';
  const [live, part] = inOrder(game.films).find(([, one]) => isLive(one)) ?? [];
  const moments = live === undefined ? [] : momentsOf(game, live);
  if (live === undefined || part === undefined || moments.length === 0)
    return said === '' ? null : (
      <p className="q2" role="status">
        {said}
      </p>
    );
  const [id, moment] = moments.find(([each]) => each === chosen) ?? moments[0]!;
  const tie = () => {
    const filmSOf = filmClockOf(part, { clockS: moment.filmTimeS, filmS: player.timeS }, ranOn);
    const tied = tiedTo(game, live, partId, player.film.index, filmSOf);
    tieLive(gameId, live, tied);
    setCame({
      ids: tied.moments.map(([each]) => each),
      words: `${countSaid(tied.moments.length, 'moment')} came onto this film${tied.outsideCount > 0 ? `; ${tied.outsideCount} lie outside it and stay with the live clock` : ''}. Undo takes them back.`,
    });
  };
  return (
    <section className="sec live-tie" aria-label="Marked live">
      <h2>
        Marked live <span className="q3">{countSaid(moments.length, 'moment')} not on a film yet</span>
      </h2>
      <p className="q2">Find one of them in the film and say so: the others follow by the clock.</p>
      <select aria-label="Which of them" value={id} onChange={event => setChosen(event.target.value)}>
        {moments.map(([each, one]) => (
          <option key={each} value={each}>
            {clockText(one.filmTimeS, 0)} {named(team.habits[one.habit]?.title ?? '', 'habit')},{' '}
            {verdictSaid(one.verdict)}
          </option>
        ))}
      </select>{' '}
      {breakCount(part) > 0 && (
        <p>
          <StateField
            says="The camera in the breaks"
            isOn={ranOn}
            on="ran on"
            off="stood still"
            onChange={setRanOn}
          />{' '}
          <span className="q3">the clock was stopped for {countSaid(breakCount(part), 'break')}</span>
        </p>
      )}
      <Act onPress={tie}>It happens at this picture</Act>
      {said !== '' && (
        <p className="q2" role="status">
          {said}
        </p>
      )}
    </section>
  );
}
