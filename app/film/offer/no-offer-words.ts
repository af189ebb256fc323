import type { FoundCounts, NoOfferReason } from '@icewright/engine';
import { sheetSaid } from '../game-head.tsx';

/** Why nothing is offered: what was found, what is missing, and the one thing to try. */
export const noOfferWords = (
  reason: NoOfferReason,
  { spots, circles, lines }: FoundCounts,
  sheet: Parameters<typeof sheetSaid>[0],
): string => {
  const found = `Found: ${counted(spots, 'spot')}, ${counted(circles, 'circle')}, ${counted(lines, 'straight line')}.`;
  switch (reason) {
    case 'noIce':
      return 'No ice was found in this picture: nothing bright and colourless is large enough. Try a frame that shows more of the sheet.';
    case 'tooLittle':
      return `${found} That is too little to tell the view: it takes four spots, three and a line, or a circle with its spot and one more. ${spots + circles > 0 ? BY_PINS : 'Try a frame that shows them.'}`;
    case 'noView':
      return `${found} No view of this sheet explains the paint well enough. ${BY_PINS}`;
    case 'twoViews':
      return `${found} Two different views explain the paint nearly as well. ${BY_PINS}`;
    case 'otherSheet':
      return `${found} The paint goes better with another kind of sheet than ${sheetSaid(sheet)}: is that the sheet of this game? It stands in the head of the game.`;
    case 'tooFewPins':
      return `${found} The view is found, but too few marks are seen clearly enough to be measured. ${BY_PINS}`;
    case 'pinsDisagree':
      return `${found} The marks that were measured do not agree with one another, so none is offered. ${BY_HAND}`;
    case 'tooLoose':
      return `${found} The marks that were measured lie so that they would not hold the picture well enough. ${circles > 0 || spots >= ENOUGH_SPOTS ? NEAR_FRAME : OTHER_FRAME}`;
  }
};

const OTHER_FRAME = 'Try a frame with a circle or more spots in view.';
const NEAR_FRAME = 'Try a frame half a second earlier or later: as the camera turns, others come into view.';
/** As many as tell a view by themselves. */
const ENOUGH_SPOTS = 4;
const BY_PINS = 'Name one or two marks by hand, then look again: they are taken as given.';
const BY_HAND = 'Name the marks by hand: four hold the picture.';

const counted = (count: number, word: string): string =>
  `${count === 0 ? 'no' : count} ${word}${count === 1 ? '' : 's'}`;
