import type { Game, Mark, Placed } from '@icewright/book';
import { clockText } from '../film-clock.ts';

export const KIND_SAID: Readonly<Record<Mark['kind'], string>> = {
  ring: 'Ring',
  lane: 'Lane',
  link: 'Link',
  arrow: 'Arrow',
  zone: 'Zone',
  ghost: 'Ghost',
  spotlight: 'Spotlight',
  text: 'Text',
};

/** Where marks lie, to whom no mark is in the hand. */
export const LIE_SAID =
  'On the ice marks lie under whoever is placed, followed or found standing there: in a picture that stands, in stills and in reels. While the film plays here they lie over everybody.';

/** What to do while a kind is in the hand, by how many places are put down already. */
export const layingHint = (kind: Mark['kind'], laidCount: number): string => {
  if (kind === 'zone')
    return laidCount < 3
      ? 'Press the corners of the zone on the ice, one after the other.'
      : 'Press its first or its last corner again, or Enter, to close it.';
  if (kind === 'ghost')
    return laidCount === 0
      ? 'Press the skater, or the ice where somebody should have been.'
      : 'Now press where he should have been.';
  if (kind === 'lane' || kind === 'arrow' || kind === 'link')
    return laidCount === 0
      ? `Drag from where it begins to where it ends, or press both.`
      : 'Now press where it ends.';
  if (kind === 'text') return 'Press where it is to stand, then write below.';
  return 'Press a skater, or a place on the ice.';
};

/** `Ring F1`, `Link F1 to X2`, `Text "stick down"`. */
export const markSaid = (mark: Mark, game: Pick<Game, 'tracks' | 'freezes'>): string => {
  const whos = mark.at.map(place => whoIsAt(place, game)).filter(one => one !== undefined);
  const on = whos.length > 0 ? ` ${whos.join(' to ')}` : '';
  return `${KIND_SAID[mark.kind]}${on}${mark.text === '' ? '' : ` “${mark.text}”`}`;
};

export const whoIsAt = (
  place: Mark['at'][number],
  game: Pick<Game, 'tracks' | 'freezes'>,
): string | undefined => personAt(place, game)?.role;

/** The skater on whom a place of a mark hangs. */
export const personAt = (
  place: Mark['at'][number],
  game: Pick<Game, 'tracks' | 'freezes'>,
): Pick<Placed, 'role' | 'skater'> | undefined =>
  (place.track && game.tracks[place.track]) ||
  (place.placed && game.freezes[place.placed.freeze]?.skaters[place.placed.placed]);

/** When it is seen. */
export const whenSaid = (mark: Mark, freezes: Game['freezes']): string => {
  const freeze = mark.freeze && freezes[mark.freeze];
  return freeze
    ? `while the freeze of ${clockText(freeze.filmTimeS, 1)} stands, ${freeze.holdS ?? 0} s in playback`
    : `${clockText(mark.fromS, 1)} to ${clockText(mark.toS, 1)}`;
};

/** Why nothing can be drawn yet. */
export const NOT_TIED =
  'Marks lie on the ice in metres, so that they stay where they are as the camera moves: this picture must be pinned first.';
