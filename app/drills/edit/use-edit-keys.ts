import { useKeys } from '../../shell/keys.ts';
import { focusOn, focusThing } from './things-in-focus.ts';
import type { Arrange } from './use-arrange.ts';

/** Keys of the board, beside those of each thing on it. */
export function useEditKeys(arrange: Arrange, onSaid: (said: string) => void): void {
  useKeys([
    { keys: 'n', says: 'the next thing on the ice', act: () => focusThing(1) },
    { keys: 'Shift+n', says: 'the one before', act: () => focusThing(-1) },
    {
      keys: 'ArrowLeft ArrowRight ArrowUp ArrowDown',
      says: 'on a skater or anything else on the ice: move it 0.1 m, with Shift 1 m',
    },
    { keys: 'Enter', says: 'on a thing on the ice: select it, with Shift one more' },
    { keys: 'c', says: 'what starts the open act', act: () => focusOn('.cue-handle') },
    { keys: 'p', says: 'pull a route out of who is selected', act: () => focusOn('.handle.pull') },
    { keys: 'Mod+a', says: 'select everything', act: arrange.all },
    { keys: 'm', says: 'mirror over the long axis', act: () => arrange.mirror('along') },
    { keys: 'Shift+m', says: 'mirror over the red line', act: () => arrange.mirror('across') },
    { keys: 't', says: 'turn by half', act: arrange.halfTurn },
    { keys: 'e', says: 'copy to the other end', act: arrange.toOtherEnd },
    { keys: 'Mod+c', says: 'copy', act: arrange.copy },
    { keys: 'Mod+x', says: 'cut', act: arrange.cut },
    { keys: 'Mod+v', says: 'paste', act: arrange.paste },
    {
      keys: 's',
      says: 'split the route at the point one is on',
      act: () => onSaid('Go to a point of a route first, then press s.'),
    },
    { keys: 'Shift+s', says: 'join the open route and the next', act: arrange.join },
    { keys: 'Delete', says: 'take what is selected off', act: arrange.takeOff },
    { keys: 'Backspace', says: 'the same', act: arrange.takeOff },
  ]);
}
