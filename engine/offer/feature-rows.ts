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

export const LEAST_CIRCLE = estimateRow(
  'share of the directions from a spot in which its circle must be seen',
  0.3,
  '',
  [0.2, 0.6],
  'our choice: less of an ellipse does not tell its other side',
);

export const LINE_PAINT = estimateRow(
  'how red or blue a pixel must be to be looked at for a straight line, ice = 0',
  0.1,
  '',
  [0.06, 0.2],
  'our choice: above the noise of film coding, so that few pixels vote',
);
