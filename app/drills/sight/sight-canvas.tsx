import type { Drill } from '@icewright/book';
import type { Rink, Run, SpotId } from '@icewright/engine';
import { useEffect, useRef, useState } from 'react';
import type { Eye } from './seat.ts';
import { type SightScene, sightScene } from './sight-scene.ts';

/** Pixels of a drag that turn the head as much as one key. */
const PX_A_TURN = 24;
const HEIGHT_RATIO = 0.44;
const LEAST_PX = 220;

/** The picture itself: drawn anew when the moment or the eye changes, and not otherwise. */
export function SightCanvas(props: {
  readonly drill: Drill;
  readonly rink: Rink;
  readonly run: Run;
  readonly sample: number;
  readonly eye: Eye;
  readonly hidden: SpotId | null;
  readonly onAspect: (aspect: number) => void;
  /** Turns to the left and down, in steps. */
  readonly onTurn: (turns: number, downs: number) => void;
  readonly onStraight: () => void;
}) {
  const { drill, rink, run, sample, eye, hidden, onAspect, onTurn } = props;
  const canvas = useRef<HTMLCanvasElement>(null);
  const [scene, setScene] = useState<SightScene | null>(null);
  const [why, setWhy] = useState<string | null>(null);
  const held = useRef<{ x: number; y: number } | null>(null);
  const [size, setSize] = useState({ width: 0, height: 0 });
  const { gear, level } = drill;
  const roles = Object.values(drill.spots)
    .map(spot => `${spot.role} ${spot.side} ${spot.kind}`)
    .join();
  const latest = useRef({ drill, run });
  latest.current = { drill, run };

  // biome-ignore lint/correctness/useExhaustiveDependencies: the scene is built anew only for what it is built of
  useEffect(() => {
    const element = canvas.current;
    if (element === null) return;
    let isGone = false;
    let built: SightScene | null = null;
    sightScene(element, latest.current.drill, rink, latest.current.run).then(
      made => {
        if (isGone) return made.end();
        built = made;
        setScene(made);
      },
      () => setWhy('This browser draws no three dimensions here: WebGL is off or missing.'),
    );
    return () => {
      isGone = true;
      built?.end();
      setScene(null);
    };
  }, [rink, gear, level, roles]);

  useEffect(() => {
    const frame = canvas.current?.parentElement;
    if (!frame) return;
    const watch = new ResizeObserver(() => {
      const width = frame.clientWidth;
      const height = Math.max(LEAST_PX, Math.round(width * HEIGHT_RATIO));
      setSize({ width, height });
      onAspect(width / height);
    });
    watch.observe(frame);
    return () => watch.disconnect();
  }, [onAspect]);

  useEffect(() => {
    if (scene === null || size.width === 0) return;
    scene.size(size.width, size.height);
    scene.draw(run, sample, eye, hidden);
  }, [scene, size, run, sample, eye, hidden]);

  return (
    <div className="sight-frame" style={{ height: size.height || undefined }}>
      {why !== null && <p className="q2">{why}</p>}
      <canvas
        ref={canvas}
        hidden={why !== null}
        tabIndex={0}
        role="img"
        aria-label="The view. Drag, or arrow keys, to turn the head; Home looks straight again."
        data-drawn={scene !== null}
        onPointerDown={event => {
          event.currentTarget.setPointerCapture(event.pointerId);
          held.current = { x: event.clientX, y: event.clientY };
        }}
        onPointerMove={event => {
          if (held.current === null) return;
          onTurn((event.clientX - held.current.x) / PX_A_TURN, -(event.clientY - held.current.y) / PX_A_TURN);
          held.current = { x: event.clientX, y: event.clientY };
        }}
        onPointerUp={() => {
          held.current = null;
        }}
        onPointerCancel={() => {
          held.current = null;
        }}
        onKeyDown={event => {
          const [turns, downs] = TURNS[event.key] ?? [0, 0];
          if (event.key === 'Home') props.onStraight();
          else if (turns !== 0 || downs !== 0) onTurn(turns, downs);
          else return;
          event.preventDefault();
          event.stopPropagation();
        }}
      />
    </div>
  );
}

const TURNS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [1, 0],
  ArrowRight: [-1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};
