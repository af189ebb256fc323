import type { Drill } from '@icewright/book';
import type { Run } from '@icewright/engine';

/** Nearer to its start than this a skater has not left: the disc says it already. */
const LEFT_M = 0.9;

/** A little less than where they stand before the whistle, with room for a name of three letters. */
const DISC_M = 0.78;

/** Where everybody is at one time of the rep, by name, and the pucks. */
export function BoardSkaters({
  run,
  drill,
  timeS,
  isUpright,
}: {
  readonly run: Run;
  readonly drill: Drill;
  readonly timeS: number;
  readonly isUpright: boolean;
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
            <circle r={DISC_M} className={spot.side} />
            <text className={spot.side} dy="0.32" transform={isUpright ? 'rotate(90)' : undefined}>
              {spot.role}
            </text>
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
