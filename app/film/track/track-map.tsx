import { passingAt, type Rink, SURELY_SDS } from '@icewright/engine';
import { drawRink, rinkViewBox, svgParts } from '@icewright/picture';
import { useMemo } from 'react';
import type { DrawnTrack } from './track-layer.tsx';

/** The ways of all followed skaters on the ice, with where each is now; the circle is its ± (95 %). */
export function TrackMap({
  tracks,
  rink,
  timeS,
  chosen,
}: {
  readonly tracks: readonly DrawnTrack[];
  readonly rink: Rink;
  readonly timeS: number;
  readonly chosen: string | undefined;
}) {
  const box = rinkViewBox(rink);
  const k = 1.5;
  const ground = useMemo(
    () => svgParts(pen => drawRink(pen, rink, { dotLines: true }), { k, thinFloor: box[2] / 700 }),
    [rink, box[2]],
  );
  return (
    <svg
      className="ice-svg ice-map track-map"
      viewBox={box.join(' ')}
      role="img"
      aria-label={`The ways of ${tracks.map(({ name }) => name).join(', ')} on the ice. The camera is below the lower edge.`}
    >
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there */}
      <g dangerouslySetInnerHTML={{ __html: ground }} />
      {tracks.map(({ id, name, track, looks }) => {
        const at = passingAt(looks, timeS);
        return (
          <g key={id} className={`map-person ${track.side}${chosen === id ? ' chosen' : ''}`}>
            <path className="way" d={pathOf(looks)} strokeWidth={0.16 * k} />
            {at && (
              <>
                <circle
                  className="doubt"
                  cx={at.atM.xM}
                  cy={-at.atM.yM}
                  r={SURELY_SDS * at.sdM}
                  strokeWidth={0.08 * k}
                />
                <circle className="fix" cx={at.atM.xM} cy={-at.atM.yM} r={0.3 * k} strokeWidth={0.14 * k} />
                <text
                  x={at.atM.xM}
                  y={-at.atM.yM + (at.atM.yM > 9 ? 1.5 : -0.7) * k}
                  fontSize={1.12 * k}
                  strokeWidth={0.34 * k}
                  textAnchor="middle"
                >
                  {name}
                </text>
              </>
            )}
          </g>
        );
      })}
    </svg>
  );
}

const pathOf = (looks: DrawnTrack['looks']): string => {
  let path = '';
  let last = Number.NEGATIVE_INFINITY;
  for (const { timeS, xM, yM } of looks) {
    path += `${timeS - last > 0.5 ? 'M' : 'L'}${xM.toFixed(2)} ${(-yM).toFixed(2)}`;
    last = timeS;
  }
  return path;
};
