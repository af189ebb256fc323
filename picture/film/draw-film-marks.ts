import type { FilmPoint, IcePoint } from '@icewright/engine';
import type { MarkName } from '../marks.ts';
import type { PathSink, Pen } from '../pen/pen.ts';
import { drawMarkWords } from './draw-mark-words.ts';
import { type FilmMark, type FilmView, POLE_M, sizeOf } from './film-mark.ts';
import {
  bandOf,
  barAt,
  hatchingOf,
  headOf,
  type LitPlace,
  spotlightOnFilm,
  standingOnFilm,
} from './mark-shapes.ts';
import { areaOnFilm, heightOnFilm, lineOnFilm, pointOnFilm, ringOf } from './on-film.ts';

/**
 * All marks of one picture as they lie on its ice, over the picture and in its pixels. Shade first, then what lies on the
 * ice, then what stands on it, then words.
 */
export const drawFilmMarks = (pen: Pen, marks: readonly FilmMark[], view: FilmView): void => {
  drawFilmShade(pen, marks, view);
  drawMarksOnIce(pen, marks, view);
  drawMarksAbove(pen, marks, view);
};

/** Everything outside the spotlights is darker, whoever stands there too. */
export const drawFilmShade = (pen: Pen, marks: readonly FilmMark[], view: FilmView): void =>
  pen.place({ k: view.unitPx }, () => shade(pen, litPlaces(marks, view), view));

/**
 * The ice in the light is a little darker too, so that whoever stands in it is the brightest thing; drawn only where it is known who that is,
 * for it goes under him.
 */
export const drawFilmBeam = (pen: Pen, marks: readonly FilmMark[], view: FilmView): void => {
  const lit = litPlaces(marks, view);
  if (lit.length === 0) return;
  pen.path('filmBeam', sink => {
    for (const { lit: area } of lit) trace(sink, area, true);
  });
};

/** What lies on the ice, and goes under who stands on it. */
export const drawMarksOnIce = (pen: Pen, marks: readonly FilmMark[], view: FilmView): void =>
  pen.place({ k: view.unitPx }, () => {
    for (const { ground } of litPlaces(marks, view)) outlined(pen, 'filmEdge', ground);
    drawKinds(pen, marks, view, ['zone', 'lane', 'ring', 'arrow', 'link']);
  });

/** What stands on the ice, and all words and figures. */
export const drawMarksAbove = (pen: Pen, marks: readonly FilmMark[], view: FilmView): void =>
  pen.place({ k: view.unitPx }, () => {
    drawKinds(pen, marks, view, ['ghost', 'text']);
    drawMarkWords(pen, marks, view);
  });

type DrawnKind = Exclude<FilmMark['kind'], 'spotlight'>;

const drawKinds = (
  pen: Pen,
  marks: readonly FilmMark[],
  view: FilmView,
  kinds: readonly DrawnKind[],
): void => {
  for (const kind of kinds)
    for (const mark of marks) if (mark.kind === kind && mark.placesM.length > 0) DRAW[kind](pen, mark, view);
};

