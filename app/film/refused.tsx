import { Act } from '../parts/act.tsx';
import { Failure } from '../parts/empty.tsx';
import type { FolderFilm } from '../shell/server.ts';
import { ConvertOffer } from './convert-offer.tsx';
import type { UnreadFilm } from './film-door.ts';
import { canBeConverted, type Refusal } from './film-refusal.ts';

/** A file that is no film to be shown here: what is wrong, what to do; nothing was changed. */
export function Refused({
  refusal,
  film,
  onMade,
  onLeave,
}: {
  readonly refusal: Refusal;
  readonly film: UnreadFilm;
  /** A film that this machine could make of it. */
  readonly onMade: (film: FolderFilm) => void;
  readonly onLeave?: () => void;
}) {
  return (
    <Failure
      where={`Film ${film.fileName}`}
      what={refusal.says}
      lost={`${refusal.todo} Nothing here was changed.`}
    >
      {canBeConverted(refusal) && <ConvertOffer film={film} onMade={onMade} />}
      {onLeave && <Act onPress={onLeave}>Close</Act>}
    </Failure>
  );
}
