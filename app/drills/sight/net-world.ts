import type { Palette } from '@icewright/picture';
import {
  BufferGeometry,
  CylinderGeometry,
  Group,
  LineBasicMaterial,
  LineSegments,
  Mesh,
  MeshBasicMaterial,
  Vector3,
} from 'three';
import { BAR_M } from './body-rows.ts';
import { inSpace } from './camera.ts';

export interface StandingNet {
  readonly atM: { readonly xM: number; readonly yM: number };
  readonly facingRad: number;
  readonly openingM: number;
  readonly depthM: number;
}

/** Outer radius of a post, metres: 2⅜ in pipes, rule 2.1. */
const POST_M = 0.03;
const TWINE_STEPS = 7;

/** A net true to size, with its posts, its bar and some of its twine. A small one is as high as its opening is to a full one's. */
export function netOf(net: StandingNet, palette: Palette): Group {
  const group = new Group();
  const half = net.openingM / 2;
  const heightM = BAR_M.value * Math.min(1, net.openingM / FULL_OPENING_M);
  const point = (backM: number, sideM: number, upM: number): Vector3 =>
    inSpace(
      net.atM.xM - backM * Math.cos(net.facingRad) - sideM * Math.sin(net.facingRad),
      net.atM.yM - backM * Math.sin(net.facingRad) + sideM * Math.cos(net.facingRad),
      upM,
    );
  const frame = new MeshBasicMaterial({ color: palette.ink });
  group.add(
    pipe(point(0, -half, 0), point(0, -half, heightM), frame),
    pipe(point(0, half, 0), point(0, half, heightM), frame),
    pipe(point(0, -half, heightM), point(0, half, heightM), frame),
    pipe(point(0, -half, 0.02), point(net.depthM, -half, 0.02), frame),
    pipe(point(0, half, 0.02), point(net.depthM, half, 0.02), frame),
    pipe(point(net.depthM, -half, 0.02), point(net.depthM, half, 0.02), frame),
  );
  const twine: Vector3[] = [];
  for (let i = 0; i <= TWINE_STEPS; i++) {
    const share = i / TWINE_STEPS;
    const side = half * (2 * share - 1);
    twine.push(point(TOP_DEPTH_RATIO * net.depthM, side, heightM), point(net.depthM, side, 0));
    for (const post of [-half, half]) {
      const backM = net.depthM * (TOP_DEPTH_RATIO + (1 - TOP_DEPTH_RATIO) * share);
      twine.push(point(0, post, heightM * (1 - share)), point(backM, post, heightM * (1 - share)));
    }
    const upM = heightM * (1 - share);
    const backM = net.depthM * (TOP_DEPTH_RATIO + (1 - TOP_DEPTH_RATIO) * share);
    twine.push(point(backM, -half, upM), point(backM, half, upM));
  }
  group.add(
    new LineSegments(
      new BufferGeometry().setFromPoints(twine),
      new LineBasicMaterial({ color: palette.edge, transparent: true, opacity: 0.6 }),
    ),
  );
  return group;
}

const FULL_OPENING_M = 1.8288;
/** The top of a net is about half as deep as its floor: the rule books' drawing, from memory. */
const TOP_DEPTH_RATIO = 0.5;

const pipe = (from: Vector3, to: Vector3, material: MeshBasicMaterial): Mesh => {
  const along = to.clone().sub(from);
  const mesh = new Mesh(new CylinderGeometry(POST_M, POST_M, along.length(), 10), material);
  mesh.position.copy(from).addScaledVector(along, 0.5);
  mesh.quaternion.setFromUnitVectors(new Vector3(0, 1, 0), along.normalize());
  return mesh;
};
