import type { Game, Mark } from '@icewright/book';
import { useState } from 'react';
import { clockText } from '../film-clock.ts';
import { clampFrame, frameAtTime, nearestFrame, timeOfFrame } from '../frame-index.ts';
import type { Player } from '../player.ts';
import { usePlayerPart } from '../use-player.ts';
import { useWidth } from '../use-width.ts';
import { markSaid, whenSaid } from './mark-words.ts';
import { stripWindow } from './strip-window.ts';
import type { MarksDesk } from './use-marks-desk.ts';

/** When each mark round the shown picture is seen: a bar on a rule of seconds, whose ends are dragged or moved by keys. */
export function MarksStrip({
  game,
  film,
  player,
  desk,
}: {
  readonly game: Game;
  readonly film: string;
  readonly player: Player;
  readonly desk: MarksDesk;
}) {
  const { index } = player.film;
  const frameIndex = usePlayerPart(player, state => state.frameIndex);
  const [element, setElement] = useState<HTMLDivElement | null>(null);
  const widthPx = Math.max(120, useWidth(element));
  const atS = timeOfFrame(index, frameIndex);
  const { fromS, toS } = stripWindow(atS, index.endS);
  const rows = (Object.entries(game.marks) as [string, Mark][])
    .filter(
      ([, mark]) => mark.film === film && spanOf(mark, game).toS >= fromS && spanOf(mark, game).fromS <= toS,
    )
    .sort(
      ([, a], [, b]) => spanOf(a, game).fromS - spanOf(b, game).fromS || a.madeAt.localeCompare(b.madeAt),
    );
  const xOf = (timeS: number) => ((timeS - fromS) / (toS - fromS)) * widthPx;
  if (rows.length === 0) return null;
  return (
    <div className="marks-strip">
      {rows.map(([id, mark]) => (
        <div key={id} className="marks-row" data-chosen={desk.chosen === id || undefined}>
          <button
            type="button"
            className="marks-name quiet"
            aria-pressed={desk.chosen === id}
            title={whenSaid(mark, game.freezes)}
            onClick={() => {
              desk.choose(id);
              const span = spanOf(mark, game);
              if (atS < span.fromS - 1e-3 || atS > span.toS + 1e-3) void player.jumpToTime(span.fromS);
            }}
          >
            {markSaid(mark, game)}
          </button>
          <Bar
            id={id}
            mark={mark}
            game={game}
            desk={desk}
            player={player}
            window={{ fromS, toS }}
            widthPx={widthPx}
          />
        </div>
      ))}
      <div className="marks-row">
        <span className="marks-name q3">seconds</span>
        <div ref={setElement} className="marks-rule" aria-hidden="true">
          {Array.from({ length: Math.ceil(toS) - Math.floor(fromS) }, (_, i) => Math.floor(fromS) + i).map(
            s => (
              <span
                key={s}
                className={s % 2 === 0 ? 'full' : 'open'}
                style={{
                  left: Math.max(0, xOf(s)),
                  width: Math.max(0, Math.min(widthPx, xOf(s + 1)) - Math.max(0, xOf(s))),
                }}
              >
                {s % 2 === 0 && xOf(s) >= 0 && <span className="ax">{clockText(s, 0)}</span>}
              </span>
            ),
          )}
          <span className="marks-now" style={{ left: xOf(atS) }} />
        </div>
      </div>
    </div>
  );
}

function Bar({
  id,
  mark,
  game,
  desk,
  player,
  window: { fromS, toS },
  widthPx,
}: {
  readonly id: string;
  readonly mark: Mark;
  readonly game: Game;
  readonly desk: MarksDesk;
  readonly player: Player;
  readonly window: { readonly fromS: number; readonly toS: number };
  readonly widthPx: number;
}) {
  const { index } = player.film;
  const [held, setHeld] = useState<{ readonly end: 'fromS' | 'toS'; readonly s: number }>();
  const span = { ...spanOf(mark, game), ...(held ? { [held.end]: held.s } : {}) };
  const xOf = (timeS: number) => Math.max(0, Math.min(widthPx, ((timeS - fromS) / (toS - fromS)) * widthPx));
  if (mark.freeze) {
    return (
      <div className="marks-bar-row">
        <span
          className="marks-still"
          style={{ left: xOf(span.fromS) }}
          title={whenSaid(mark, game.freezes)}
        />
      </div>
    );
  }
  const timeAt = (clientX: number, box: DOMRect): number => {
    const s = fromS + ((clientX - box.left) / box.width) * (toS - fromS);
    return timeOfFrame(index, nearestFrame(index, Math.max(0, Math.min(index.endS, s))));
  };
  const put = (end: 'fromS' | 'toS', s: number, by?: 'keys') =>
    desk.write.set(id, { [end]: end === 'fromS' ? Math.min(s, mark.toS) : Math.max(s, mark.fromS) }, by);
  const end = (which: 'fromS' | 'toS') => (
    <span
      className={which === 'fromS' ? 'marks-end appears' : 'marks-end'}
      role="slider"
      tabIndex={0}
      aria-label={`${markSaid(mark, game)} ${which === 'fromS' ? 'appears' : 'goes'}`}
      aria-valuemin={0}
      aria-valuemax={index.endS}
      aria-valuenow={span[which]}
      aria-valuetext={clockText(span[which])}
      style={{ left: xOf(span[which]) }}
      onPointerDown={event => {
        event.preventDefault();
        event.currentTarget.setPointerCapture(event.pointerId);
        desk.choose(id);
        setHeld({ end: which, s: mark[which] });
      }}
      onPointerMove={event => {
        if (!held) return;
        const s = timeAt(event.clientX, event.currentTarget.parentElement!.getBoundingClientRect());
        setHeld({ end: which, s: which === 'fromS' ? Math.min(s, mark.toS) : Math.max(s, mark.fromS) });
      }}
      onPointerUp={() => {
        if (held) put(which, held.s);
        setHeld(undefined);
      }}
      onPointerCancel={() => setHeld(undefined)}
      onKeyDown={event => {
        const step = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0;
        if (step === 0) return;
        event.preventDefault();
        event.stopPropagation();
        const at = clampFrame(index, frameAtTime(index, mark[which]) + step * (event.shiftKey ? 10 : 1));
        put(which, timeOfFrame(index, at), 'keys');
      }}
    />
  );
  return (
    <div className="marks-bar-row">
      <span
        className="marks-bar"
        style={{ left: xOf(span.fromS), width: Math.max(2, xOf(span.toS) - xOf(span.fromS)) }}
      />
      {end('fromS')}
      {end('toS')}
    </div>
  );
}

const spanOf = (mark: Mark, game: Game): { readonly fromS: number; readonly toS: number } => {
  const freeze = mark.freeze && game.freezes[mark.freeze];
  return freeze ? { fromS: freeze.filmTimeS, toS: freeze.filmTimeS } : mark;
};
