import { type ReactNode, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { Act } from '../parts/act.tsx';
import { numberSaid } from '../parts/figures.ts';
import type { Playback } from './use-playback.ts';
import './run-frame.css';

/**
 * The ice and, on a small screen, what plays it: there the head is out of sight when the sheet is in it. Once a rep is run the
 * whole sheet fits the screen with Stop below it, the page stands at it whenever it plays, and nothing moves when it ends.
 */
export function RunFrame(props: {
  readonly isSmall: boolean;
  readonly playback: Playback;
  readonly children: ReactNode;
}) {
  const { isSmall, playback } = props;
  const { isPlaying } = playback;
  const frame = useRef<HTMLDivElement>(null);
  const [hasRun, setHasRun] = useState(false);
  useEffect(() => {
    if (isPlaying) setHasRun(true);
  }, [isPlaying]);
  const isFitted = isSmall && hasRun;
  useLayoutEffect(() => {
    if (isFitted && isPlaying) frame.current?.scrollIntoView({ block: 'start' });
  }, [isFitted, isPlaying]);
  return (
    <div ref={frame} className={isFitted ? 'run-frame is-fitted' : 'run-frame'}>
      {props.children}
      {isFitted && (
        <p className="run-line">
          <Act label={isPlaying ? 'Stop the rep' : 'Run it again'} onPress={playback.toggle}>
            {isPlaying ? 'Stop' : 'Run'}
          </Act>
          <span className="cool b">{numberSaid(playback.timeS)} s</span>
        </p>
      )}
    </div>
  );
}
