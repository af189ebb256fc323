import type { Drill } from '@icewright/book';
import { rinkOf } from '@icewright/engine';
import {
  drawDrillOnly,
  drawMoment,
  drawRink,
  drawUpright,
  type Pen,
  rinkViewBox,
  svgParts,
} from '@icewright/picture';
import { useMemo } from 'react';
import { usePlayback } from '../drills/use-playback.ts';
import { Act } from '../parts/act.tsx';
import { numberSaid } from '../parts/figures.ts';
import { findRun } from '../parts/played-drill.ts';
import { useIsNarrow } from '../parts/use-is-narrow.ts';
import { PlayerKey } from './player-key.tsx';

/** The drill on the ice, and the rep to watch: on a phone the sheet stands on end. */
export function PlayerBoard({ drill }: { readonly drill: Drill }) {
  const isUpright = useIsNarrow(701);
  const rink = useMemo(() => rinkOf(drill.rink), [drill]);
  const run = findRun(drill);
  const playback = usePlayback(run?.durationS ?? 0);
  const { timeS } = playback;
  const still = useMemo(
    () => ({
      rink: onSheet(isUpright, pen => drawRink(pen, rink)),
      drill: onSheet(isUpright, pen =>
        drawDrillOnly(pen, drill, rink, { ...(run && { run }), findings: [], ticks: false }),
      ),
    }),
    [drill, rink, run, isUpright],
  );
  const moving = useMemo(
    () =>
      run === undefined || timeS === 0 ? '' : onSheet(isUpright, pen => drawMoment(pen, drill, run, timeS)),
    [drill, run, timeS, isUpright],
  );
  return (
    <>
      <figure className="player-board">
        <svg
          className={timeS > 0 ? 'ice-svg is-running' : 'ice-svg'}
          viewBox={rinkViewBox(rink, isUpright).join(' ')}
          role="img"
          aria-label={`The drill ${drill.title}`}
        >
          {/* biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there */}
          <g dangerouslySetInnerHTML={{ __html: still.rink }} />
          {/* biome-ignore lint/security/noDangerouslySetInnerHtml: as above */}
          <g className="player-drill" dangerouslySetInnerHTML={{ __html: still.drill }} />
          {/* biome-ignore lint/security/noDangerouslySetInnerHtml: as above */}
          <g className="player-moving" dangerouslySetInnerHTML={{ __html: moving }} />
        </svg>
        {run !== undefined && (
          <figcaption className="player-acts">
            <Act lead onPress={playback.toggle}>
              {playback.isPlaying ? 'Stop' : 'Run'}
            </Act>
            <Act
              isOn={playback.speed === 0.5}
              onPress={() => playback.setSpeed(playback.speed === 1 ? 0.5 : 1)}
            >
              Half speed
            </Act>
            <label className="player-time">
              <span className="vh">Time of the rep, seconds</span>
              <input
                type="range"
                min={0}
                max={run.durationS}
                step={0.1}
                value={timeS}
                onChange={event => playback.seek(Number(event.target.value))}
              />
            </label>
            <span className="est">{numberSaid(timeS)} s</span>
          </figcaption>
        )}
      </figure>
      <PlayerKey plan={drill} rink={rink} run={run} />
    </>
  );
}

function onSheet(isUpright: boolean, draw: (pen: Pen) => void): string {
  return svgParts(pen => (isUpright ? drawUpright(pen, () => draw(pen)) : draw(pen)), { idPrefix: 'player' });
}
