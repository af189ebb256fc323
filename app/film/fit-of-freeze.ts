import type { Freeze, Game, Team } from '@icewright/book';
import {
  type FitResult,
  fitOfKept,
  fitPinsOn,
  type NamedPin,
  type PinFit,
  pictureOnIce,
  type Rink,
  rinkOf,
  type SceneOfFreeze,
  sceneFromFreeze,
} from '@icewright/engine';

/** The sheet a game was played on: its own where somebody said so, else the team's. */
export const sheetOfGame = (game: Pick<Game, 'rink'>, team: Pick<Team, 'rink'>): Team['rink'] =>
  game.rink ?? team.rink;

const rinks = new Map<string, Rink>();

/** The same object for the same sheet, so that what hangs on it is not worked out again. */
export const rinkOfSheet = (sheet: Team['rink']): Rink => {
  const key = JSON.stringify(sheet);
  const rink = rinks.get(key) ?? rinkOf(sheet);
  rinks.set(key, rink);
  return rink;
};

/** The pins of a freeze that are counted. */
export const namedPinsOf = ({ pins }: Pick<Freeze, 'pins'>): NamedPin[] =>
  Object.entries(pins).flatMap(([id, pin]) =>
    pin.leftOut ? [] : [{ id, landmark: pin.landmark, filmPx: pin.at }],
  );

/** By its own pins; where they do not hold the picture, by those carried to it. */
export const fitOfFreeze = (freeze: Freeze, rink: Rink): FitResult => {
  const own = ownFitOf(freeze, rink);
  return own.kind === 'fit' || !freeze.carried
    ? own
    : { kind: 'fit', fit: fitOfKept(freeze.carried, freeze.picture) };
};

/** By the pins that were put down in this very picture. */
export const ownFitOf = (freeze: Pick<Freeze, 'pins' | 'clickSdPx'>, rink: Rink): FitResult =>
  fitPinsOn(rink, namedPinsOf(freeze), freeze.clickSdPx);

/** The freeze on the ice, metres, by a fit of its pins. */
export const sceneOfFreeze = (freeze: Freeze, fit: PinFit, rink: Rink): SceneOfFreeze =>
  sceneFromFreeze({
    fit,
    rink,
    attacks: freeze.attacks,
    ...(freeze.allPlaced === 'onIce' ? { isEveryonePlaced: true } : {}),
    ...(freeze.allPlaced === 'inPicture'
      ? { allOfUsPlacedInM: pictureOnIce(fit, freeze.picture, rink.boards) }
      : {}),
    skaters: Object.entries(freeze.skaters).map(([id, { side, kind, role, feet, feetSdPx }]) => ({
      id,
      side,
      kind,
      role,
      feetPx: feet,
      ...(feetSdPx === undefined ? {} : { footSdPx: feetSdPx }),
    })),
    ...(freeze.puck
      ? {
          puck: {
            atPx: freeze.puck.at,
            ...(freeze.puck.carrier ? { carrierId: freeze.puck.carrier } : {}),
          },
        }
      : {}),
  });
