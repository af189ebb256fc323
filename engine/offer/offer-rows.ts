import { estimateRow } from '../units/provenance.ts';

export const ICE_SATURATION = estimateRow(
  'how much colour ice may show at most, (largest − smallest channel) / largest',
  0.2,
  '',
  [0.1, 0.3],
  'our choice: bluish light and film coding tint white ice by under 0.12',
);

export const ICE_BRIGHTNESS = estimateRow(
  'how bright ice must be against the brightest colourless tenth of the picture',
  0.6,
  '',
  [0.4, 0.8],
  'our choice: lamps light a sheet unevenly by less than that',
);

export const LEAST_ICE_SHARE = estimateRow(
  'least share of the picture that must be ice for pins to be looked for',
  0.08,
  '',
  [0.04, 0.2],
  'our choice: less shows too few markings, or is no ice',
);

export const RED_PAINT = estimateRow(
  'how red a pixel must be to count as paint, red above both other channels, ice = 0',
  0.07,
  '',
  [0.04, 0.2],
  'our choice: a line of 5 cm far off is thinner than a pixel, and its red fainter by as much',
);

export const BLUE_PAINT = estimateRow(
  'how blue a pixel must be to count as paint, blue above both other channels, ice = 0',
  0.06,
  '',
  [0.05, 0.25],
  'our choice, as for red',
);

export const FULL_PAINT = estimateRow(
  'the same for paint that fills pixels: thick lines and spots',
  0.25,
  '',
  [0.2, 0.5],
  'our choice: half of what painted red and blue show under flat light',
);

export const LEAST_PART_SHARE = estimateRow(
  'least share of the picture for a part of the ice beyond a painted line',
  0.005,
  '',
  [0.002, 0.02],
  'our choice: larger than a white advertisement on the boards',
);

export const WIDEST_PAINT = estimateRow(
  'how wide a painted line may be in the picture, share of its longer side',
  0.04,
  '',
  [0.02, 0.08],
  'our choice: 30 cm seen so near that 8 m fill the picture',
);

export const LEAST_LINE_SHARE = estimateRow(
  'least painted length of a straight line, share of the picture’s diagonal',
  0.07,
  '',
  [0.04, 0.15],
  'our choice: longer than hash marks, letters and sticks',
);

export const LINE_FILL = estimateRow(
  'share of a straight line that must show paint between its ends',
  0.6,
  '',
  [0.4, 0.8],
  'our choice: skaters hide less',
);

export const SPOT_SHAPE = estimateRow(
  'how well a red patch must fill the ellipse of its second moments to be a spot',
  0.85,
  '',
  [0.75, 0.95],
  'our choice: 1 for a disc seen aslant, 0.95 for a rectangle, less for letters and limbs',
);

export const SPOT_ALONE = estimateRow(
  'share of the ring round a spot that must be bare',
  0.8,
  '',
  [0.6, 0.95],
  'our choice: a skater may stand beside it',
);

export const SHORTEST_LENS = estimateRow(
  'shortest focal length of a film camera, half diagonals of the picture',
  0.5,
  '',
  [0.4, 0.8],
  'our choice: 127° across the diagonal; a wider lens bends too much for one map',
);

export const LONGEST_LENS = estimateRow(
  'longest focal length of a film camera, half diagonals of the picture',
  12,
  '',
  [8, 30],
  'our choice: 9.5° across the diagonal, in which a third of a zone would fill the picture',
);

export const BENT_VIEW = estimateRow(
  'how far the axes of a view may be from square and from equally long',
  0.12,
  '',
  [0.05, 0.2],
  'our choice: a lens term of 2 %, or a picture cut by a tenth on one side, bends them by less',
);

export const STEEPEST_ROLL = estimateRow(
  'how far a camera may lean to one side, sine',
  0.2,
  '',
  [0.05, 0.35],
  'our choice: 11.5°, for a hand that holds a phone',
);

export const LOWEST_CAMERA = estimateRow(
  'lowest place of a camera above the ice',
  2,
  'm',
  [1, 4],
  'our choice: below it markings cannot be told apart',
);

export const HIGHEST_CAMERA = estimateRow(
  'highest place of a camera above the ice',
  45,
  'm',
  [30, 60],
  'our choice: under the roof of a large arena',
);

export const CAMERA_REACH = estimateRow(
  'farthest place of a camera from centre ice, along the ground',
  110,
  'm',
  [80, 130],
  'our choice: the last row of a large arena',
);

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

export const LEAST_CIRCLE = estimateRow(
  'share of the directions from a spot in which its circle must be seen',
  0.3,
  '',
  [0.2, 0.6],
  'our choice: less of an ellipse does not tell its other side',
);

export const CIRCLE_MISFIT = estimateRow(
  'how far a second feature may be from where a circle alone puts it, share of its distance',
  0.2,
  '',
  [0.1, 0.4],
  'our choice: a circle ten metres wide tells far places poorly',
);

export const LINE_PAINT = estimateRow(
  'how red or blue a pixel must be to be looked at for a straight line, ice = 0',
  0.1,
  '',
  [0.06, 0.2],
  'our choice: above the noise of film coding, so that few pixels vote',
);

export const SAME_VIEW = estimateRow(
  'how far apart two views may put the middle one of all places and still be one view',
  0.5,
  'm',
  [0.3, 1],
  'our choice: as near as an offered calibration should be',
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

export const NEARER_CAMERA = estimateRow(
  'how much nearer a camera must be to its earlier place than its half turn, ratio',
  0.5,
  '',
  [0.3, 0.7],
  'our choice',
);

export const CREASE_SEEN = estimateRow(
  'share of the officials’ crease that must be seen to tell the sides',
  0.7,
  '',
  [0.5, 0.9],
  'our choice',
);

export const CREASE_UNSEEN = estimateRow(
  'share of it that may seem to be seen on the other side',
  0.3,
  '',
  [0.1, 0.4],
  'our choice: stray paint',
);
