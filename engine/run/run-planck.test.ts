import { Box, Circle, Settings, Vec2, World } from 'planck';
import { describe, expect, it } from 'vitest';
import { moveUnderPush } from '../motion/reactive-step.ts';
import { STEP_S, stretchOf } from '../motion/stretch.ts';
import { puckModelOf } from '../puck/puck-model.ts';
import { randomOf } from '../random/random.ts';
import { rinkOf } from '../rink/rink-of.ts';
import { levelOf } from '../skater/level.ts';
import { LEVEL_IDS, type LevelId } from '../skater/model.ts';
import { at, named, planOf, playableFrom } from './drill-shorthand.reference.ts';
import { runDrill } from './run-drill.ts';

// planck 1.3.0 (dev dependency), a rigid-body engine of others: it knows forces, damping and contacts, nothing of skaters.

/** A disc that the force m·V·u/τ pushes and the damping 1/τ holds back: the sprint law, stepped ten times as finely. */
const pushedDisc = (power: { readonly topSpeedMps: number; readonly tauS: number }) => {
  const world = new World({ gravity: new Vec2(0, 0) });
  const disc = world.createBody({ type: 'dynamic', linearDamping: 1 / power.tauS, allowSleep: false });
  disc.createFixture({ shape: new Circle(0.4), density: 1 });
  return {
    disc,
    push: (x: number, y: number, forS: number): void => {
      for (let i = 0; i < FINE; i++) {
        const force = (disc.getMass() * power.topSpeedMps) / power.tauS;
        disc.applyForceToCenter(new Vec2(force * x, force * y), true);
        world.step(forS / FINE, 8, 3);
      }
    },
  };
};

const FINE = 10;

describe('stepping against a rigid-body engine', () => {
  it('straight at full effort from rest: within 2 cm and 1 cm/s all the way, at every level', () => {
    for (const levelId of LEVEL_IDS) {
      const run = runDrill(
        playableFrom(
          planOf([
            { role: 'X1', side: 'them', atM: at(24, 0), acts: [{ kind: 'hold', seconds: 40 }] },
            { role: 'F1', atM: at(-24, 0), acts: [{ kind: 'chase', whom: named('X1'), effortRatio: 1 }] },
          ]),
          levelId,
        ),
      );
      const caughtS = run.events.find(event => event.kind === 'caught')!.timeS;
      const track = run.tracks[1]!;
      const { disc, push } = pushedDisc(levelOf(levelId).model);
      expect(caughtS).toBeGreaterThan(4);
      for (let i = 0; i < Math.floor(caughtS * 120); i++) {
        expect(Math.abs(track.xM[i]! + 24 - disc.getPosition().x)).toBeLessThan(0.02);
        expect(Math.abs(track.xMps[i]! - disc.getLinearVelocity().x)).toBeLessThan(0.01);
        push(1, 0, STEP_S);
      }
    }
  });

  it('pushed a new way at every step for twenty seconds: within 2 cm', () => {
    const random = randomOf(5);
    for (const levelId of ['u10', 'pro'] as const satisfies readonly LevelId[]) {
      const { model } = levelOf(levelId);
      const { disc, push } = pushedDisc(model);
      const body = { xM: 0, yM: 0, xMps: 0, yMps: 0 };
      const stepKeeps = Math.exp(-STEP_S / model.tauS);
      let wayRad = 0;
      for (let i = 0; i < 2400; i++) {
        wayRad += (random.uniform() - 0.5) * 0.6;
        const size = random.uniform();
        const by = { x: size * Math.cos(wayRad), y: size * Math.sin(wayRad) };
        moveUnderPush(body, { push: by, power: model, stepKeeps }, stretchOf(0, STEP_S));
        push(by.x, by.y, STEP_S);
        const { x, y } = disc.getPosition();
        expect(Math.hypot(body.xM - x, body.yM - y)).toBeLessThan(0.02);
      }
      expect(Math.hypot(body.xM, body.yM)).toBeGreaterThan(5);
    }
  });

  it('passes off the side boards bounce, slow down and arrive where a stepped disc does', () => {
    let bounces = 0;
    for (const [fromX, fromY, toX, toY, speedMps] of [
      [-15, -6, 8, -5, 18],
      [-10, 4, 9, 6, 15],
      [0, -9, -18, -4, 22],
      [12, 2, -6, 7, 20],
    ] as const) {
      const run = runDrill(
        playableFrom(
          planOf([
            {
              role: 'F1',
              atM: at(fromX, fromY),
              puck: true,
              acts: [{ kind: 'pass', toSpot: named('F2'), way: 'bank', speedMps }],
            },
            { role: 'F2', atM: at(toX, toY), acts: [{ kind: 'hold', seconds: 8 }] },
          ]),
        ),
      );
      const puck = run.pucks[0]!;
      const received = run.events.find(event => event.kind === 'receive')!;
      const from = Math.ceil(run.events.find(event => event.kind === 'pass')!.timeS * 120) + 1;
      const to = Math.floor(received.timeS * 120);
      const slide = slidingDisc(puck.xM[from]!, puck.yM[from]!, speedAtSample(puck, from));
      for (let i = from; i < to; i++) {
        const { x, y } = slide.place();
        expect(Math.hypot(x - puck.xM[i]!, y - puck.yM[i]!)).toBeLessThan(0.15);
        slide.step();
      }
      bounces += run.events.filter(event => event.kind === 'bounce').length;
      expect(slide.turned()).toBe(true);
    }
    expect(bounces).toBeGreaterThanOrEqual(4);
  });
});

