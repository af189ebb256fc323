import { estimateRow } from '../units/provenance.ts';

export const PIN_REACH = estimateRow(
  'how far round a landmark its markings are compared with the paint',
  11,
  'px',
  [6, 20],
  'our choice: wide enough for a spot near by and an L far off',
);

export const LEAST_LIKENESS = estimateRow(
  'how like the paint must be to the markings drawn there, correlation',
  0.8,
  '',
  [0.6, 0.95],
  'our choice: a skate or a stick in the window brings it below',
);

export const LOOSEST_PIN = estimateRow(
  'largest standard deviation of an offered pin in its worse direction',
  0.7,
  'px',
  [0.3, 1],
  'our choice: better than a click',
);

export const FARTHEST_PIN = estimateRow(
  'how much ice a pixel may span at a landmark that is offered',
  0.25,
  'm',
  [0.1, 0.5],
  'our choice: half of a spot',
);

export const LEAST_OFFER_SCORE = estimateRow(
  'least log odds of a view that is offered',
  40,
  '',
  [20, 120],
  'our choice, on even-numbered samples of four drawn films: the true view has 90 and more',
);

export const LEAST_SEEN_SHARE = estimateRow(
  'share of the markings that should be seen that must be seen',
  0.5,
  '',
  [0.4, 0.7],
  'our choice: skaters hide some, and far thin lines are lost',
);

export const LEAST_SEEN_WITH_PINS = estimateRow(
  'the same share for a view that also draws the pins of the coach where he put them',
  0.4,
  '',
  [0.3, 0.5],
  'our choice: his pins say what skaters and far thin lines leave unsaid',
);

export const CLEAR_LEAD = estimateRow(
  'by what share of its own log odds a view must lead the next different one',
  0.5,
  '',
  [0.3, 0.8],
  'our choice',
);

export const MOST_OFFERED = estimateRow(
  'most pins that are offered',
  14,
  '',
  [8, 20],
  'our choice: more tells little more, and a coach looks through them',
);

export const NEAR_PIN = estimateRow(
  'within how much ice two offered pins say much the same',
  2,
  'm',
  [1, 4],
  'our choice: a spot with its marks beside it',
);

export const NEAR_PIN_WORTH = estimateRow(
  'by what share a pin near another must lower the mean variance of the ice in view to be offered too',
  0.1,
  '',
  [0.05, 0.2],
  'our choice, on four drawn films: as many views are offered and as true as with all, with a third of the pairs near each other',
);

export const LEAST_OFFERED = estimateRow(
  'least pins that are offered',
  5,
  '',
  [5, 8],
  'our choice: one more than a view takes, so that they can disagree',
);

export const OFFER_CLICK = estimateRow(
  'standard deviation with which offered pins are fitted',
  1,
  'px',
  [0.3, 2],
  'our choice: that of a click, though they are mostly better',
);

export const FIT_NEAR_VIEW = estimateRow(
  'how far the fit of the pins may be from the view that all paint gives, middle of all places',
  0.3,
  'm',
  [0.1, 0.5],
  'our choice: two ways to the same map that must meet',
);

export const LOOSEST_OFFER = estimateRow(
  'within how much the middle one of all places must be known by the offered pins',
  0.35,
  'm',
  [0.2, 0.5],
  'our choice: a stick’s reach is four times that',
);

export const OTHER_SHEET = estimateRow(
  'log odds of the other kind of sheet, over those of the one in use, from which nothing is offered',
  0.85,
  '',
  [0.7, 1],
  'our choice: on drawn pictures the wrong sheet has 0.4 to 0.6 of the right one’s',
);

export const LEAST_CORNER = estimateRow(
  'how much slope a drawn marking must have along its lesser direction against the greater one, squares',
  0.06,
  '',
  [0.05, 0.1],
  'our choice: a straight line or a piece of a circle has under 0.05 by sampling alone, spots and corners 0.075 and more',
);
