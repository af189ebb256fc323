import type { Game, Team } from '@icewright/book';
import { useEffect, useRef } from 'react';
import { Act } from '../parts/act.tsx';
import { ChoiceField, ValueField, WordsField } from '../parts/field.tsx';
import { edit } from '../shell/book.ts';
import { RINKS } from '../shell/rinks.ts';

/** Whom we played, when, where, on which sheet and how it ended. */
export function GameFields({
  gameId,
  game,
  team,
  asksWhom,
}: {
  readonly gameId: string;
  readonly game: Game;
  readonly team: Pick<Team, 'rink'>;
  /** Just made, with nothing to look at yet: whom we played is asked first. Where a film stands, its keys must not be typed into a field. */
  readonly asksWhom: boolean;
}) {
  const change = edit(gameId);
  const fields = useRef<HTMLDivElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the fields open
  useEffect(() => {
    if (asksWhom && game.opponent === '') fields.current?.querySelector('input')?.focus();
  }, []);
  return (
    <div className="game-fields" ref={fields}>
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
      <ChoiceField
        label="Sheet"
        value={sheetValue(game)}
        choices={[{ value: AS_AT_HOME, said: `as at home, ${sheetSaid(team.rink)}` }, ...sheetChoices(game)]}
        onChange={sheet => {
          if (sheet === AS_AT_HOME) change.remove(['rink']);
          else if (sheet !== 'own') change.set(['rink'], { preset: sheet });
        }}
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

const AS_AT_HOME = 'asAtHome';

const sheetValue = (game: Game) => game.rink?.preset ?? AS_AT_HOME;

/** Whole sheets and parts by name; an own size is set for the team, and is listed only where a game has one. */
const sheetChoices = (game: Game) => RINKS.filter(one => one.value !== 'own' || game.rink?.preset === 'own');

export const sheetSaid = ({ preset }: Team['rink']): string =>
  RINKS.find(one => one.value === preset)?.said ?? preset;
