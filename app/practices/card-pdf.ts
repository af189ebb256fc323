import { cardPagesOf, drawIceCard, type IceCard } from '@icewright/picture';
import { paperPdf } from '../parts/paper-pdf.ts';

/** The card as a vector PDF. Loaded only when somebody prints. */
export const cardPdf = (card: IceCard): Promise<Blob> =>
  paperPdf({
    title: card.title,
    paper: 'a4',
    pages: cardPagesOf(card).map(page => pen => drawIceCard(pen, page)),
  });
