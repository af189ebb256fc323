import type { ActId, SpotId } from '@icewright/engine';
import { rinkOf } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { afterWrites } from '../write.ts';
import { aimedWrites, aimSaid } from './aim.ts';
import { at, drillWith } from './drill-of-tests.reference.ts';
import { newAct, newActWrite } from './new-act.ts';

const F1 = 'f1' as SpotId;
const F3 = 'f3' as SpotId;
const ACT = 'a' as ActId;
const aim = { spotId: F1, actId: ACT };
const base = drillWith({ spots: ['f1', 'f2', 'f3'] });
const rink = rinkOf(base.rink);
const withAct = (kind: Parameters<typeof newAct>[2]) =>
  afterWrites(base, [newActWrite(F1, ACT, newAct(base, F1, kind)!)]);
const onSpot = (spot: SpotId) => ({ atM: at(0, 0), thing: { kind: 'spot', spot } }) as const;

describe('the press after an act was added', () => {
  it('is where a route goes, and stays one point; over the boards it is the ice beside them', () => {
    for (const kind of ['skate', 'carry'] as const) {
      const drill = withAct(kind);
      const after = afterWrites(drill, aimedWrites(drill, rink, aim, { atM: at(12, -7), thing: null })!);
      expect(after.spots[F1]?.acts[ACT]).toMatchObject({ throughM: [at(12, -7)] });
      const far = afterWrites(drill, aimedWrites(drill, rink, aim, { atM: at(0, 90), thing: null })!);
      expect(far.spots[F1]?.acts[ACT]).toMatchObject({ throughM: [at(0, rink.area.maxYM - 0.5)] });
    }
  });

  it('is to whom a pass goes, and whom a chase, a gap or a steal means', () => {
    for (const [kind, name] of [
      ['pass', 'toSpot'],
      ['chase', 'whom'],
      ['gap', 'whom'],
      ['steal', 'whom'],
    ] as const) {
      const drill = withAct(kind);
      const after = afterWrites(drill, aimedWrites(drill, rink, aim, onSpot(F3))!);
      expect(after.spots[F1]?.acts[ACT]).toMatchObject({ [name]: 'f3' });
      expect(aimSaid(drill, aim)).toMatch(/^Press wh/);
    }
  });

  it('says nothing of an act that needs neither, of oneself, or of bare ice for a pass', () => {
    expect(aimedWrites(withAct('stop'), rink, aim, onSpot(F3))).toBeNull();
    expect(aimSaid(withAct('stop'), aim)).toBeNull();
    expect(aimedWrites(withAct('pass'), rink, aim, onSpot(F1))).toBeNull();
    expect(aimedWrites(withAct('pass'), rink, aim, { atM: at(1, 1), thing: null })).toBeNull();
    expect(aimedWrites(base, rink, aim, { atM: at(1, 1), thing: null })).toBeNull();
  });
});
