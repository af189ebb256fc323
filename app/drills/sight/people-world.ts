import type { Drill } from '@icewright/book';
import type { Run } from '@icewright/engine';
import type { Palette } from '@icewright/picture';
import {
  CanvasTexture,
  CapsuleGeometry,
  CylinderGeometry,
  DoubleSide,
  Group,
  Mesh,
  MeshBasicMaterial,
  PlaneGeometry,
  RingGeometry,
  SphereGeometry,
  SRGBColorSpace,
  Vector3,
} from 'three';
import { heightOf, SKATES_M } from './body-rows.ts';
import { inSpace } from './camera.ts';

/** Everybody of a run as figures that stand; `place` moves them to a sample. The one whose eyes are looked through is hidden. */
export interface PeopleWorld {
  readonly group: Group;
  readonly place: (run: Run, sample: number, hidden: string | null) => void;
}

/** Parts of a body that skates, as shares of its height: hips low, a narrow leg, our drawing. */
const LEGS = { radius: 0.1, from: 0, to: 0.5 } as const;
const TRUNK = { radius: 0.155, from: 0.42, to: 0.84 } as const;
const HEAD_RADIUS = 0.075;
const CROUCH_RATIO = 0.93;
const STICK_REACH_M = 1;

export function peopleWorld(drill: Drill, run: Run, palette: Palette): PeopleWorld {
  const group = new Group();
  const bodies = run.tracks.map(track => {
    const spot = drill.spots[track.spot];
    const body = bodyOf(
      (heightOf(drill.level).value + SKATES_M.value) * CROUCH_RATIO,
      spot?.side ?? 'us',
      spot?.role ?? '',
      spot?.kind === 'coach',
      palette,
    );
    group.add(body);
    return body;
  });
  const pucks = run.pucks.map(() => {
    const puck = puckOf(palette);
    group.add(puck);
    return puck;
  });
  return {
    group,
    place(now, sample, hidden) {
      now.tracks.forEach((track, index) => {
        const body = bodies[index];
        if (body === undefined) return;
        body.visible = track.spot !== hidden;
        body.position.copy(inSpace(track.xM[sample] ?? 0, track.yM[sample] ?? 0, 0));
        body.rotation.y = track.facingRad[sample] ?? 0;
      });
      now.pucks.forEach((puck, index) => {
        const shown = pucks[index];
        if (shown === undefined) return;
        shown.visible = puck.owner[sample] !== -2;
        shown.position.copy(inSpace(puck.xM[sample] ?? 0, puck.yM[sample] ?? 0, 0));
      });
    },
  };
}

/** Ours are ink with the letter light, theirs light with an ink edge: as the disc and the ring on the ice. */
function bodyOf(
  heightM: number,
  side: 'us' | 'them',
  role: string,
  isCoach: boolean,
  palette: Palette,
): Group {
  const body = new Group();
  const fill = side === 'us' || isCoach ? palette.ink : palette.ice;
  const skin = new MeshBasicMaterial({ color: fill });
  const edge = new MeshBasicMaterial({ color: palette.ink, side: 1 });
  for (const part of [LEGS, TRUNK]) {
    const radius = part.radius * heightM;
    const length = Math.max(0.01, (part.to - part.from) * heightM - 2 * radius);
    const shape = new CapsuleGeometry(radius, length, 6, 16);
    const middleM = ((part.from + part.to) / 2) * heightM;
    for (const [material, scale] of [
      [skin, 1],
      [edge, 1.09],
    ] as const) {
      const mesh = new Mesh(shape, material);
      mesh.scale.setScalar(scale);
      mesh.position.y = middleM;
      body.add(mesh);
    }
  }
  for (const [material, scale] of [
    [skin, 1],
    [edge, 1.12],
  ] as const) {
    const head = new Mesh(new SphereGeometry(HEAD_RADIUS * heightM * scale, 18, 14), material);
    head.position.y = heightM * (1 - HEAD_RADIUS);
    body.add(head);
  }
  body.add(...lettersOf(role, side === 'us' || isCoach ? palette['on-ink'] : palette.ink, heightM));
  if (!isCoach) body.add(stickOf(heightM, palette));
  return body;
}

/** The role on chest and back. */
function lettersOf(role: string, colour: string, heightM: number): Mesh[] {
  const canvas = document.createElement('canvas');
  canvas.width = 128;
  canvas.height = 96;
  const ink = canvas.getContext('2d');
  if (ink === null) return [];
  ink.font = '700 72px "Encode Sans Variable", sans-serif';
  ink.textAlign = 'center';
  ink.textBaseline = 'middle';
  ink.fillStyle = colour;
  ink.fillText(role, 64, 52, 124);
  const texture = new CanvasTexture(canvas);
  texture.colorSpace = SRGBColorSpace;
  const material = new MeshBasicMaterial({
    map: texture,
    transparent: true,
    side: DoubleSide,
    depthWrite: false,
  });
  return [1, -1].map(sign => {
    const plate = new Mesh(new PlaneGeometry(0.24 * heightM, 0.18 * heightM), material);
    plate.position.set(sign * (TRUNK.radius * heightM * 1.09 + 0.01), 0.66 * heightM, 0);
    plate.rotation.y = (sign * Math.PI) / 2;
    return plate;
  });
}

/** From the hands to the blade, which lies a metre ahead as in the run. */
function stickOf(heightM: number, palette: Palette): Mesh {
  const hands = new Vector3(0.22, 0.52 * heightM, 0.12);
  const blade = new Vector3(STICK_REACH_M, 0.03, 0);
  const along = blade.clone().sub(hands);
  const stick = new Mesh(
    new CylinderGeometry(0.018, 0.018, along.length(), 6),
    new MeshBasicMaterial({ color: palette['ink-2'] }),
  );
  stick.position.copy(hands).addScaledVector(along, 0.5);
  stick.quaternion.setFromUnitVectors(new Vector3(0, 1, 0), along.normalize());
  return stick;
}

/** A puck true to size (3 × 1 in, rule 13), and a thin ring on the ice about it, so that it is found. */
function puckOf(palette: Palette): Group {
  const group = new Group();
  const disc = new Mesh(
    new CylinderGeometry(0.0381, 0.0381, 0.0254, 20),
    new MeshBasicMaterial({ color: palette.ink }),
  );
  disc.position.y = 0.0127;
  const ring = new Mesh(
    new RingGeometry(0.3, 0.34, 40),
    new MeshBasicMaterial({ color: palette.warm, side: DoubleSide }),
  );
  ring.rotation.x = -Math.PI / 2;
  ring.position.y = 0.004;
  group.add(disc, ring);
  return group;
}
