import { planOf, type SceneSpot, spotId } from './plan-of.ts';

const at = (xM: number, yM: number) => ({ xM, yM });
const LANES = 12;

/**
 * As much as a drill may hold and still follow the hand: 24 spots and 60 acts, in pairs across the ice. One of each pair
 * carries, passes and goes on, the other chases it, turns and comes back.
 */
export const FULL_ICE = planOf(
  Array.from({ length: LANES }, (_, lane): readonly SceneSpot[] => {
    const xM = -24 + (48 * lane) / (LANES - 1);
    const [own, other] = [`A${lane}`, `B${lane}`];
    return [
      {
        role: own,
        atM: at(xM, -10),
        facingRad: Math.PI / 2,
        acts: [
          {
            kind: 'carry',
            facing: 'forward',
            effortRatio: 0.9,
            stops: false,
            throughM: [at(xM + 1, -4), at(xM, 2)],
            cue: { on: 'whistle' },
          },
          { kind: 'pass', toSpot: spotId(other), way: 'direct', speedMps: 12 },
          { kind: 'skate', facing: 'forward', effortRatio: 1, stops: true, throughM: [at(xM - 1, 8)] },
        ],
      },
      {
        role: other,
        side: 'them',
        atM: at(xM, 10.5),
        facingRad: -Math.PI / 2,
        acts: [
          {
            kind: 'carry',
            facing: 'forward',
            effortRatio: 1,
            stops: true,
            throughM: [at(xM + 0.5, 3), at(xM, -6)],
            cue: { on: 'receive', spot: spotId(other) },
          },
          { kind: 'hold', seconds: 0.5, cue: { on: 'after', seconds: 0.2 } },
        ],
      },
    ];
  }).flat(),
  Array.from({ length: LANES }, (_, lane) => ({
    atM: at(-24 + (48 * lane) / (LANES - 1), -10.5),
    ownerSpot: spotId(`A${lane}`),
    count: 1,
  })),
);
