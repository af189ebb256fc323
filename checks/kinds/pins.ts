import { type FilmPoint, fitPins, iceFromFilm, type Matrix3, type Pin, type PinFit } from '@icewright/engine';
import type { Compare } from '../compare.ts';
import { CaseShapeError, type Fields } from '../fields.ts';
import type { Kind, KindCase } from '../kind.ts';

/** Cases with `pins`: fits of gate times share the names `fit` and `refuse`. */
const hasPins = (input: Fields): boolean => input.has('pins');

/** The matrix at its optimum, the places of test pixels, and their covariance for the click said in the case. */
const runFit = ({ input, expected, tolerance }: KindCase, compare: Compare): void => {
  const clickSdPx = input.number('pinSigmaPx');
  const fit = fitOf(pinsOf(input), clickSdPx, compare);
  if (fit === null) return;
  compare.number('rmsPx', fit.rmsPx, expected.number('rmsPx'), tolerance.numberOr('rmsPx', 1e-5), 'px');
  compareMatrix(fit, matrixOf(expected, 'homographyFilmFromIce'), pinsOf(input), tolerance, compare);
  const covariances = expected.table('covarianceM2');
  const simulated = expected.has('monteCarloM2') ? expected.table('monteCarloM2') : [];
  const places = expected.pairs('iceM');
  // The engine raises the ± where the pins show more than the click; the case asks for the click's own.
  const asSaid = (clickSdPx / fit.pinSdPx) ** 2;
  input.pairs('testPx').forEach(([xPx, yPx], index) => {
    const placed = iceFromFilm(fit, { xPx, yPx }, { footSdPx: 0 });
    compare.same(`placed[${index}]`, placed.kind, 'placed');
    if (placed.kind === 'none') return;
    const { atM, covM2 } = placed;
    compare.pair(`iceM[${index}]`, [atM.xM, atM.yM], places[index]!, tolerance.numberOr('iceM', 1e-6), 'm');
    const computed = [covM2.xxM2, covM2.xyM2, covM2.yyM2].map(value => value * asSaid);
    compareCovariance(
      `covarianceM2[${index}]`,
      computed,
      covariances[index]!,
      tolerance.numberOr('covarianceRelative', 1e-3),
      compare,
    );
    const bySimulation = simulated[index];
    if (bySimulation === undefined) return;
    compareAxes(
      `monteCarloM2[${index}]`,
      computed,
      bySimulation,
      tolerance.numberOr('monteCarloRelative', 0.1),
      compare,
    );
  });
};

const REASONS: Readonly<Record<string, string>> = {
  tooFew: 'tooFew',
  onOneLine: 'collinear',
  samePlace: 'duplicates',
};

const runRefuse = ({ input, expected }: KindCase, compare: Compare): void => {
  const result = fitPins(pinsOf(input), input.numberOr('pinSigmaPx', 1));
  compare.same('refuse', result.kind === 'refused', expected.flag('refuse'));
  if (result.kind === 'refused' && expected.has('reason')) {
    compare.same('reason', REASONS[result.reason] ?? result.reason, expected.text('reason'));
  }
};

const runOutlier = ({ input, expected, tolerance }: KindCase, compare: Compare): void => {
  const pins = pinsOf(input);
  const clickSdPx = input.number('pinSigmaPx');
  const fit = fitOf(pins, clickSdPx, compare);
  if (fit === null) return;
  const { disagreement } = fit;
  const rmsAllowed = tolerance.numberOr('rmsPx', 1e-5);
  // With a gross error in it OpenCV stops a little before the optimum (by 2 in a million in "outlier 05").
  compare.relative('rmsAllPx', fit.rmsPx, expected.number('rmsAllPx'), 1e-5, rmsAllowed);
  const named = disagreement?.kind === 'onePin' ? disagreement.pin : null;
  compare.same('outlierIndex', named, String(expected.number('outlierIndex')));
  if (disagreement?.kind !== 'onePin') return;
  // A thousand pixels off, the miss itself moves by more than a fit's residual does.
  compare.relative('missPx', disagreement.byPx, expected.number('missPx'), 1e-6, 1e-6);
  const others = pins.filter(pin => pin.id !== named);
  const without = fitOf(others, clickSdPx, compare);
  if (without === null) return;
  compare.number('rmsWithoutPx', without.rmsPx, expected.number('rmsWithoutPx'), rmsAllowed, 'px');
  compareMatrix(without, matrixOf(expected, 'homographyFilmFromIceWithout'), others, tolerance, compare);
};

