import { useLocation } from 'wouter';
import { Act } from '../parts/act.tsx';
import { openedId, redo, undo, useUndo } from './book.ts';

/** Undo and redo of what is open; also on Ctrl or Cmd with Z. */
export function UndoActs() {
  const [path] = useLocation();
  const id = openedId(path);
  const { canUndo, canRedo } = useUndo(id);
  return (
    <>
      <Act onPress={() => undo(id)} notNow={canUndo ? undefined : 'nothing of yours to undo here'}>
        Undo
      </Act>
      <Act onPress={() => redo(id)} notNow={canRedo ? undefined : 'nothing to redo here'}>
        Redo
      </Act>
    </>
  );
}
