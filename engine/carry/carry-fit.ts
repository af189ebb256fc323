import { inverse3, product3 } from '../film/matrix.ts';
import type { Matrix3, PinFit } from '../film/pins.ts';
import { composed, matrixOf, type PlaneScale, placeThrough, type ScaledMap } from './scaled-map.ts';

/** A fit as a map from the ice to the picture. */
export const mapOfFit = ({
  scaling,
  coefficients,
  covariance,
}: Pick<PinFit, 'scaling' | 'coefficients' | 'covariance'>): ScaledMap => ({
  from: { x: scaling.iceXM, y: scaling.iceYM, per: scaling.icePerM },
  to: { x: scaling.filmXPx, y: scaling.filmYPx, per: scaling.filmPerPx },
  coefficients,
  covariance,
});

/**
 * A fit of one picture carried to another by the camera's move between them, with the ± of both. Null when the middle of
 * the new picture shows no ice. Source: composition of projective maps, first-order propagation (Hartley & Zisserman 2004, 5).
 */
export const carriedFit = (
  fit: PinFit,
  move: ScaledMap,
  picture: { readonly widthPx: number; readonly heightPx: number },
): PinFit | null => {
  const map = mapOfFit(fit);
  const scales = scalesFor(product3(matrixOf(move), matrixOf(map)), picture);
  if (scales === null) return null;
  const carried = composed(move, map, scales.ice, scales.film);
  return carried === null ? null : fitOfMap(carried, fit);
};

/** A map from the ice to the picture as a fit; what is said of its pins is that of another. */
export const fitOfMap = (
  map: ScaledMap,
  of: Pick<PinFit, 'residuals' | 'rmsPx' | 'pinSdPx' | 'sdRaised' | 'disagreement'>,
): PinFit => {
  const filmFromIce = matrixOf(map);
  return {
    filmFromIce,
    iceFromFilm: inverse3(filmFromIce),
    scaling: {
      iceXM: map.from.x,
      iceYM: map.from.y,
      icePerM: map.from.per,
      filmXPx: map.to.x,
      filmYPx: map.to.y,
      filmPerPx: map.to.per,
    },
    coefficients: Array.from(map.coefficients),
    covariance: Array.from(map.covariance),
    residuals: of.residuals,
    rmsPx: of.rmsPx,
    pinSdPx: of.pinSdPx,
    sdRaised: of.sdRaised,
    ...(of.disagreement ? { disagreement: of.disagreement } : {}),
  };
};

/** Below the middle of the picture, where a rink camera sees ice. */
const MIDDLE = { across: 0.5, down: 0.6 } as const;

const scalesFor = (
  filmFromIce: Matrix3,
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
): { ice: PlaneScale; film: PlaneScale } | null => {
  const back = inverse3(filmFromIce);
  const [x, y] = [widthPx * MIDDLE.across, heightPx * MIDDLE.down];
  const middle = placeThrough(back, x, y);
  if (middle === null) return null;
  const aside = [placeThrough(back, x - widthPx / 4, y), placeThrough(back, x + widthPx / 4, y)];
  const reachM = Math.max(
    ...aside.map(place => (place === null ? 0 : Math.hypot(place[0] - middle[0], place[1] - middle[1]))),
  );
  if (!(reachM > 0)) return null;
  return {
    ice: { x: middle[0], y: middle[1], per: Math.SQRT2 / reachM },
    film: { x, y, per: (4 * Math.SQRT2) / widthPx },
  };
};
