import type { Drill } from '@icewright/book';
import type { Rink, Run } from '@icewright/engine';
import { INKS, type Palette, SMALL_NET_RATIO } from '@icewright/picture';
import { Color, PerspectiveCamera, Scene, WebGLRenderer } from 'three';
import { aimCamera } from './camera.ts';
import { netOf } from './net-world.ts';
import { type PeopleWorld, peopleWorld } from './people-world.ts';
import { rinkWorld } from './rink-world.ts';
import type { Eye } from './seat.ts';

/** The rink and everybody on it, in a canvas. */
export interface SightScene {
  readonly draw: (run: Run, sample: number, eye: Eye, hidden: string | null) => void;
  readonly size: (widthPx: number, heightPx: number) => void;
  readonly end: () => void;
}

/** Builds the view for a drill. Throws when the browser draws no 3-D. */
export async function sightScene(
  canvas: HTMLCanvasElement,
  drill: Drill,
  rink: Rink,
  run: Run,
): Promise<SightScene> {
  const renderer = new WebGLRenderer({ canvas, antialias: true });
  const palette = paletteOf(canvas);
  const scene = new Scene();
  scene.background = new Color(palette.paper);
  scene.add(await rinkWorld(rink, palette, renderer.capabilities.getMaxAnisotropy()));
  for (const gear of Object.values(drill.gear))
    if (gear.kind === 'net' || gear.kind === 'smallNet')
      scene.add(netOf({ ...gear, ...netSizeOf(rink, gear.kind) }, palette));
  let people: PeopleWorld = peopleWorld(drill, run, palette);
  let peopleOf = run.tracks.length * 1000 + run.pucks.length;
  scene.add(people.group);
  const camera = new PerspectiveCamera();
  return {
    draw(now, sample, eye, hidden) {
      const count = now.tracks.length * 1000 + now.pucks.length;
      if (count !== peopleOf) {
        scene.remove(people.group);
        people = peopleWorld(drill, now, palette);
        peopleOf = count;
        scene.add(people.group);
      }
      people.place(now, sample, hidden);
      aimCamera(camera, eye, canvas.width / Math.max(1, canvas.height));
      renderer.render(scene, camera);
    },
    size(widthPx, heightPx) {
      renderer.setPixelRatio(Math.min(2, devicePixelRatio));
      renderer.setSize(widthPx, heightPx, false);
    },
    end() {
      renderer.dispose();
      renderer.forceContextLoss();
    },
  };
}

const netSizeOf = (rink: Rink, kind: 'net' | 'smallNet') => {
  const ratio = kind === 'smallNet' ? SMALL_NET_RATIO : 1;
  const { postCentreYM, postDiameterM, netDepthM } = rink.layout;
  return { openingM: ratio * 2 * (postCentreYM - postDiameterM / 2), depthM: ratio * netDepthM };
};

/** The theme's inks as the page has them. */
const paletteOf = (element: HTMLElement): Palette => {
  const style = getComputedStyle(element);
  return Object.fromEntries(INKS.map(ink => [ink, style.getPropertyValue(`--${ink}`).trim()])) as Palette;
};
