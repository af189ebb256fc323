import { useEffect, useRef, useState } from 'react';
import type { MeetingFilm } from './use-films.ts';

/** One standing picture of a film, small; says so where there is none. */
export function StillPicture({
  film,
  frameIndex,
  label,
}: {
  readonly film: MeetingFilm | undefined;
  readonly frameIndex: number;
  /** Undefined where words beside it say what it is. */
  readonly label?: string;
}) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [shown, setShown] = useState<number>();
  const stills = film?.kind === 'open' ? film.stills : undefined;
  useEffect(() => {
    let isOver = false;
    setShown(undefined);
    void stills?.at(frameIndex).then(picture => {
      if (isOver || !picture || !canvas.current) return;
      canvas.current.width = picture.width;
      canvas.current.height = picture.height;
      canvas.current.getContext('2d')?.drawImage(picture, 0, 0);
      setShown(frameIndex);
    });
    return () => {
      isOver = true;
    };
  }, [stills, frameIndex]);
  const isMissing = film?.kind === 'missing' || film?.kind === 'refused';
  return (
    <span className="still">
      <canvas
        ref={canvas}
        data-frame={shown}
        {...(label === undefined ? { 'aria-hidden': true } : { role: 'img', 'aria-label': label })}
      />
      {isMissing && <span className="still-none warm">no film here</span>}
    </span>
  );
}
