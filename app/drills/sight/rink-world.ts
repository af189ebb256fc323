import { boardsPointAtArc, perimeterOf, type Rink } from '@icewright/engine';
import { drawRink, type Palette, rinkViewBox, svgFile } from '@icewright/picture';
import {
  BufferGeometry,
  CanvasTexture,
  DoubleSide,
  Float32BufferAttribute,
  Group,
  Line,
  LineBasicMaterial,
  Mesh,
  MeshBasicMaterial,
  PlaneGeometry,
  SRGBColorSpace,
} from 'three';
import { GLASS_M } from './body-rows.ts';
import { inSpace } from './camera.ts';
import { netOf } from './net-world.ts';

/** Dots of the drawn ice per metre: markings five centimetres wide stay lines from a skater's eyes. */
const DOTS_PER_M = 60;
const BOARDS_STEP_M = 0.4;
/** The nets of the sheet, or none of them when the drill has moved them. */
export async function rinkWorld(rink: Rink, palette: Palette, anisotropy: number): Promise<Group> {
  const world = new Group();
  world.add(await iceOf(rink, palette, anisotropy), ...boardsOf(rink, palette));
  for (const net of rink.nets) world.add(netOf(net, palette));
  for (const divider of rink.dividers) {
    const [from, to] = [divider.fromM, divider.toM];
    world.add(wall([from, to], DIVIDER_M, palette.wash), rail([from, to], DIVIDER_M, palette.ink));
  }
  return world;
}

/** A padded divider is about knee high: common practice, no source. */
const DIVIDER_M = 0.4;

interface Place {
  readonly xM: number;
  readonly yM: number;
}

/** The ice is the same drawing as on the board, laid flat. */
async function iceOf(rink: Rink, palette: Palette, anisotropy: number): Promise<Mesh> {
  const box = rinkViewBox(rink);
  const [x, y, width, height] = box;
  const markup = svgFile(pen => drawRink(pen, rink), { viewBox: box }, palette);
  const image = new Image();
  image.src = URL.createObjectURL(new Blob([markup], { type: 'image/svg+xml' }));
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(width * DOTS_PER_M);
  canvas.height = Math.round(height * DOTS_PER_M);
  const ink = canvas.getContext('2d');
  if (ink === null) throw new Error('the browser gave no drawing for the ice');
  ink.drawImage(image, 0, 0, canvas.width, canvas.height);
  URL.revokeObjectURL(image.src);
  const texture = new CanvasTexture(canvas);
  texture.colorSpace = SRGBColorSpace;
  texture.anisotropy = anisotropy;
  const ice = new Mesh(
    new PlaneGeometry(width, height),
    new MeshBasicMaterial({ map: texture, transparent: true }),
  );
  ice.rotation.x = -Math.PI / 2;
  ice.position.copy(inSpace(x + width / 2, -(y + height / 2), 0));
  return ice;
}

const boardsOf = (rink: Rink, palette: Palette): readonly (Mesh | Line)[] => {
  const roundM = perimeterOf(rink.boards);
  const steps = Math.ceil(roundM / BOARDS_STEP_M);
  const places = Array.from(
    { length: steps + 1 },
    (_, i) => boardsPointAtArc(rink.boards, (i * roundM) / steps).pointM,
  );
  const { boardHeightM } = rink.layout;
  return [
    wall(places, boardHeightM, palette.ice),
    rail(places, 0.02, palette['rink-board']),
    rail(places, KICK_M, palette['rink-board']),
    rail(places, boardHeightM, palette.ink),
    rail(places, boardHeightM + GLASS_M.value, palette.hair),
  ];
};

/** Height of the kick plate: 8 to 12 in by the rule books' drawings, from memory; drawn only. */
const KICK_M = 0.25;

/** A standing strip along places of the ice. */
const wall = (places: readonly Place[], heightM: number, colour: string): Mesh => {
  const corners = places.flatMap(({ xM, yM }) => [
    ...inSpace(xM, yM, 0).toArray(),
    ...inSpace(xM, yM, heightM).toArray(),
  ]);
  const faces = places
    .slice(1)
    .flatMap((_, i) => [2 * i, 2 * i + 1, 2 * i + 2, 2 * i + 2, 2 * i + 1, 2 * i + 3]);
  const shape = new BufferGeometry();
  shape.setAttribute('position', new Float32BufferAttribute(corners, 3));
  shape.setIndex(faces);
  return new Mesh(
    shape,
    new MeshBasicMaterial({ color: colour, side: DoubleSide, transparent: true, opacity: WALL_OPACITY }),
  );
};

/** Seen through a little, so that what is behind the near boards is not lost from the bench. */
const WALL_OPACITY = 0.82;

const rail = (places: readonly Place[], heightM: number, colour: string): Line =>
  new Line(
    new BufferGeometry().setFromPoints(places.map(({ xM, yM }) => inSpace(xM, yM, heightM))),
    new LineBasicMaterial({ color: colour }),
  );
