import type { Drill } from '@icewright/book';
import type { Run } from '@icewright/engine';

/** Nearer to its start than this a skater has not left: the disc says it already. */
const LEFT_M = 0.9;

/** Where everybody is at one time of the rep: a dot on each route, and the pucks. */
export function BoardSkaters({
  run,
  drill,
  timeS,
}: {
  readonly run: Run;
  readonly drill: Drill;
  readonly timeS: number;
}) {
  const sample = Math.min(run.sampleCount - 1, Math.round(timeS * run.stepHz));
  if (sample < 0) return null;
  return (
    <g className="now">
      {run.tracks.map(track => {
        const spot = drill.spots[track.spot];
        if (spot === undefined || spot.kind === 'goalie') return null;
        const xM = track.xM[sample] ?? 0;
        const yM = track.yM[sample] ?? 0;
        if (Math.hypot(xM - spot.atM.xM, yM - spot.atM.yM) < LEFT_M) return null;
        return (
          <g key={track.spot} transform={`translate(${xM} ${-yM})`}>
            <circle r="0.62" className={spot.side} />
          </g>
        );
      })}
      {run.pucks.map(({ xM, yM }, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a puck has no name but its place in the list
        <circle key={index} className="puck" r="0.26" cx={xM[sample]} cy={-(yM[sample] ?? 0)} />
      ))}
    </g>
  );
}
