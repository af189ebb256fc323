import { type Game, inOrder } from '@icewright/book';

/** Upper Sedge, at home. */
export const gameTitle = (game: Pick<Game, 'opponent' | 'place'>): string =>
  game.opponent === '' ? 'Game without a name' : `${game.opponent}, ${PLACE[game.place]}`;

/** The file names of its films, where nothing else tells a game from others of its day. */
export const filesOfUnnamed = ({ opponent, films }: Pick<Game, 'opponent' | 'films'>): string =>
  opponent === ''
    ? inOrder(films)
        .map(([, { fileName }]) => fileName)
        .filter(Boolean)
        .join(', ')
    : '';

/** won 4–2. */
export const resultWords = ({ score }: Pick<Game, 'score'>): string => {
  if (!score) return '';
  const word = score.us > score.them ? 'won' : score.us < score.them ? 'lost' : 'tied';
  return `${word} ${score.us}–${score.them}`;
};

const PLACE = { home: 'at home', away: 'away', neutral: 'on neutral ice' } as const;
