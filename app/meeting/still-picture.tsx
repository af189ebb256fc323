import { useEffect, useRef, useState } from 'react';
import './still.css';
import type { Stills } from './stills.ts';
import type { MeetingFilm } from './use-films.ts';

interface Which {
  readonly frameIndex: number;
  /** Undefined where words beside it say what it is. */
  readonly label?: string;
}

/** One standing picture of a film, small; says so where there is none. */
export function StillPicture({
  film,
  ...which
}: Which & {
  readonly film: MeetingFilm | undefined;
}) {
  const isMissing = film?.kind === 'missing' || film?.kind === 'refused';
  return <Still {...which} stills={film?.kind === 'open' ? film.stills : undefined} isMissing={isMissing} />;
}

/** Made only once it comes into view: a long list asks for no more pictures than are looked at. */
export function Still({
  stills,
  isMissing = false,
  frameIndex,
  label,
}: Which & { readonly stills: Stills | undefined; readonly isMissing?: boolean }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [shown, setShown] = useState<number>();
  const [isSeen, setSeen] = useState(false);
  useEffect(() => {
    const watch = new IntersectionObserver(
      entries => entries.some(one => one.isIntersecting) && setSeen(true),
      { rootMargin: '200px' },
    );
    watch.observe(canvas.current!);
    return () => watch.disconnect();
  }, []);
  useEffect(() => {
    let isOver = false;
    setShown(undefined);
    if (!isSeen) return;
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
  }, [stills, frameIndex, isSeen]);
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
