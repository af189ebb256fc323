import {
  type End,
  type IcePoint,
  LINE_IDS,
  LINE_WORDS,
  landmarksOf,
  lineAtOtherEnd,
  type Rink,
} from '@icewright/engine';
import type { SnapTo } from './snap.ts';

const known = new WeakMap<Rink, Map<End, readonly SnapTo[]>>();

/** The markings that coaches set skaters by: dots, posts, hash marks, the lines, the dot lines, the circles. The lines are ours and theirs by the end that we attack. The same list each time for the same rink and end. */
export const rinkSnaps = (rink: Rink, attacked: End): readonly SnapTo[] => {
  const ofRink = known.get(rink) ?? new Map<End, readonly SnapTo[]>();
  known.set(rink, ofRink);
  const before = ofRink.get(attacked);
  if (before !== undefined) return before;
  const snaps = [...placesOf(rink), ...linesOf(rink, attacked), ...circlesOf(rink)];
  ofRink.set(attacked, snaps);
  return snaps;
};

const WORDS: Readonly<Record<string, string>> = {
  centreSpot: 'on the centre dot',
  neutralSpot: 'on the dot',
  endSpot: 'on the dot',
  goalPost: 'at the post',
  hashEnd: 'at the hash mark',
};

const placesOf = (rink: Rink): SnapTo[] =>
  landmarksOf(rink).flatMap(({ id, atM }) => {
    const words = WORDS[/^[a-zA-Z]+/.exec(id)?.[0] ?? ''];
    return words === undefined ? [] : [{ kind: 'point', atM, words }];
  });

const SIGNS = [1, -1] as const;

const linesOf = ({ lines, layout }: Rink, attacked: End): SnapTo[] => [
  ...LINE_IDS.map(id => {
    const said = LINE_WORDS[attacked === 'plusX' ? id : lineAtOtherEnd(id)];
    return { kind: 'x', xM: lines[id].centreXM, words: `on ${said}` } as const;
  }),
  ...SIGNS.flatMap(sign => [
    { kind: 'x', xM: sign * layout.endSpotM.xM, words: 'level with the dots' } as const,
    {
      kind: 'x',
      xM: sign * (layout.endSpotM.xM - layout.circleRadiusM),
      words: 'at the top of the circles',
    } as const,
    { kind: 'y', yM: sign * layout.endSpotM.yM, words: 'on the dot line' } as const,
  ]),
  { kind: 'y', yM: 0, words: 'in the middle of the ice' },
];

const circlesOf = (rink: Rink): SnapTo[] => {
  const { layout, area } = rink;
  const { xM, yM } = layout.endSpotM;
  const ends = SIGNS.flatMap(x => SIGNS.map(y => ({ xM: x * xM, yM: y * yM })));
  return [{ xM: 0, yM: 0 }, ...ends].filter(isIn(area)).map(centreM => ({
    kind: 'circle',
    centreM,
    // The middle of the painted line: the radius is its outer edge.
    radiusM: layout.circleRadiusM - layout.thinLineM / 2,
    words: 'on the circle',
  }));
};

const isIn =
  ({ minXM, maxXM, minYM, maxYM }: Rink['area']) =>
  ({ xM, yM }: IcePoint): boolean =>
    xM >= minXM && xM <= maxXM && yM >= minYM && yM <= maxYM;
