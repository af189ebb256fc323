import type { Team } from '@icewright/book';
import { Act } from '../../parts/act.tsx';
import { setRemoved } from '../../shell/book.ts';

/** On the page of a drill: takes it out of the library, or says that it was taken out and puts it back. */
export function InTheLibrary({ id, team }: { readonly id: string; readonly team: Team }) {
  const entry = team.contents[id as keyof Team['contents']];
  if (entry === undefined) return null;
  if (!entry.removed) return <Act onPress={() => setRemoved(id, true)}>Take out of the library</Act>;
  return (
    <p className="undone" role="status">
      This drill is out of the library; nothing in it is lost.{' '}
      <Act onPress={() => setRemoved(id, false)}>Put it back</Act>
    </p>
  );
}
