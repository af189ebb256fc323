import type { FreezeView } from '../freeze-view.ts';
import type { Candidate } from './offered-here.ts';

/** Where the pins offered lie on the sheet, broken: turned round, they lie at the other end. */
export function MapPinsOffered({
  candidates,
  view,
  k,
}: {
  readonly candidates: readonly Candidate[];
  readonly view: FreezeView;
  readonly k: number;
}) {
  const placeOf = new Map(view.landmarks.map(({ id, atM }) => [id as string, atM]));
  const d = candidates
    .flatMap(({ landmark }) => placeOf.get(landmark) ?? [])
    .map(({ xM, yM }) => `M${xM - 0.7 * k} ${-yM}h${1.4 * k}M${xM} ${-yM - 0.7 * k}v${1.4 * k}`)
    .join('');
  return (
    <path
      className="map-pins-offered"
      data-testid="map-pins-offered"
      d={d}
      strokeWidth={0.16 * k}
      strokeDasharray={`${0.3 * k} ${0.2 * k}`}
    />
  );
}
