import { inOrder, type Team } from '@icewright/book';
import { skaterWords } from './people-words.ts';

/** The roster as lines of a menu, under one for nobody. */
export function SkaterOptions({ team }: { readonly team: Team }) {
  return (
    <>
      <option value="">not said</option>
      {inOrder(team.skaters).map(([id]) => (
        <option key={id} value={id}>
          {skaterWords(id, team)}
        </option>
      ))}
    </>
  );
}
