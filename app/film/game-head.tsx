import type { Game } from '@icewright/book';
import { Act } from '../parts/act.tsx';
import { ChoiceField, ValueField, WordsField } from '../parts/field.tsx';
import { edit } from '../shell/book.ts';

/** Whom we played, when, where and how it ended. */
export function GameFields({ gameId, game }: { readonly gameId: string; readonly game: Game }) {
  const change = edit(gameId);
  return (
    <div className="game-fields">
      <WordsField
        label="Opponent"
        value={game.opponent}
        placeholder="Whom did we play?"
        onChange={words => change.set(['opponent'], words)}
      />
      <ValueField label="Day" type="date" value={game.day} onChange={day => change.set(['day'], day)} />
      <ChoiceField
        label="Where"
        value={game.place}
        choices={[
          { value: 'home', said: 'at home' },
          { value: 'away', said: 'away' },
          { value: 'neutral', said: 'on neutral ice' },
        ]}
        onChange={place => change.set(['place'], place)}
      />
      {game.score ? (
        <>
          <ValueField
            label="Goals, us"
            type="number"
            min={0}
            max={40}
            step={1}
            value={String(game.score.us)}
            onChange={us => change.set(['score'], { ...game.score, us: Number(us) })}
          />
          <ValueField
            label="Goals, them"
            type="number"
            min={0}
            max={40}
            step={1}
            value={String(game.score.them)}
            onChange={them => change.set(['score'], { ...game.score, them: Number(them) })}
          />
        </>
      ) : (
        <Act onPress={() => change.set(['score'], { us: 0, them: 0 })}>Write the score</Act>
      )}
    </div>
  );
}
