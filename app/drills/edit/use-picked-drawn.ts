import { type RefObject, useLayoutEffect } from 'react';
import type { Selection } from './selection.ts';

/** Marks the lines of the acts that are selected, in a drawing that is made anew at every change. */
export function usePickedDrawn(
  drawing: RefObject<SVGGElement | null>,
  drawn: readonly string[],
  selection: Selection,
): void {
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new drawing has lost the marks
  useLayoutEffect(() => {
    const root = drawing.current;
    if (root === null) return;
    for (const one of root.querySelectorAll('.is-picked')) one.classList.remove('is-picked');
    for (const one of selection)
      if (one.kind === 'act')
        for (const line of root.querySelectorAll(
          `[data-spot="${CSS.escape(one.spot)}"][data-act="${CSS.escape(one.act)}"]`,
        ))
          line.classList.add('is-picked');
  }, [drawing, drawn, selection]);
}
