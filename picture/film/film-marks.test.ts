import { readFileSync } from 'node:fs';
import { fitPinsOn, type IcePoint, iceFromFilm, type PinFit, rinkOf } from '@icewright/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { recordingOf } from '../pen/recording-pen.ts';
import { drawFilmBeam, drawFilmMarks } from './draw-film-marks.ts';
import { FILM_MARK_KINDS, type FilmMark, type FilmView, placesWanted } from './film-mark.ts';
import { bandOf, hatchingOf, spotlightOnFilm, standingOnFilm } from './mark-shapes.ts';
import { areaOnFilm, heightOnFilm, lineOnFilm, pointOnFilm, ringOf } from './on-film.ts';

// Source of truth: films drawn by their own camera, whose exact matrix of every picture stands in fixtures/film-truth.
interface TruthFrame {
  readonly H: readonly (readonly number[])[];
  readonly landmarks: Readonly<Record<string, readonly [number, number]>>;
}
const framesOf = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../fixtures/film-truth/${name}`, import.meta.url), 'utf8')) as {
    frames: TruthFrame[];
    picture: { widthPx?: number; heightPx?: number };
    lens: { k1: number };
  };
const RINK = rinkOf({ preset: '200x85ft' });
const panning = framesOf('B.json');

const tied = panning.frames.flatMap(frame => {
  const pins = Object.entries(frame.landmarks).map(([id, [xPx, yPx]]) => ({
    id,
    landmark: id,
    filmPx: { xPx, yPx },
  }));
  const result = fitPinsOn(RINK, pins, 0.5);
  return result.kind === 'fit' ? [{ frame, view: viewOf(result.fit) }] : [];
});

function viewOf(fit: PinFit): FilmView {
  return { fit, widthPx: 1280, heightPx: 720, unitPx: 1 };
}

const middleOfPicture = (view: FilmView): IcePoint => {
  const at = iceFromFilm(view.fit, { xPx: 640, yPx: 430 }, { footSdPx: 0 });
  if (at.kind === 'none') throw new Error('the middle of the picture shows no ice');
  return at.atM;
};

describe('marks in perspective', () => {
  it('are tried on many pictures of a pan', () => {
    expect(tied.length).toBeGreaterThan(10);
  });

  it('a ring is the ellipse that projective geometry says', () => {
    // A conic C on the plane is seen as H⁻ᵀ C H⁻¹: Hartley & Zisserman 2004, result 2.13 (from memory).
    for (const { frame, view } of tied) {
      const middle = middleOfPicture(view);
      const conic = seenConic(frame.H, middle, 0.9);
      for (const { xPx, yPx } of areaOnFilm(view, ringOf(middle, 0.9))) {
        const value = quadratic(conic, xPx, yPx);
        const slope = Math.hypot(
          2 * (conic[0]![0]! * xPx + conic[0]![1]! * yPx + conic[0]![2]!),
          2 * (conic[0]![1]! * xPx + conic[1]![1]! * yPx + conic[1]![2]!),
        );
        expect(Math.abs(value / slope)).toBeLessThan(0.15);
      }
    }
  });

  it('every drawn point of a line lies on that line of the ice, and none is behind the camera', () => {
    const place = fc.record({
      xM: fc.double({ min: -60, max: 60, noNaN: true }),
      yM: fc.double({ min: -60, max: 60, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.nat(tied.length - 1), place, place, (which, from, to) => {
        const { view } = tied[which]!;
        const m = view.fit.filmFromIce;
        for (const piece of lineOnFilm(view, [from, to])) {
          for (const px of piece) {
            const t = view.fit.iceFromFilm;
            const w = t[6] * px.xPx + t[7] * px.yPx + t[8];
            const back = {
              xM: (t[0] * px.xPx + t[1] * px.yPx + t[2]) / w,
              yM: (t[3] * px.xPx + t[4] * px.yPx + t[5]) / w,
            };
            expect(distanceToLeg(back, from, to)).toBeLessThan(1e-3);
            expect(m[6] * back.xM + m[7] * back.yM + m[8]).toBeGreaterThan(0);
          }
        }
      }),
    );
  });

  it('an area that reaches behind the camera is cut, and one that lies there is gone', () => {
    const { view } = tied[0]!;
    const middle = middleOfPicture(view);
    const m = view.fit.filmFromIce;
    // Straight back, against the way in which depth grows.
    const length = Math.hypot(m[6], m[7]);
    const behind = (byM: number) => ({
      xM: middle.xM - (m[6] / length) * byM,
      yM: middle.yM - (m[7] / length) * byM,
    });
    const depthM = (m[6] * middle.xM + m[7] * middle.yM + m[8]) / length;
    expect(areaOnFilm(view, ringOf(behind(depthM + 30), 2))).toEqual([]);
    expect(pointOnFilm(view, behind(depthM + 30))).toBeUndefined();
    const cut = areaOnFilm(view, [middle, behind(depthM + 30), { xM: middle.xM + 3, yM: middle.yM }]);
    expect(cut.length).toBeGreaterThan(3);
    for (const { xPx, yPx } of cut) expect(Math.hypot(xPx, yPx)).toBeLessThan(40_000);
  });

  it('a bent picture shows a straight line where its lens does', () => {
    // fixtures/film-truth/README.md: p_shown = c + (p_ideal − c)(1 + k1 r²), r in half diagonals.
    const { frames, lens } = framesOf('C.json');
    const { H } = frames[0]!;
    const inverse = inverted(H);
    const fit = {
      ...tied[0]!.view.fit,
      filmFromIce: H.flat() as unknown as PinFit['filmFromIce'],
      iceFromFilm: inverse.flat() as unknown as PinFit['iceFromFilm'],
      lens: { k1: lens.k1, widthPx: 720, heightPx: 1280 },
    };
    const view = { fit, widthPx: 720, heightPx: 1280, unitPx: 1 };
    const at = applied(inverse, 360, 900);
    const shown = pointOnFilm(view, { xM: at[0], yM: at[1] })!;
    const r = 260 / Math.hypot(360, 640);
    expect(shown.xPx).toBeCloseTo(360, 6);
    expect(shown.yPx).toBeCloseTo(640 + 260 * (1 + lens.k1 * r * r), 6);
  });
});

describe('shapes on the ice', () => {
  it('hatching lies inside its zone, whatever its corners', () => {
    const corner = fc.record({
      xM: fc.integer({ min: -20, max: 20 }),
      yM: fc.integer({ min: -12, max: 12 }),
    });
    fc.assert(
      fc.property(
        fc.uniqueArray(corner, { minLength: 3, maxLength: 7, selector: ({ xM, yM }) => `${xM} ${yM}` }),
        corners => {
          for (const [from, to] of hatchingOf(corners)) {
            const middle = { xM: (from!.xM + to!.xM) / 2, yM: (from!.yM + to!.yM) / 2 };
            // A line may run along an edge: then it is on it, neither in nor out.
            expect(isInside(middle, corners) || fromEdgeM(middle, corners) < 1e-6).toBe(true);
          }
        },
      ),
    );
  });

  it('a lane has its width everywhere', () => {
    const { edges } = bandOf(
      [
        { xM: 1, yM: 2 },
        { xM: 7, yM: -3 },
      ],
      1.6,
    );
    const [one, other] = edges;
    for (let i = 0; i < 2; i++)
      expect(Math.hypot(one![i]!.xM - other![i]!.xM, one![i]!.yM - other![i]!.yM)).toBeCloseTo(1.6, 9);
  });
});

describe('the drawing of marks', () => {
  const { view } = tied[3]!;
  const middle = middleOfPicture(view);
  const whole = (kind: FilmMark['kind'], words = ''): FilmMark => ({
    kind,
    words,
    placesM: Array.from({ length: placesWanted(kind).least }, (_, i) => ({
      xM: middle.xM + 2 * i,
      yM: middle.yM + (i % 2) * 2,
    })),
  });
  const calls = (marks: readonly FilmMark[]) => recordingOf(pen => drawFilmMarks(pen, marks, view));

  it('draws something of every kind, with its casing, and its words', () => {
    for (const kind of FILM_MARK_KINDS) {
      const drawn = calls([whole(kind, 'said')]);
      expect(drawn.filter(one => one.call === 'path').length, kind).toBeGreaterThan(1);
      expect(
        drawn.some(one => one.call === 'text' && one.words === 'said'),
        kind,
      ).toBe(true);
    }
  });

  it('leaves every lit place light, also where two overlap: one clip for each', () => {
    const lit = [
      whole('spotlight'),
      { ...whole('spotlight'), placesM: [{ xM: middle.xM + 1, yM: middle.yM }] },
    ];
    const drawn = calls(lit);
    expect(drawn.filter(one => one.call === 'clip')).toHaveLength(2);
    expect(drawn.filter(one => one.call === 'path' && one.mark === 'filmShade')).toHaveLength(1);
    expect(calls([whole('ring')]).some(one => one.call === 'path' && one.mark === 'filmShade')).toBe(false);
  });

  it('lights all of whoever stands there, upright or leaning, and not what is behind and above him', () => {
    for (const { view } of tied) {
      const at = middleOfPicture(view);
      const { lit } = spotlightOnFilm(view, at, 1.5);
      const sideways = { xM: at.xM + 0.35, yM: at.yM };
      for (const { xPx, yPx } of [...standingOnFilm(view, at), ...standingOnFilm(view, sideways)].flat())
        expect(
          isInside(
            { xM: xPx, yM: yPx },
            lit.map(one => ({ xM: one.xPx, yM: one.yPx })),
          ),
        ).toBe(true);
      // Somebody tall on skates, and a hand above.
      const foot = pointOnFilm(view, at)!;
      expect(Math.min(...lit.map(one => one.yPx))).toBeGreaterThan(foot.yPx - heightOnFilm(view, at, 3.2));
    }
    const beam = recordingOf(pen => drawFilmBeam(pen, [whole('spotlight'), whole('ring')], view));
    expect(beam.filter(one => one.call === 'path' && one.mark === 'filmBeam')).toHaveLength(1);
    expect(recordingOf(pen => drawFilmBeam(pen, [whole('ring')], view))).toEqual([]);
  });

  it('draws nothing of a mark that lies behind the camera', () => {
    const m = view.fit.filmFromIce;
    const length = Math.hypot(m[6], m[7]);
    const far = { xM: middle.xM - (m[6] / length) * 400, yM: middle.yM - (m[7] / length) * 400 };
    for (const kind of FILM_MARK_KINDS) {
      const placesM = Array.from({ length: placesWanted(kind).least }, (_, i) => ({
        xM: far.xM + i,
        yM: far.yM + i * i,
      }));
      expect(
        calls([{ kind, placesM, words: 'x' }]).filter(one => one.call === 'path' || one.call === 'text'),
        kind,
      ).toEqual([]);
    }
  });
});

/** H⁻ᵀ C H⁻¹ of the circle round a place. */
const seenConic = (H: TruthFrame['H'], { xM, yM }: IcePoint, radiusM: number): number[][] => {
  const circle = [
    [1, 0, -xM],
    [0, 1, -yM],
    [-xM, -yM, xM * xM + yM * yM - radiusM * radiusM],
  ];
  const back = inverted(H);
  return product(product(transposed(back), circle), back);
};

const quadratic = (c: readonly (readonly number[])[], x: number, y: number): number =>
  c[0]![0]! * x * x +
  2 * c[0]![1]! * x * y +
  c[1]![1]! * y * y +
  2 * c[0]![2]! * x +
  2 * c[1]![2]! * y +
  c[2]![2]!;

const product = (a: readonly (readonly number[])[], b: readonly (readonly number[])[]): number[][] =>
  a.map(row => b[0]!.map((_, j) => row.reduce((sum, value, k) => sum + value * b[k]![j]!, 0)));

const transposed = (a: readonly (readonly number[])[]): number[][] =>
  a[0]!.map((_, j) => a.map(row => row[j]!));

/** By cofactors. */
const inverted = (m: readonly (readonly number[])[]): number[][] => {
  const [[a, b, c], [d, e, f], [g, h, i]] = m as [number, number, number][] as [
    [number, number, number],
    [number, number, number],
    [number, number, number],
  ];
  const determinant = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
  return [
    [e * i - f * h, c * h - b * i, b * f - c * e],
    [f * g - d * i, a * i - c * g, c * d - a * f],
    [d * h - e * g, b * g - a * h, a * e - b * d],
  ].map(row => row.map(value => value / determinant));
};

const applied = (m: readonly (readonly number[])[], x: number, y: number): [number, number] => {
  const [u, v, w] = m.map(row => row[0]! * x + row[1]! * y + row[2]!) as [number, number, number];
  return [u / w, v / w];
};

const distanceToLeg = (at: IcePoint, a: IcePoint, b: IcePoint): number => {
  const [dx, dy] = [b.xM - a.xM, b.yM - a.yM];
  const square = dx * dx + dy * dy;
  const share =
    square === 0 ? 0 : Math.max(0, Math.min(1, ((at.xM - a.xM) * dx + (at.yM - a.yM) * dy) / square));
  return Math.hypot(at.xM - a.xM - share * dx, at.yM - a.yM - share * dy);
};

/** By counting the edges to the right of a point. */
const isInside = ({ xM, yM }: IcePoint, corners: readonly IcePoint[]): boolean =>
  corners.reduce((inside, a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    const crosses = a.yM > yM !== b.yM > yM && xM < a.xM + ((yM - a.yM) / (b.yM - a.yM)) * (b.xM - a.xM);
    return crosses ? !inside : inside;
  }, false);

const fromEdgeM = ({ xM, yM }: IcePoint, corners: readonly IcePoint[]): number =>
  Math.min(
    ...corners.map((a, i) => {
      const b = corners[(i + 1) % corners.length]!;
      const [dx, dy] = [b.xM - a.xM, b.yM - a.yM];
      const along = Math.max(0, Math.min(1, ((xM - a.xM) * dx + (yM - a.yM) * dy) / (dx * dx + dy * dy)));
      return Math.hypot(a.xM + along * dx - xM, a.yM + along * dy - yM);
    }),
  );
