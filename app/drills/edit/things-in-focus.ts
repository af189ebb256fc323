import type { Picked, Selection } from './selection.ts';

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
  if (last !== undefined && isOnBoard()) focusWhenDrawn(last);
}

/** Goes to it once it is drawn, from wherever the keys are. */
export function focusWhenDrawn(thing: Picked): void {
  requestAnimationFrame(() => focusOnThing(thing));
}

export function focusOnThing(thing: Picked): void {
  focusOn(`[data-thing="${CSS.escape(JSON.stringify(thing))}"]`);
}

/**
 * What the keys are on is about to be taken off: they go on to the next thing, or to the line of what can be set on the ice when
 * nothing is left. Else the page would take them back to its very top.
 */
export function focusBeyond(gone: Selection): void {
  if (!isOnBoard()) return;
  const names = new Set(gone.map(one => JSON.stringify(one)));
  const things = [...document.querySelectorAll<SVGGElement>('.board [data-thing]')];
  const isGone = (thing: SVGGElement) => names.has(thing.dataset.thing ?? '');
  const from = Math.max(0, things.indexOf(document.activeElement as SVGGElement));
  const left = [...things.slice(from), ...things.slice(0, from).reverse()].find(thing => !isGone(thing));
  // At once: it stands already, and a key that comes right after this one is meant for it.
  (left ?? document.querySelector<HTMLElement>('.things button'))?.focus();
}

const isOnBoard = (): boolean => document.activeElement?.closest('.board') != null;
