import type { Track } from '@icewright/book';
import {
  type FilmPoint,
  filmFromIce,
  type Look,
  type PinFit,
  passingAt,
  SURELY_SDS,
} from '@icewright/engine';
import { useRef, useState } from 'react';
import { filmPath } from '../film-path.ts';
import { arrowOf, pixelsOf } from '../key-steps.ts';
import { ring } from '../rink-lines.ts';
import { handAt } from './track-writing.ts';

/** One followed skater as the picture shows him. */
export interface DrawnTrack {
  readonly id: string;
  readonly name: string;
  readonly track: Track;
  readonly looks: readonly Look[];
}

/** Followed skaters over a frame that is not frozen: a ring at the feet with its ±, the way behind it. Dragged, a ring is set by hand. */
export function TrackLayer({
  tracks,
  fit,
  frameIndex,
  timeS,
  picture,
  chosen,
  setting,
  filmPerScreen,
  onChoose,
  onSet,
}: {
  readonly tracks: readonly DrawnTrack[];
  /** Ties this frame to the ice. */
  readonly fit: PinFit;
  readonly frameIndex: number;
  readonly timeS: number;
  readonly picture: { readonly widthPx: number; readonly heightPx: number };
  readonly chosen: string | undefined;
  /** The one whose feet the next press sets. */
  readonly setting: string | undefined;
  readonly filmPerScreen: number;
  readonly onChoose: (id: string) => void;
  readonly onSet: (id: string, feet: FilmPoint, by: 'hand' | 'keys') => void;
}) {
  const layer = useRef<SVGSVGElement>(null);
  const grip = useRef<{ id: string; moved: boolean }>(undefined);
  const repeats = useRef(0);
  const [held, setHeld] = useState<{ id: string; at: FilmPoint }>();
  const { widthPx, heightPx } = picture;
  const unit = filmPerScreen * Math.max(0.62, Math.min(1, widthPx / filmPerScreen / 640));
  const filmPoint = (event: { clientX: number; clientY: number }): FilmPoint => {
    const box = layer.current!.getBoundingClientRect();
    return {
      xPx: Math.max(0, Math.min(widthPx, ((event.clientX - box.left) / box.width) * widthPx)),
      yPx: Math.max(0, Math.min(heightPx, ((event.clientY - box.top) / box.height) * heightPx)),
    };
  };
  const places = tracks.flatMap(one => {
    const at = passingAt(one.looks, timeS);
    const hand = handAt(one.track, frameIndex);
    const told = at && filmFromIce(fit, at.atM);
    const handPx = hand && one.track.hands[hand]?.feet;
    const px =
      (held?.id === one.id ? held.at : undefined) ??
      handPx ??
      told ??
      (setting === one.id ? { xPx: widthPx / 2, yPx: heightPx / 2 } : undefined);
    return px ? [{ ...one, at, px, isHand: hand !== undefined }] : [];
  });
  return (
    <svg
      ref={layer}
      className={setting ? 'freeze-layer track-layer putting' : 'freeze-layer track-layer'}
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      preserveAspectRatio="none"
      role="application"
      aria-label="Followed skaters in this frame. Arrows move the feet of the one that has the focus."
      onPointerDown={event => {
        if (event.button !== 0) return;
        const id =
          setting ??
          (event.target as Element).closest<SVGElement>('[data-track]')?.dataset.track ??
          undefined;
        if (!id) return;
        grip.current = { id, moved: setting !== undefined };
        layer.current?.setPointerCapture(event.pointerId);
        onChoose(id);
        if (setting) setHeld({ id, at: filmPoint(event) });
      }}
      onPointerMove={event => {
        const { current } = grip;
        if (!current) return;
        current.moved = true;
        setHeld({ id: current.id, at: filmPoint(event) });
      }}
      onPointerUp={event => {
        const { current } = grip;
        grip.current = undefined;
        setHeld(undefined);
        if (current?.moved) onSet(current.id, filmPoint(event), 'hand');
      }}
      onPointerCancel={() => {
        grip.current = undefined;
        setHeld(undefined);
      }}
    >
      <title>Followed skaters</title>
      {places.map(({ id, looks }) => (
        <g key={id} className="tl-way">
          <path className="under" d={trailOf(fit, looks, timeS)} strokeWidth={4 * unit} />
          <path d={trailOf(fit, looks, timeS)} strokeWidth={1.8 * unit} />
        </g>
      ))}
      {places.map(({ id, name, track, at, px, isHand }) => {
        const { xPx: x, yPx: y } = px;
        const arm = 6 * unit;
        const isHeld = held?.id === id;
        return (
          // biome-ignore lint/a11y/useSemanticElements: a ring in a drawing cannot be a button element
          <g
            key={id}
            className={`pm-person ${track.side}${chosen === id ? ' chosen' : ''}`}
            role="button"
            tabIndex={0}
            aria-label={`${name}, ${isHand ? 'set by hand here' : 'followed'}. Arrows set the feet by hand.`}
            data-track={id}
            data-role={track.role}
            data-x-m={at?.atM.xM.toFixed(3)}
            data-y-m={at?.atM.yM.toFixed(3)}
            onFocus={() => onChoose(id)}
            onKeyDown={event => {
              const arrow = arrowOf(event.key);
              if (!arrow) return;
              event.preventDefault();
              event.stopPropagation();
              repeats.current = event.repeat ? repeats.current + 1 : 0;
              const step = pixelsOf(event, repeats.current);
              onSet(id, { xPx: x + arrow[0] * step, yPx: y + arrow[1] * step }, 'keys');
            }}
          >
            <circle className="hit" cx={x} cy={y} r={14 * unit} />
            {at && !isHeld && (
              <path
                className="tl-doubt"
                d={filmPath(fit, ring(at.atM, SURELY_SDS * at.sdM, 28), true)}
                strokeWidth={1.4 * unit}
                strokeDasharray={`${3 * unit} ${3 * unit}`}
              />
            )}
            <circle className="pm-dot" cx={x} cy={y} r={2.6 * unit} />
            {isHand && (
              <path
                className="tl-hand"
                d={`M${x - arm} ${y}H${x + arm}M${x} ${y - arm}V${y + arm}`}
                strokeWidth={1.8 * unit}
              />
            )}
            <text
              className={`cased ${chosen === id ? 'cool' : 'ink'}`}
              x={x}
              y={y + 20 * unit}
              fontSize={13 * unit}
              fontWeight={640}
              strokeWidth={4 * unit}
              textAnchor="middle"
            >
              {name}
            </text>
          </g>
        );
      })}
    </svg>
  );
}

/** The last second and a half of his way, on the ice of this frame. */
const trailOf = (fit: PinFit, looks: readonly Look[], timeS: number): string =>
  filmPath(
    fit,
    looks.filter(look => look.timeS <= timeS + 1e-6 && look.timeS >= timeS - TRAIL_S),
  );
const TRAIL_S = 1.5;
