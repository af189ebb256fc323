import {
  ellipseOf,
  type FrozenScene,
  type IceCovariance,
  type IcePoint,
  type Rink,
  type Standard,
  zoneAreaOf,
} from '@icewright/engine';
import { drawRink, drawZone, rinkViewBox, svgParts } from '@icewright/picture';
import { useMemo } from 'react';
import type { Lengths } from '../parts/figures.ts';
import type { Chance } from './chance.ts';
import { LINES, saidOf, ZONES } from './standard-words.ts';

interface Point {
  readonly key: string;
  readonly verdict: Chance['verdict'];
  readonly atM: IcePoint;
  readonly covM2: IceCovariance;
  readonly role: string;
}

/** Where those the standard speaks of were, in every freeze that judges it; turned so that we always attack to the right. */
export function PointsOnIce(props: {
  readonly rink: Rink;
  readonly standard: Standard;
  readonly chances: readonly Chance[];
  readonly lengths: Lengths;
}) {
  const { rink, standard, chances } = props;
  const points = useMemo(() => chances.flatMap(pointsOf), [chances]);
  const sheet = useMemo(
    () =>
      svgParts(
        pen => {
          drawRink(pen, rink, { scaleBar: true, dotLines: true });
          const area = standard.kind === 'numbers' ? zoneAreaOf(rink, standard.zone, 'plusX') : null;
          if (area !== null && standard.kind === 'numbers') drawZone(pen, area, saidOf(ZONES, standard.zone));
        },
        { idPrefix: 'habit-ice' },
      ),
    [rink, standard],
  );
  const { when } = standard;
  const line = when.at === 'puckCrosses' ? rink.lines[when.line] : undefined;
  const label = `The sheet with ${points.length} places from freezes. ${countsSaid(points)}`;
  return (
    <figure>
      <svg className="ice-svg habit-ice" viewBox={rinkViewBox(rink).join(' ')} role="img" aria-label={label}>
        {/* biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there */}
        <g dangerouslySetInnerHTML={{ __html: sheet }} />
        {line !== undefined && when.at === 'puckCrosses' && (
          <>
            <path className="clock-line" d={`M${line.centreXM} ${-line.halfSpanM}V${line.halfSpanM}`} />
            <text className="tx-area area-name" x={line.centreXM + 0.7} y={-line.halfSpanM + 2}>
              puck over {saidOf(LINES, when.line)}
            </text>
          </>
        )}
        {points.map(point => (
          <PlacedPoint key={point.key} point={point} />
        ))}
      </svg>
      <figcaption className="cap">
        {points.length === 0
          ? 'No freeze judges it yet: places appear here as freezes are made. We attack to the right.'
          : 'Full dot: done. Open dot: missed. Ellipse: the ± reaches over the limit, so the answer is “cannot tell”. We attack to the right.'}
      </figcaption>
    </figure>
  );
}

function PlacedPoint({ point }: { readonly point: Point }) {
  const [x, y] = [point.atM.xM, -point.atM.yM];
  if (point.verdict !== 'cannotTell') {
    return (
      <circle className={point.verdict === 'done' ? 'point-done' : 'point-missed'} cx={x} cy={y} r={0.42}>
        <title>
          {point.role}, {point.verdict}
        </title>
      </circle>
    );
  }
  const { semiMajorM, semiMinorM, angleRad } = ellipseOf(point.covM2);
  return (
    <g transform={`translate(${x} ${y}) rotate(${(-angleRad * 180) / Math.PI})`}>
      <ellipse className="point-unsure" rx={Math.max(0.5, semiMajorM)} ry={Math.max(0.3, semiMinorM)} />
      <circle className="point-centre" r={0.22}>
        <title>{point.role}, cannot tell</title>
      </circle>
    </g>
  );
}

function pointsOf({ measured, verdict, momentId, gameId }: Chance): Point[] {
  if (measured === undefined) return [];
  const { scene, judgement } = measured;
  return judgement.who.flatMap((id, index) => {
    const skater = scene.skaters.find(one => one.id === id);
    // Of a group the deciding one stands for it; of a number all are counted.
    if (skater === undefined || (judgement.unit === 'm' && index > 0)) return [];
    return [
      {
        key: `${gameId} ${momentId} ${id}`,
        verdict,
        role: skater.role,
        atM: attackingRight(scene, skater.atM),
        covM2: skater.covM2,
      },
    ];
  });
}

/** A half turn, never a mirror; a covariance stays what it is under a half turn. */
const attackingRight = (scene: FrozenScene, { xM, yM }: IcePoint): IcePoint =>
  scene.attacks === 'plusX' ? { xM, yM } : { xM: -xM, yM: -yM };

function countsSaid(points: readonly Point[]): string {
  const of = (verdict: Chance['verdict']) => points.filter(point => point.verdict === verdict).length;
  return `${of('done')} done, ${of('missed')} missed, ${of('cannotTell')} cannot tell.`;
}
