import { useEffect, useRef } from 'react';
import { create } from 'zustand';

/**
 * Keys of the place one is in: bound and listed from the same lines, so that the list cannot be wrong.
 * Written as they are said: `g f` (one after the other), `Mod+z` (Ctrl, or Cmd on a Mac), `Shift+ArrowLeft`, `j`.
 */
export interface KeyLine {
  readonly keys: string;
  readonly says: string;
  /** Left out where the thing that has the focus hears the key itself: then it is only listed. */
  readonly act?: (event: KeyboardEvent) => void;
}

interface Bound {
  readonly lines: ReadonlyMap<symbol, readonly KeyLine[]>;
  /** Keys without Ctrl, Alt or Cmd can be put to sleep, for those who dictate. */
  readonly singleKeys: boolean;
}

const KEPT_AS = 'icewright.singleKeys';

export const useKeyLines = create<Bound>(() => ({
  lines: new Map(),
  singleKeys: localStorage.getItem(KEPT_AS) !== 'off',
}));

export function setSingleKeys(on: boolean): void {
  localStorage.setItem(KEPT_AS, on ? 'on' : 'off');
  useKeyLines.setState({ singleKeys: on });
}

/** Binds these keys while the component stands. The newest binding of a key wins. */
export function useKeys(lines: readonly KeyLine[]): void {
  const latest = useRef(lines);
  latest.current = lines;
  const shape = lines.map(line => `${line.keys}|${line.says}`).join('\n');
  // biome-ignore lint/correctness/useExhaustiveDependencies: bound anew only when what the list shows changes
  useEffect(() => {
    const own = Symbol('keys');
    const bound = latest.current.map((line, index) =>
      line.act === undefined
        ? line
        : { ...line, act: (event: KeyboardEvent) => latest.current[index]?.act?.(event) },
    );
    useKeyLines.setState(({ lines }) => ({ lines: new Map(lines).set(own, bound) }));
    return () =>
      useKeyLines.setState(({ lines }) => {
        const left = new Map(lines);
        left.delete(own);
        return { lines: left };
      });
  }, [shape]);
}

const isMac = /Mac|iP(hone|ad)/.test(navigator.platform);

let first: { key: string; atMs: number } | null = null;

/** One listener for the page. */
export function listenForKeys(): () => void {
  const heard = (event: KeyboardEvent) => {
    if (event.defaultPrevented || event.isComposing) return;
    const said = saidKey(event);
    // Out of a field the keys belong to the place again.
    if (said === 'Escape' && isTyping(event) && event.target instanceof HTMLElement)
      return event.target.blur();
    const withMod = said.includes('Mod+') || event.altKey;
    if (!withMod && (!useKeyLines.getState().singleKeys || isTyping(event))) return;
    if (withMod && isTyping(event) && !(said.endsWith('Mod+z') && isField(event))) return;
    const both = first !== null && event.timeStamp - first.atMs < 1200 ? `${first.key} ${said}` : null;
    first = said.length === 1 ? { key: said, atMs: event.timeStamp } : null;
    const lines = [...useKeyLines.getState().lines.values()]
      .flat()
      .filter(({ act }) => act !== undefined)
      .reverse();
    const line = lines.find(one => one.keys === both) ?? lines.find(one => one.keys === said);
    if (line === undefined || pressesItself(event)) return;
    first = null;
    event.preventDefault();
    line.act?.(event);
  };
  window.addEventListener('keydown', heard);
  return () => window.removeEventListener('keydown', heard);
}

function saidKey(event: KeyboardEvent): string {
  const mod = (isMac ? event.metaKey : event.ctrlKey) ? 'Mod+' : '';
  const alt = event.altKey ? 'Alt+' : '';
  const key = event.key.length === 1 ? event.key.toLowerCase() : event.key;
  // Shift is said with keys that have a name; with a character it is already in the character, unless a modifier is held.
  const shift = event.shiftKey && (event.key.length > 1 || mod !== '' || /[a-z]/.test(key)) ? 'Shift+' : '';
  return `${shift}${alt}${mod}${key === ' ' ? 'Space' : key}`;
}

/** Space on a button or a link presses it, whatever the key does elsewhere. */
const pressesItself = (event: KeyboardEvent): boolean =>
  event.key === ' ' &&
  event.target instanceof HTMLElement &&
  event.target.closest('button, a, summary, input, [role="button"]') !== null;

function isTyping(event: KeyboardEvent): boolean {
  const target = event.target;
  if (!(target instanceof HTMLElement)) return false;
  return (
    target.isContentEditable ||
    target instanceof HTMLTextAreaElement ||
    target instanceof HTMLSelectElement ||
    (target instanceof HTMLInputElement && !['checkbox', 'radio', 'range', 'button'].includes(target.type)) ||
    target.closest('[role="listbox"],[role="menu"]') !== null
  );
}

/** A field whose every stroke goes into a document: undo there is the document's own. */
const isField = (event: KeyboardEvent) =>
  event.target instanceof HTMLElement && event.target.dataset.book !== undefined;

/** For people: `Mod+z` as it stands on their keyboard. */
export function keyWords(keys: string): string[] {
  return keys.split(' ').map(key =>
    key
      .replace('Mod', isMac ? 'Cmd' : 'Ctrl')
      .replace('ArrowLeft', '←')
      .replace('ArrowRight', '→')
      .replace('ArrowUp', '↑')
      .replace('ArrowDown', '↓')
      .replace(/\+(\w)$/, (_, letter: string) => `+${letter.toUpperCase()}`),
  );
}
