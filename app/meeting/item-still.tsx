import type { ShownItem } from './shown-item.ts';
import { StillPicture } from './still-picture.tsx';
import type { MeetingFilms } from './use-films.ts';

/** The picture of a moment of a meeting, small: where the film stops for it, else its own. Empty where its game is gone. */
export function ItemStill({
  shown,
  films,
  label,
}: {
  readonly shown: ShownItem;
  readonly films: MeetingFilms;
  /** Undefined where words beside it say what it is. */
  readonly label?: string;
}) {
  if (shown.state !== 'there') return <span className="still" />;
  return (
    <StillPicture
      film={films.get(shown.part.hash)}
      frameIndex={shown.item.stop?.frameIndex ?? shown.frameIndex}
      {...(label === undefined ? {} : { label })}
    />
  );
}
