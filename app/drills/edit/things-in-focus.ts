import type { Selection } from './selection.ts';

/** Where the keys are on the board. Things are found by their data, since the drawing makes them anew at every change. */

/** The next thing on the ice, or the one before. */
export function focusThing(by: 1 | -1): void {
  const things = [...document.querySelectorAll<SVGGElement>('.board [data-thing]')];
  const now = things.indexOf(document.activeElement as SVGGElement);
  const from = now < 0 && by < 0 ? 0 : now;
  things[(from + by + things.length) % things.length]?.focus();
}

export function focusOn(what: string): void {
  document.querySelector<SVGGElement>(`.board ${what}`)?.focus();
}

/** Goes to the last of what is new once it is drawn, when the keys were on the board: what they do next is meant for it. */
export function focusSoon(selection: Selection): void {
  const last = selection.at(-1);
  if (last === undefined || document.activeElement?.closest('.board') == null) return;
  requestAnimationFrame(() => focusOn(`[data-thing="${CSS.escape(JSON.stringify(last))}"]`));
}
