import { drawIceCard } from '../card/draw-ice-card.ts';
import { PAGE } from '../card/page-measures.ts';
import { ICE_CARD } from './ice-card.plan.ts';
import type { Scene } from './scene.ts';

export default {
  title: 'The ice card, one A4 page',
  viewBox: [0, 0, PAGE.width, PAGE.height],
  digits: 2,
  draw: pen => drawIceCard(pen, ICE_CARD),
} satisfies Scene;
