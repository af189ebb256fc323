import type { Finding } from '@icewright/engine';
import {
  type MouseEvent,
  type PointerEvent,
  type RefObject,
  useEffect,
  useLayoutEffect,
  useRef,
  useState,
} from 'react';

/** The chosen finding by the number of its flag: the same in the list, on the ice and in the score. */
export interface ChosenFlag {
  readonly number: number | null;
  readonly choose: (number: number | null) => void;
  /** For the part of the page that holds the ice and the score: a press on a flag there. */
  readonly onPointerDownCapture: (event: PointerEvent) => void;
  readonly onClick: (event: MouseEvent) => void;
}

/**
 * Keeps the chosen flag marked wherever the drawings under `root` show it. The choice is dropped when that finding is gone.
 * The drawings are markup of our own pen, in which a flag is `g.flag` with its number.
 */
export function useChosenFlag(
  root: RefObject<HTMLElement | null>,
  findings: readonly Finding[],
  onLook: (finding: Finding, number: number) => void,
): ChosenFlag {
  const [chosen, setChosen] = useState<{ readonly number: number; readonly key: string } | null>(null);
  const downAt = useRef({ x: Number.NaN, y: Number.NaN });
  const finding = chosen === null ? undefined : findings[chosen.number - 1];
  const number = finding !== undefined && chosen?.key === keyOf(finding) ? chosen.number : null;

  useEffect(() => {
    if (chosen !== null && number === null) setChosen(null);
  }, [chosen, number]);
  // After every picture: the drawings may have been written anew.
  useLayoutEffect(() => {
    for (const flag of root.current?.querySelectorAll<SVGGElement>('g.flag') ?? [])
      flag.classList.toggle('is-chosen', number !== null && flag.dataset.number === String(number));
  });

  const choose = (next: number | null) => {
    const at = next === null ? undefined : findings[next - 1];
    setChosen(next === null || at === undefined ? null : { number: next, key: keyOf(at) });
  };
  return {
    number,
    choose,
    onPointerDownCapture: event => {
      downAt.current = { x: event.clientX, y: event.clientY };
    },
    onClick: event => {
      const { clientX: x, clientY: y } = event;
      const isDragged = Math.hypot(x - downAt.current.x, y - downAt.current.y) > STILL_PX;
      // The ice and the score take hold of the pointer, so that a click there has not the flag as its target.
      const flag = isDragged ? null : document.elementFromPoint(x, y)?.closest<SVGGElement>('g.flag');
      const pressed = Number(flag?.dataset.number);
      const at = findings[pressed - 1];
      if (!flag || at === undefined) return;
      choose(pressed);
      onLook(at, pressed);
    },
  };
}

/** A press that moves no farther than this is no drag, px. */
const STILL_PX = 4;

const keyOf = ({ kind, spots }: Finding): string => `${kind} ${spots.join(' ')}`;
