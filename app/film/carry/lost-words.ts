import type { NotCarried } from '@icewright/engine';

/** Why a frame has no ice, as the room says it. */
export const LOST_WORDS: Readonly<Record<NotCarried, string>> = {
  notTracked: 'The camera was not followed here',
  noPins: 'No frame of this stretch is pinned',
  cut: 'The picture is cut',
  tooFewPoints: 'There was too little to follow',
  noAgreement: 'The picture moved in no one way',
  noIceInView: 'The picture shows no ice',
};