const DRAW: Readonly<Record<DrawnKind, (pen: Pen, mark: FilmMark, view: FilmView) => void>> = {
  ring: (pen, mark, view) =>
    outlined(pen, 'filmRing', areaOnFilm(view, ringOf(mark.placesM[0]!, sizeOf(mark))), 'filmRingCasing'),
  zone: (pen, mark, view) => {
    const area = areaOnFilm(view, mark.placesM);
    if (area.length < 3) return;
    fill(pen, 'filmGround', area);
    for (const line of hatchingOf(mark.placesM)) stroke(pen, 'filmRuling', lineOnFilm(view, line));
    outlined(pen, 'filmLine', area);
  },
  lane: (pen, mark, view) => {
    const band = bandOf(mark.placesM, sizeOf(mark));
    fill(pen, 'filmGround', areaOnFilm(view, band.area));
    const edges = band.edges.flatMap(edge => lineOnFilm(view, edge));
    stroke(pen, 'filmCasing', edges);
    stroke(pen, 'filmEdge', edges);
  },
  ghost: (pen, mark, view) => {
    const to = mark.placesM[mark.placesM.length - 1]!;
    if (mark.placesM.length > 1) way(pen, mark.placesM, view);
    for (const part of standingOnFilm(view, to)) {
      fill(pen, 'filmGhostBody', part);
      outlined(pen, 'filmGhost', part);
    }
    outlined(pen, 'filmGhost', areaOnFilm(view, ringOf(to, sizeOf(mark))));
  },
  arrow: (pen, mark, view) => {
    const { shaft, head } = headOf(mark.placesM);
    const line = lineOnFilm(view, shaft);
    stroke(pen, 'filmCasing', line);
    stroke(pen, 'filmLine', line);
    fill(pen, 'filmHead', areaOnFilm(view, head));
  },
  link: (pen, mark, view) => {
    const [from, to] = ends(mark.placesM);
    const line = [
      ...lineOnFilm(view, [from, to]),
      ...[barAt(from, to), barAt(to, from)].flatMap(bar => lineOnFilm(view, bar)),
    ];
    stroke(pen, 'filmCasing', line);
    stroke(pen, 'filmBar', line);
  },
  text: (pen, mark, view) => {
    const [at] = mark.placesM;
    const foot = at && pointOnFilm(view, at);
    if (!foot) return;
    const up = [[foot, { xPx: foot.xPx, yPx: foot.yPx - heightOnFilm(view, at, POLE_M) }]];
    stroke(pen, 'filmCasing', up);
    stroke(pen, 'filmEdge', up);
  },
};

const litPlaces = (marks: readonly FilmMark[], view: FilmView): LitPlace[] =>
  marks
    .filter(one => one.kind === 'spotlight')
    .map(one => spotlightOnFilm(view, one.placesM[0]!, sizeOf(one)))
    .filter(one => one.ground.length > 2);

/** A clip for each of the lit places, so that where two overlap it stays light. */
const shade = (pen: Pen, lit: readonly LitPlace[], view: FilmView): void => {
  const { widthPx, heightPx } = view;
  if (lit.length === 0) return;
  const under = (left: readonly (readonly FilmPoint[])[]): void => {
    const [hole, ...others] = left;
    if (!hole) {
      pen.path('filmShade', sink => sink.rect(0, 0, widthPx, heightPx));
      return;
    }
    pen.clip(
      sink => {
        sink.rect(0, 0, widthPx, heightPx);
        trace(sink, isClockwise(hole) ? [...hole].reverse() : hole, true);
      },
      () => under(others),
    );
  };
  under(lit.map(one => one.lit));
};

/** A rectangle is traced clockwise on the page; a hole in it goes the other way round. */
const isClockwise = (outline: readonly FilmPoint[]): boolean =>
  outline.reduce((sum, a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    return sum + a.xPx * b.yPx - b.xPx * a.yPx;
  }, 0) > 0;

const way = (pen: Pen, placesM: readonly IcePoint[], view: FilmView): void => {
  const { shaft, head } = headOf(placesM, WAY_SHORT_M);
  const line = lineOnFilm(view, shaft);
  stroke(pen, 'filmCasing', line);
  stroke(pen, 'filmWay', line);
  fill(pen, 'filmWayHead', areaOnFilm(view, head));
};
/** The way to a ghost ends at its ring. */
const WAY_SHORT_M = 0.9;

const ends = (placesM: readonly IcePoint[]): [IcePoint, IcePoint] => [
  placesM[0]!,
  placesM[placesM.length - 1]!,
];

const outlined = (
  pen: Pen,
  mark: MarkName,
  area: readonly FilmPoint[],
  casing: MarkName = 'filmCasing',
): void => {
  if (area.length < 3) return;
  pen.path(casing, sink => trace(sink, area, true));
  pen.path(mark, sink => trace(sink, area, true));
};

const fill = (pen: Pen, mark: MarkName, area: readonly FilmPoint[]): void => {
  if (area.length > 2) pen.path(mark, sink => trace(sink, area, true));
};

const stroke = (pen: Pen, mark: MarkName, lines: readonly (readonly FilmPoint[])[]): void => {
  if (lines.length === 0) return;
  pen.path(mark, sink => {
    for (const line of lines) trace(sink, line, false);
  });
};

const trace = (sink: PathSink, line: readonly FilmPoint[], closed: boolean): void => {
  for (const [i, { xPx, yPx }] of line.entries()) {
    if (i === 0) sink.moveTo(xPx, yPx);
    else sink.lineTo(xPx, yPx);
  }
  if (closed) sink.closePath();
};
