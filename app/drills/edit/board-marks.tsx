import type { Rink } from '@icewright/engine';
import type { Shown } from './held.ts';
import type { Marquee } from './marquee.ts';
import type { SnapTo } from './snap.ts';

/** What the hand leaves on the ice while it works: where a thing was, what draws it, why it may not stay, what is being selected. */
export function BoardMarks(props: {
  readonly shown: Shown | null;
  readonly marquee: Marquee | null;
  readonly rink: Rink;
  readonly isUpright: boolean;
}) {
  const { shown, marquee } = props;
  return (
    <g className="hand-marks">
      {marquee !== null && (
        <rect
          className="marquee"
          x={Math.min(marquee.fromM.xM, marquee.toM.xM)}
          y={-Math.max(marquee.fromM.yM, marquee.toM.yM)}
          width={Math.abs(marquee.fromM.xM - marquee.toM.xM)}
          height={Math.abs(marquee.fromM.yM - marquee.toM.yM)}
        />
      )}
      {shown !== null && (
        <>
          {shown.ghostsM.map(({ xM, yM }) => (
            <circle key={`${xM} ${yM}`} className="ghost-place" cx={xM} cy={-yM} r="0.86" />
          ))}
          {shown.snap?.to.map(to => (
            <Guide key={to.words} to={to} shown={shown} rink={props.rink} />
          ))}
          {shown.lineFromM !== undefined && (
            <line
              className="cue-way"
              x1={shown.lineFromM.xM}
              y1={-shown.lineFromM.yM}
              x2={shown.atM.xM}
              y2={-shown.atM.yM}
            />
          )}
          {shown.fingerM !== undefined && (
            <line
              className="finger-stem"
              x1={shown.fingerM.xM}
              y1={-shown.fingerM.yM}
              x2={shown.atM.xM}
              y2={-shown.atM.yM}
            />
          )}
          {shown.refusal?.atM.map(({ xM, yM }) => (
            <circle key={`${xM} ${yM}`} className="refused-place" cx={xM} cy={-yM} r="1.35" />
          ))}
          {shown.words !== '' && <GuideWords {...props} shown={shown} />}
        </>
      )}
    </g>
  );
}

/** The marking itself over the whole sheet, or a line from whom it is taken. */
function Guide({ to, shown, rink }: { readonly to: SnapTo; readonly shown: Shown; readonly rink: Rink }) {
  const { minXM, maxXM, minYM, maxYM } = rink.area;
  if (to.kind === 'circle')
    return <circle className="guide" cx={to.centreM.xM} cy={-to.centreM.yM} r={to.radiusM} />;
  const [fromX, fromY, toX, toY] =
    to.fromM !== undefined
      ? [to.fromM.xM, to.fromM.yM, shown.atM.xM, shown.atM.yM]
      : to.kind === 'x'
        ? [to.xM, minYM, to.xM, maxYM]
        : to.kind === 'y'
          ? [minXM, to.yM, maxXM, to.yM]
          : [to.atM.xM, to.atM.yM, to.atM.xM, to.atM.yM];
  return <line className="guide" x1={fromX} y1={-fromY} x2={toX} y2={-toY} />;
}

/** Above the hand, inside the sheet; upright however the sheet is turned. */
function GuideWords(props: { readonly shown: Shown; readonly rink: Rink; readonly isUpright: boolean }) {
  const { shown, rink, isUpright } = props;
  const { xM, yM } = shown.atM;
  const across = isUpright ? -yM : xM;
  const halfM = (isUpright ? rink.boards.widthM : rink.boards.lengthM) / 2;
  const anchor = across > halfM - 7 ? 'end' : across < 7 - halfM ? 'start' : 'middle';
  return (
    <g transform={`translate(${xM} ${-yM})${isUpright ? ' rotate(90)' : ''}`}>
      <text
        className={shown.refusal === null ? 'guide-words' : 'guide-words is-refused'}
        y="-1.8"
        textAnchor={anchor}
      >
        {shown.words}
      </text>
    </g>
  );
}
