/** A word that is to be drawn: where its middle would best be, on its baseline, in the units of its drawing. */
export interface Word {
  readonly key: string;
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
  /** Where it stands next best, when its own place is taken. */
  readonly else?: WordPlace;
}

/** Somebody who is seen: a name over him is read as his, so only his own may stand there. */
export interface Body {
  /** The word that is his. */
  readonly key: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface Disc {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

export interface WordPlace {
  readonly x: number;
  readonly y: number;
}

/**
 * Where words stand so that none covers another or a disc: each keeps its own place when that is free, else takes the
 * nearest free one around it, else the one that covers least; a name never lies on somebody else as long as there is room. Earlier
 * words go before later ones.
 */
export const wordPlaces = (
  words: readonly Word[],
  discs: readonly Disc[],
  bodies: readonly Body[] = [],
  /** Of the drawing: what stands over its edge is cut off. */
  edges?: Omit<Body, 'key'>,
): ReadonlyMap<string, WordPlace> => {
  const places = new Map<string, WordPlace>();
  const taken: Box[] = discs.map(({ x, y, r }) => ({ left: x - r, right: x + r, top: y - r, bottom: y + r }));
  for (const word of words) {
    let best: WordPlace = word;
    let least = Number.POSITIVE_INFINITY;
    for (const place of placesAround(word)) {
      const box = boxOf(word, place);
      const covered =
        taken.reduce((sum, other) => sum + overlap(box, other), 0) +
        bodies.reduce((sum, body) => sum + (body.key === word.key ? 0 : overlap(box, body)), 0) +
        (edges ? outside(box, edges) : 0);
      if (covered < least - 1e-9) {
        least = covered;
        best = { x: place.x, y: place.y };
      }
      if (covered === 0) break;
    }
    places.set(word.key, best);
    taken.push(boxOf(word, best));
  }
  return places;
};

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Mean advance of a figure or letter of our condensed face, in its size; a little wide on purpose. */
const ADVANCE = 0.55;
const ASCENT = 0.8;
const DESCENT = 0.22;

/** W and M take as much as a letter and a half: RW and LW are names of many. */
const advancesOf = (text: string): number =>
  [...text].reduce((sum, letter) => sum + (letter === 'W' || letter === 'M' ? 1.5 : 1), 0) * ADVANCE;

const boxOf = ({ text, size }: Word, { x, y }: WordPlace): Box => {
  const half = (advancesOf(text) * size) / 2;
  return { left: x - half, right: x + half, top: y - ASCENT * size, bottom: y + DESCENT * size };
};

const overlap = (a: Box, b: Box): number =>
  Math.max(0, Math.min(a.right, b.right) - Math.max(a.left, b.left)) *
  Math.max(0, Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top));

/** How much of a box lies over the edges. */
const outside = (box: Box, edges: Box): number =>
  (box.right - box.left) * (box.bottom - box.top) - overlap(box, edges);

const WAYS = 12;
const RINGS = 8;

/** Its own place, the next best, then rings around the first, nearest first, above and below before the sides. */
function* placesAround({ x, y, size, else: second }: Word): Generator<WordPlace> {
  yield { x, y };
  if (second) yield second;
  for (let ring = 1; ring <= RINGS; ring++) {
    for (let way = 0; way < WAYS; way++) {
      const turnRad = -Math.PI / 2 + (way % 2 === 0 ? 1 : -1) * Math.ceil(way / 2) * ((2 * Math.PI) / WAYS);
      const reach = 0.8 * ring * size;
      yield { x: x + 1.6 * Math.cos(turnRad) * reach, y: y + Math.sin(turnRad) * reach };
    }
  }
}
