import { letterOf, type OfferedPerson } from './offered-people.ts';

/** Who was found, on the ice: fine broken rings with the letter of what they wear. */
export function MapOffered({
  offered,
  k,
}: {
  readonly offered: readonly OfferedPerson[];
  readonly k: number;
}) {
  return (
    <g className="map-offered">
      {offered.map(({ id, atM, group }) => (
        <g key={id}>
          <circle
            cx={atM.xM}
            cy={-atM.yM}
            r={0.45 * k}
            strokeWidth={0.1 * k}
            strokeDasharray={`${0.16 * k} ${0.2 * k}`}
          />
          <text x={atM.xM + 0.6 * k} y={-atM.yM - 0.4 * k} fontSize={0.95 * k} strokeWidth={0.28 * k}>
            {letterOf(group)}
          </text>
        </g>
      ))}
    </g>
  );
}