const speedAtSample = (
  puck: { readonly xM: Float64Array; readonly yM: Float64Array },
  i: number,
): { readonly xMps: number; readonly yMps: number } => ({
  xMps: (puck.xM[i + 1]! - puck.xM[i - 1]!) * 60,
  yMps: (puck.yM[i + 1]! - puck.yM[i - 1]!) * 60,
});

/** Planck's contact margins are centimetres: a puck is stepped twenty times as large in a rink twenty times as large. */
const LARGER = 20;
const PUCK_FINE = 40;

/** A puck between the two side boards, held back by μg + k·v² as a force, stepped forty times as finely. */
const slidingDisc = (xM: number, yM: number, velocity: { readonly xMps: number; readonly yMps: number }) => {
  Settings.maxTranslation = 1e3;
  const model = puckModelOf();
  const { boards } = rinkOf({ preset: '200x85ft' });
  const contact = { restitution: model.restitutionRatio, friction: model.boardFrictionRatio };
  const world = new World({ gravity: new Vec2(0, 0) });
  for (const side of [-1, 1]) {
    const wall = world.createBody({
      type: 'static',
      position: new Vec2(0, side * LARGER * (boards.widthM / 2 + 1)),
    });
    wall.createFixture({ shape: new Box(LARGER * 100, LARGER), ...contact });
  }
  const disc = world.createBody({
    type: 'dynamic',
    bullet: true,
    position: new Vec2(LARGER * xM, LARGER * yM),
    linearVelocity: new Vec2(LARGER * velocity.xMps, LARGER * velocity.yMps),
  });
  disc.createFixture({ shape: new Circle(LARGER * model.puckRadiusM), density: 1, ...contact });
  const startSign = Math.sign(velocity.yMps);
  return {
    place: () => ({ x: disc.getPosition().x / LARGER, y: disc.getPosition().y / LARGER }),
    turned: () => Math.sign(disc.getLinearVelocity().y) === -startSign,
    step: (): void => {
      for (let i = 0; i < PUCK_FINE; i++) {
        const { x, y } = disc.getLinearVelocity();
        const speedMps = Math.hypot(x, y) / LARGER;
        const slow = LARGER * (model.frictionRatio * model.gravityMps2 + model.dragPerM * speedMps ** 2);
        const force = (disc.getMass() * slow) / Math.hypot(x, y);
        disc.applyForceToCenter(new Vec2(-force * x, -force * y), true);
        world.step(STEP_S / PUCK_FINE, 20, 20);
      }
    },
  };
};
