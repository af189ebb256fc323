import { estimateRow, type Row } from '../units/provenance.ts';

const DRAWN = 'our choice, set on drawn films with truth; none of those counted was left unseen';

export const UNLIKE_ICE: Row = estimateRow(
  'how far a colour must lie from that of the ice around it to be something else (of 255)',
  26,
  '',
  [15, 50],
  'our choice: about ten times what the noise of a film makes of bare ice',
);

export const PAINT_REACH: Row = estimateRow(
  'how far from where the rink has paint its colours still count as paint',
  0.2,
  'm',
  [0.1, 0.4],
  'our choice: what pins leave open, and the blur of an edge',
);

export const DARKEST_SHADOW: Row = estimateRow(
  'share of its light that shadowed ice keeps',
  0.72,
  '',
  [0.5, 0.9],
  'our choice: rinks are lit from all over, so nobody throws a dark shadow',
);

export const FOUND_HEIGHT: Row = estimateRow(
  'height of a skater with helmet and skates, bent as he skates, where people are looked for',
  1.45,
  'm',
  [1.2, 1.9],
  'our choice: about four fifths of 1.8 m on skates',
);

export const FOUND_HALF_WIDTH: Row = estimateRow(
  'half the width of a body, where people are looked for',
  0.24,
  'm',
  [0.18, 0.35],
  'our choice: trunk and legs without arms and stick',
);

export const LEAST_BODY: Row = estimateRow(
  'how much more of a body’s outline than of what is beside it must be no ice',
  0.32,
  '',
  [0.25, 0.5],
  DRAWN,
);

export const HALF_STANCE: Row = estimateRow(
  'how much nearer to the camera the nearer skate’s edge lies than the middle between the skates',
  0.3,
  'm',
  [0.15, 0.45],
  DRAWN,
);

export const FOUND_FOOT_SD: Row = estimateRow(
  'how well a found body tells the middle between its skates (sd, each way)',
  0.28,
  'm',
  [0.15, 0.5],
  DRAWN,
);

export const SAME_PERSON: Row = estimateRow(
  'distance within which somebody found is taken for somebody placed already',
  1,
  'm',
  [0.6, 1.5],
  'our choice: two bodies stand hardly nearer, and a found foot is rarely so far off',
);

export const AT_NET: Row = estimateRow(
  'how near to the middle of his net somebody stands who is taken for its goalie',
  2.5,
  'm',
  [1.5, 4],
  'our choice: a little more than the crease reaches',
);

const DRAWN_DRESSES =
  'our choice, on four drawn films: set on those films themselves: of those lettered 96 % and more wear what most of their letter wear';

export const MOST_DRESSES: Row = estimateRow(
  'most dresses that people found are parted by',
  4,
  '',
  [3, 5],
  'our choice: two teams, the officials, and one for whoever is like nobody, a goalie in other pads',
);

export const DRESS_APART: Row = estimateRow(
  'how far two dresses lie apart that are not one, shares of red, green and blue and a third of the light',
  0.1,
  '',
  [0.06, 0.14],
  DRAWN_DRESSES,
);

export const DRESS_CLEAR: Row = estimateRow(
  'how much nearer to his own dress than to the next one somebody must be to be lettered, ratio',
  0.5,
  '',
  [0.4, 0.7],
  DRAWN_DRESSES,
);

export const DRESS_KNOWN: Row = estimateRow(
  'within how much a dress is one that was seen earlier in the film',
  0.1,
  '',
  [0.06, 0.14],
  'our choice: as far as two dresses lie apart that are not one',
);

export const MASK_REACH: Row = estimateRow(
  'how far to each side of a skater’s feet arms and stick are still his, where marks lie under him',
  1.8,
  'm',
  [1.2, 2.4],
  'our choice: an arm and a stick',
);

export const MASK_STICK: Row = estimateRow(
  'how far towards the camera his stick may lie, where marks lie under him',
  0.9,
  'm',
  [0.5, 1.5],
  'our choice: a stick in front of the skates',
);

export const MASK_TOP: Row = estimateRow(
  'how high above his lowest point a skater may reach, where marks lie under him',
  2.3,
  'm',
  [1.9, 2.5],
  'our choice: somebody tall, on skates with a helmet, who leans away',
);

export const MASK_TRUNK: Row = estimateRow(
  'how far to each side of his feet white cloth before white ice is his',
  0.6,
  'm',
  [0.4, 0.9],
  'our choice: trunk and bent arms',
);

export const MASK_LEGS: Row = estimateRow(
  'how high above the ice white cloth is looked for: below it is ice in shadow as likely',
  0.55,
  'm',
  [0.3, 0.9],
  'our choice: to the knees',
);

export const MASK_FOLD: Row = estimateRow(
  'how far white cloth goes on without a fold, a number or an edge that is surely no ice',
  0.26,
  'm',
  [0.15, 0.4],
  'our choice: as far as a helmet is high',
);

export const MASK_UNDER: Row = estimateRow(
  'how far under his lowest point a skate may reach',
  0.15,
  'm',
  [0.05, 0.3],
  'our choice: half a skate, and what the tie leaves open',
);

export const MASK_CORE_TOP: Row = estimateRow(
  'how high that begins',
  1.5,
  'm',
  [1, 1.9],
  'our choice: about the height of a body that is looked for',
);
