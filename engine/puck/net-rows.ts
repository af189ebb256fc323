import { estimateRow, type Row } from '../units/provenance.ts';

/** How a puck comes off a net. Friction is that of the boards. */

export const POST_RESTITUTION_RATIO: Row = {
  ...estimateRow(
    'puck off a post, restitution e',
    0.5,
    '',
    [0.45, 0.55],
    'drop tests of pucks on a hard surface at room temperature, 0.45 to 0.55; none on a post',
  ),
  status: 'derived',
};

export const NET_RESTITUTION_RATIO = estimateRow(
  'puck off the side or the back of a net, restitution e',
  0.15,
  '',
  [0.05, 0.3],
  'mesh that gives, on a frame that does not; no test found',
);
