/**
 * A change of a rate with its 95 % interval, in points. Solid: moved. Open: no sign yet. Broken: cannot tell.
 * Meaning is shape first, so that it reads without the hue.
 */
export function IntervalBar(props: {
  readonly change: number;
  readonly low: number;
  readonly high: number;
  readonly verdict: 'movedUp' | 'movedDown' | 'noSignYet' | 'cannotTell';
  readonly spanPoints?: number;
}) {
  const span = props.spanPoints ?? 60;
  const x = (points: number) => 75 + (Math.max(-span, Math.min(span, points)) / span) * 70;
  const look = {
    movedUp: '',
    movedDown: ' down',
    noSignYet: ' none',
    cannotTell: ' q',
  }[props.verdict];
  return (
    <svg className="interval" viewBox="0 0 150 24" aria-hidden="true">
      <path className="zero" d="M75 0V24" />
      <path
        className={`iv${look}`}
        d={`M${x(props.low)} 12H${x(props.high)}M${x(props.low)} 8V16M${x(props.high)} 8V16`}
      />
      <circle className={`ivd${look}`} cx={x(props.change)} cy="12" r="4" />
    </svg>
  );
}
