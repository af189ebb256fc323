import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenly } from '../../test/evenly.ts';
import { metresFromBars } from '../puck/net-frame.reference.ts';
import { frameCorners } from '../puck/net-frame.ts';
import { PUCK_ROWS } from '../puck/puck-rows.ts';
import type { IcePoint } from '../units/points.ts';
import { at, named, planOf, playableFrom } from './drill-shorthand.reference.ts';
import { SHOT_DIRECTION_SD_RAD } from './goalie-rows.ts';
import { runDrill } from './run-drill.ts';
import type { Run } from './run-result.ts';

const { rink } = playableFrom(planOf([{ role: 'F1', atM: at(0, 0) }]));
const [, net] = rink.nets;
const corners = frameCorners(net!, rink.layout.postDiameterM);
const apartM = rink.layout.postDiameterM / 2 + PUCK_ROWS.puckRadiusM.value;

const pass = (fromM: IcePoint, toM: IcePoint, speedMps: number): Run =>
  runDrill(
    playableFrom(
      planOf([
        {
          role: 'F1',
          atM: fromM,
          facingRad: Math.atan2(toM.yM - fromM.yM, toM.xM - fromM.xM),
          puck: true,
          acts: [{ kind: 'pass', toSpot: named('F2'), way: 'direct', speedMps, cue: { on: 'whistle' } }],
        },
        { role: 'F2', atM: toM, facingRad: Math.PI / 2 },
      ]),
    ),
  );
const free = ({ pucks }: Run): IcePoint[] =>
  Array.from(pucks[0]!.xM, (xM, i) => ({ xM, yM: pucks[0]!.yM[i]!, owner: pucks[0]!.owner[i]! })).filter(
    ({ owner }) => owner < 0,
  );

describe('a puck and a net, played', () => {
  it('a pass from behind the net to the slot does not go through it', () => {
    const run = pass(at(29.5, 0.2), at(22, -0.3), 14);
    expect(run.events.map(event => event.kind)).not.toContain('receive');
    expect(run.events.find(event => event.kind === 'bounce')).toMatchObject({ off: 'net' });
  });

  it('no pass about a net ever has the puck in its frame', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 22, max: 29.5, noNaN: true }),
        evenly(-4, 4),
        fc.double({ min: 22, max: 29.5, noNaN: true }),
        evenly(-4, 4),
        (x0, y0, x1, y1) => {
          const run = pass(at(x0, y0), at(x1, y1), 13);
          const [first, ...rest] = free(run);
          // A blade that is let go of in the frame is there already.
          fc.pre(first === undefined || metresFromBars(first, corners) > apartM);
          for (const point of rest) expect(metresFromBars(point, corners)).toBeGreaterThan(apartM - 1e-3);
        },
      ),
      { numRuns: 60, seed: 4 },
    );
  });

  it('a shot off by the half mouth is at the post and out, one a little less is in', () => {
    const shotOff = (rad: number): Run =>
      runDrill(
        playableFrom(
          planOf([
            {
              role: 'F1',
              atM: at(20, 0),
              puck: true,
              acts: [{ kind: 'shoot', atEnd: 'plusX', speedMps: 25, cue: { on: 'whistle' } }],
            },
          ]),
        ),
        // Meant for the middle, off by that many standard deviations of its direction.
        { chance: { uniform: () => 0.5, normal: () => rad / SHOT_DIRECTION_SD_RAD.value } },
      );
    const wayM = net!.atM.xM - 21;
    const atPost = shotOff(Math.atan2(net!.openingM / 2, wayM));
    expect(atPost.events.map(event => event.kind)).not.toContain('goal');
    expect(atPost.events.find(event => event.kind === 'bounce')).toMatchObject({ off: 'post' });
    expect(atPost.events.filter(event => event.kind === 'wide')).toHaveLength(1);
    const inside = shotOff(Math.atan2(net!.openingM / 2 - 0.1, wayM));
    expect(inside.events.map(event => event.kind)).toContain('goal');
  });
});