export const PIN_KINDS: readonly Kind[] = [
  { name: 'fit', fits: hasPins, run: runFit },
  { name: 'refuse', fits: hasPins, run: runRefuse },
  { name: 'outlier', fits: hasPins, run: runOutlier },
];

const pinsOf = (input: Fields): Pin[] =>
  input.fieldsList('pins').map((pin, index) => {
    const [xM, yM] = pin.pair('iceM');
    const [xPx, yPx] = pin.pair('filmPx');
    return { id: String(index), iceM: { xM, yM }, filmPx: { xPx, yPx } };
  });

const fitOf = (pins: readonly Pin[], clickSdPx: number, compare: Compare): PinFit | null => {
  const result = fitPins(pins, clickSdPx);
  compare.same('pins', result.kind === 'fit' ? 'fit' : `refused: ${result.reason}`, 'fit');
  return result.kind === 'fit' ? result.fit : null;
};

const matrixOf = (expected: Fields, name: string): Matrix3 => {
  const rows = expected.table(name);
  if (rows.length !== 3 || rows.some(row => row.length !== 3)) {
    throw new CaseShapeError(`expected.${name} is not three rows of three numbers`);
  }
  return rows.flat() as unknown as Matrix3;
};

/** Matrices are compared by where they put the pins on the ice, not by their entries. */
const compareMatrix = (
  fit: PinFit,
  matrix: Matrix3,
  pins: readonly Pin[],
  tolerance: Fields,
  compare: Compare,
): void => {
  for (const { id, iceM } of pins) {
    const w = matrix[6] * iceM.xM + matrix[7] * iceM.yM + matrix[8];
    const drawnPx: FilmPoint = {
      xPx: (matrix[0] * iceM.xM + matrix[1] * iceM.yM + matrix[2]) / w,
      yPx: (matrix[3] * iceM.xM + matrix[4] * iceM.yM + matrix[5]) / w,
    };
    const m = fit.iceFromFilm;
    const t = m[6] * drawnPx.xPx + m[7] * drawnPx.yPx + m[8];
    compare.pair(
      `pin ${id} by the matrix`,
      [
        (m[0] * drawnPx.xPx + m[1] * drawnPx.yPx + m[2]) / t,
        (m[3] * drawnPx.xPx + m[4] * drawnPx.yPx + m[5]) / t,
      ],
      [iceM.xM, iceM.yM],
      tolerance.numberOr('iceM', 1e-6),
      'm',
    );
  }
};

/** Relative to the size of the ellipse, so that a small covariance between large variances counts as little as it is. */
const compareCovariance = (
  what: string,
  computed: readonly number[],
  expected: readonly number[],
  allowedRatio: number,
  compare: Compare,
): void => {
  const size = Math.sqrt(expected[0]! * expected[2]!);
  compare.relative(`${what} xx`, computed[0]!, expected[0]!, allowedRatio, 0);
  compare.relative(`${what} xy`, computed[1]! + size, expected[1]! + size, allowedRatio, 0);
  compare.relative(`${what} yy`, computed[2]!, expected[2]!, allowedRatio, 0);
};

/** The two axes of the simulated ellipse: variances along its own directions. */
const compareAxes = (
  what: string,
  computed: readonly number[],
  expected: readonly number[],
  allowedRatio: number,
  compare: Compare,
): void => {
  const [xx, xy, yy] = [expected[0]!, expected[1]!, expected[2]!];
  const angle = Math.atan2(2 * xy, xx - yy) / 2;
  for (const [name, turn] of [
    ['long axis', 0],
    ['short axis', Math.PI / 2],
  ] as const) {
    const [c, s] = [Math.cos(angle + turn), Math.sin(angle + turn)];
    const along = ([a, b, d]: readonly number[]) => Math.sqrt(c * c * a! + 2 * c * s * b! + s * s * d!);
    compare.relative(`${what} ${name}`, along(computed), along(expected), allowedRatio, 0);
  }
};
