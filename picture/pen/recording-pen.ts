import { type LetteringName, letteringOf } from '../lettering.ts';
import type { MarkName } from '../marks.ts';
import { letterWidth } from './letter-widths.ts';
import { pathString } from './path-string.ts';
import type { Drawing, Pen, Photo, PhotoBox, Placing, TextSetting } from './pen.ts';
import { type PenState, placedState } from './pen-state.ts';
import { letterSize } from './stroke-set.ts';

/** One call of a drawing, as a test wants to ask about it. */
export type PenCall =
  | { readonly call: 'path'; readonly mark: MarkName; readonly outline: string }
  | {
      readonly call: 'circle';
      readonly mark: MarkName;
      readonly x: number;
      readonly y: number;
      readonly radius: number;
    }
  | {
      readonly call: 'text';
      readonly lettering: LetteringName;
      readonly words: string;
      readonly x: number;
      readonly y: number;
      readonly set: TextSetting;
    }
  | { readonly call: 'group'; readonly name: string; readonly data: Readonly<Record<string, string>> }
  | { readonly call: 'place'; readonly where: Placing }
  | { readonly call: 'clip'; readonly outline: string }
  | { readonly call: 'photo'; readonly of: Photo; readonly box: PhotoBox }
  | { readonly call: 'end' };

/** Draws into a list of calls. */
export const recordingOf = (draw: Drawing, start: { readonly k?: number } = {}): readonly PenCall[] => {
  const calls: PenCall[] = [];
  let state: PenState = { k: start.k ?? 1, thinFloor: 0, turnRad: 0 };
  const within = (inner: () => void) => {
    inner();
    calls.push({ call: 'end' });
  };
  const pen: Pen = {
    get k() {
      return state.k;
    },
    get thinFloor() {
      return state.thinFloor;
    },
    get turnRad() {
      return state.turnRad;
    },
    path: (mark, outline) => calls.push({ call: 'path', mark, outline: pathString(outline, 3) }),
    circle: (mark, x, y, radius) => calls.push({ call: 'circle', mark, x, y, radius }),
    text: (lettering, words, x, y, set = {}) => calls.push({ call: 'text', lettering, words, x, y, set }),
    measure: (lettering, words, size) =>
      letterWidth(words, letteringOf(lettering)) * letterSize(lettering, state, size),
    group: (name, data, inner) => {
      calls.push({ call: 'group', name, data });
      within(inner);
    },
    kept: (_of, _and, inner) => inner(),
    place: (where, inner) => {
      const before = state;
      state = placedState(before, where);
      calls.push({ call: 'place', where });
      within(inner);
      state = before;
    },
    photo: (of, box) => calls.push({ call: 'photo', of, box }),
    clip: (outline, inner) => {
      calls.push({ call: 'clip', outline: pathString(outline, 3) });
      within(inner);
    },
  };
  draw(pen);
  return calls;
};
