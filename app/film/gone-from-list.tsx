import type { Team } from '@icewright/book';
import { Act } from '../parts/act.tsx';
import { setRemoved } from '../shell/book.ts';

/** Says of what was just taken out of a list that it is kept, and puts it back by one press. */
export function GoneFromList({
  team,
  what,
  id,
  says = '',
  onBack,
}: {
  readonly team: Team;
  readonly what: 'game' | 'meeting' | 'drill';
  readonly id: string | undefined;
  /** What else is to be known of it. */
  readonly says?: string;
  readonly onBack: () => void;
}) {
  if (id === undefined || !team.contents[id as keyof Team['contents']]?.removed) return null;
  return (
    <p className="undone" role="status">
      The {what} is out of the list; nothing in it is lost.{says}{' '}
      <Act
        onPress={() => {
          setRemoved(id, false);
          onBack();
        }}
      >
        Put it back
      </Act>
    </p>
  );
}
