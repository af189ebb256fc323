import type { FoundCounts, NoOfferReason } from '@icewright/engine';
import { sheetSaid } from '../game-head.tsx';

/** Why nothing is offered: what was found, and what is missing. */
export const noOfferWords = (
  reason: NoOfferReason,
  { spots, circles, lines }: FoundCounts,
  sheet: Parameters<typeof sheetSaid>[0],
): string => {
  const found = `Found: ${counted(spots, 'spot')}, ${counted(circles, 'circle')}, ${counted(lines, 'straight line')}.`;
  switch (reason) {
    case 'noIce':
      return 'No ice was found in this picture: nothing bright and colourless is large enough.';
    case 'tooLittle':
      return `${found} That is too little to tell the view: it takes four spots, three and a line, or a circle with its spot and one more.`;
    case 'noView':
      return `${found} No view of this sheet explains the paint well enough.`;
    case 'twoViews':
      return `${found} Two different views explain the paint nearly as well; a picture with more of the sheet would tell.`;
    case 'otherSheet':
      return `${found} The paint goes better with another kind of sheet than ${sheetSaid(sheet)}: is that the sheet of this game?`;
    case 'tooFewPins':
      return `${found} The view is found, but too few marks are seen clearly enough to be measured.`;
    case 'pinsDisagree':
      return `${found} The marks that were measured do not agree with one another, so none is offered.`;
    case 'tooLoose':
      return `${found} The marks that were measured lie so that they would not hold the picture well enough.`;
  }
};

const counted = (count: number, word: string): string =>
  `${count === 0 ? 'no' : count} ${word}${count === 1 ? '' : 's'}`;
