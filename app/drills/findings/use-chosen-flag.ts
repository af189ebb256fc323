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
  const down = useRef({ x: Number.NaN, y: Number.NaN, number: Number.NaN });
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
    // Where the hand came down is what it meant: what is chosen by the press may move the page before the click.
    onPointerDownCapture: ({ clientX: x, clientY: y }) => {
      down.current = { x, y, number: Number(flagAt(x, y)?.dataset.number) };
    },
    onClick: event => {
      const { x, y, number: pressed } = down.current;
      const at = findings[pressed - 1];
      if (at === undefined || Math.hypot(event.clientX - x, event.clientY - y) > STILL_PX) return;
      choose(pressed);
      onLook(at, pressed);
    },
  };
}

/** In the score the room in which an act is taken lies over its flags; on the ice whatever lies over a flag goes first. */
function flagAt(x: number, y: number): SVGGElement | null {
  const stack = document.elementsFromPoint(x, y);
  const inScore = stack[0]?.closest('.score-box') !== null;
  for (const element of inScore ? stack : stack.slice(0, 1)) {
    const flag = element.closest<SVGGElement>('g.flag');
    if (flag !== null) return flag;
  }
  return null;
}

/** A press that moves no farther than this is no drag, px. */
const STILL_PX = 4;

const keyOf = ({ kind, spots }: Finding): string => `${kind} ${spots.join(' ')}`;
