import { PAPER_MEASURE } from '../pen/paper-measure.ts';
import { GROUP_LINE, peopleHeight, peopleLines } from './card-people.ts';
import type { IceCard } from './ice-card.ts';
import { mm, PAPERS, type Page, type Paper } from './page-measures.ts';

export const CARD_BLOCKS_A_PAGE = 8;
/** What head, cautions and key take at most. */
const HEAD_AND_FOOT = mm(60);
/** Lower than this a block with a drawing cannot be read from the ice. */
const LEAST_ROW = mm(19);

/**
 * One card a page: eight blocks fit, more go on. People stand on the first page where they leave the blocks their
 * room, and else on pages of their own, for nobody is left out; cautions and key stand on each.
 */
export const cardPagesOf = (card: IceCard, paper: Paper = 'a4'): readonly IceCard[] => {
  const page = PAPERS[paper];
  const blockPages = pagesOfBlocks(card);
  const own = fitsBelow(card, blockPages[0]!.length, page) ? [] : pagesOfPeople(card, page);
  const pages = [
    ...blockPages.map((blocks, index) =>
      index === 0 && own.length === 0 ? { blocks } : { blocks, groups: [], note: '' },
    ),
    ...own.map((groups, index) => ({ blocks: [], groups, note: index === own.length - 1 ? card.note : '' })),
  ];
  return pages.map((part, index) => ({
    ...card,
    ...part,
    title: pages.length > 1 ? `${card.title}, page ${index + 1} of ${pages.length}` : card.title,
  }));
};

const pagesOfBlocks = ({ blocks }: IceCard): IceCard['blocks'][] => {
  const count = Math.max(1, Math.ceil(blocks.length / CARD_BLOCKS_A_PAGE));
  const each = Math.ceil(blocks.length / count);
  return Array.from({ length: count }, (_, page) => blocks.slice(page * each, (page + 1) * each));
};

const fitsBelow = (card: IceCard, blockCount: number, page: Page): boolean =>
  peopleHeight(PAPER_MEASURE, card, page) <= roomOf(page) - blockCount * LEAST_ROW;

const pagesOfPeople = ({ groups }: IceCard, page: Page): IceCard['groups'][] => {
  const most = Math.floor(roomOf(page) / GROUP_LINE) - 3;
  const pages: IceCard['groups'][number][][] = [[]];
  for (const group of groups) {
    const open = pages.at(-1)!;
    const isFull = peopleLines(PAPER_MEASURE, { groups: [...open, group], note: '' }, page) > most;
    if (isFull && open.length > 0) pages.push([group]);
    else open.push(group);
  }
  return pages;
};

const roomOf = (page: Page): number => page.bottom - page.top - HEAD_AND_FOOT;
