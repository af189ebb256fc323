import type { Row } from '../units/provenance.ts';

export const CORNER_STRENGTH: Row = {
  name: 'how strong a corner must be to be followed (smaller eigenvalue of the mean gradient product)',
  value: 12,
  unit: '(grey/px)²',
  range: [4, 60],
  source: 'our choice: above it the noise of a coded film moves a corner by under 0.1 px',
  status: 'estimate',
};

export const PATCH_STRENGTH: Row = {
  name: 'how much a square around a point must show to be found again',
  value: 1,
  unit: '(grey/px)²',
  range: [0.1, 5],
  source: 'our choice',
  status: 'estimate',
};

export const AGREES_WITHIN: Row = {
  name: 'how far a followed point may lie from where the camera’s move puts it, while the move is sought',
  value: 2.5,
  unit: 'px',
  range: [1, 5],
  source: 'our choice: a lens of 2 % bends neighbouring pictures by under 2 px',
  status: 'estimate',
};

export const LEAST_AGREEING: Row = {
  name: 'fewest points that must agree on the camera’s move',
  value: 16,
  unit: '',
  range: [8, 40],
  source: 'our choice: twice the eight numbers of the move',
  status: 'estimate',
};

export const LEAST_SHARE: Row = {
  name: 'share of the points found again that must agree on the camera’s move',
  value: 0.35,
  unit: '',
  range: [0.2, 0.6],
  source: 'our choice: skaters and their shadows fill less than that of a rink camera’s picture',
  status: 'estimate',
};

export const KEY_OVERLAP: Row = {
  name: 'share of a key picture’s points still followed at which a new key picture is taken',
  value: 0.5,
  unit: '',
  range: [0.3, 0.8],
  source: 'our choice: fewer key pictures drift less, less overlap ties them worse',
  status: 'estimate',
};

export const KEY_ZOOM: Row = {
  name: 'change of zoom at which a new key picture is taken',
  value: 0.08,
  unit: '',
  range: [0.03, 0.2],
  source: 'our choice: at 21 px a square is then 1 px too large at its edge',
  status: 'estimate',
};

export const CUT_LIKENESS: Row = {
  name: 'likeness of two pictures in turn (correlation of their coarse grey) under which a lost track is a cut',
  value: 0.8,
  unit: '',
  range: [0.6, 0.9],
  source:
    'our choice: in three films with truth neighbouring pictures are alike by 0.93 and more, 99 in 100 pairs of different shots by under 0.79',
  status: 'estimate',
};

export const LINK_RAISE: Row = {
  name: 'by how much the ± of a step between pictures is raised over what its points’ scatter says',
  value: 2,
  unit: '',
  range: [1, 4],
  source: 'our choice, set on one film with truth and held on others: points near each other err together',
  status: 'estimate',
};

export const LENS_SPREAD: Row = {
  name: 'how strong a lens’s one term is thought to be before anything is seen (sd)',
  value: 0.03,
  unit: '',
  range: [0.01, 0.1],
  source: 'our choice: phones and broadcast lenses bend under 5 % at the corner',
  status: 'estimate',
};

export const LENS_TOLD: Row = {
  name: 'how well the pan must tell the lens for it to be used (sd of its term)',
  value: 0.006,
  unit: '',
  range: [0.002, 0.02],
  source:
    'our choice: a camera that stands still tells nothing, and its pins are then taken as without a lens',
  status: 'estimate',
};

export const DISAGREE_AT: Row = {
  name: 'chance below which two pinned pictures are said to disagree on a third',
  value: 0.01,
  unit: '',
  range: [0.001, 0.05],
  source: 'our choice',
  status: 'estimate',
};
