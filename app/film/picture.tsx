import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import type { Player } from './player.ts';
import { usePlayerState } from './use-player.ts';
import { useWidth } from './use-width.ts';

/** The film's picture: an exact frame on a canvas, the moving video above it while it plays, and marks above both. */
export function Picture({
  player,
  says,
  over,
  children,
}: {
  readonly player: Player;
  readonly says: string;
  /** What lies over the picture whether it moves or stands. */
  readonly over?: (filmPerScreen: number) => ReactNode;
  /** Marks in pixels of the film; `filmPerScreen` tells how many of them go into a pixel of the screen. */
  readonly children?: (filmPerScreen: number, canvas: HTMLCanvasElement | null) => ReactNode;
}) {
  const { film } = player;
  const { frameIndex, shownFrame, playing, looking, onVideo, gone, isCopy } = usePlayerState(player);
  const canvas = useRef<HTMLCanvasElement>(null);
  const video = useRef<HTMLVideoElement>(null);
  const [frame, setFrame] = useState<HTMLDivElement | null>(null);
  const width = useWidth(frame);
  const address = useAddress(player);
  useEffect(() => {
    if (canvas.current && video.current) player.attach(canvas.current, video.current);
  }, [player]);
  const isStill = !playing && !onVideo && shownFrame === frameIndex;
  return (
    <figure className="picture" aria-label={says}>
      <div
        ref={setFrame}
        className="picture-frame"
        style={{ '--across': film.widthPx, '--down': film.heightPx } as React.CSSProperties}
      >
        <canvas ref={canvas} data-frame={shownFrame} data-copy={isCopy} data-testid="picture" />
        {/* biome-ignore lint/a11y/useMediaCaption: a rink recording has no words to caption */}
        <video ref={video} src={address} playsInline preload="auto" hidden={!onVideo} tabIndex={-1} />
        {isStill && width > 0 && children?.(film.widthPx / width, canvas.current)}
        {width > 0 && over?.(film.widthPx / width)}
        {looking && (
          <span className="picture-looking" role="status">
            {shownFrame >= 0 && shownFrame !== frameIndex
              ? `Nearest: frame ${shownFrame}. Looking for ${frameIndex}`
              : `Looking for frame ${frameIndex}`}
          </span>
        )}
        {gone !== undefined && (
          <p className="picture-gone" role="status">
            <span className="w">Frame {frameIndex} cannot be shown.</span>
            <span className="q2">
              {gone === 'missing'
                ? 'The file ends before its picture. The rest of the film plays; copy it from the camera again to get this part.'
                : 'This part of the file is damaged. The frames before and after it play.'}
            </span>
          </p>
        )}
      </div>
    </figure>
  );
}

const useAddress = (player: Player): string => {
  const { source } = player.film;
  const address = useMemo(() => ('file' in source ? URL.createObjectURL(source.file) : source.url), [source]);
  useEffect(() => () => URL.revokeObjectURL(address), [address]);
  return address;
};
