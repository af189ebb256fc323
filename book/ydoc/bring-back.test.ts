import { expect, it } from 'vitest';
import { bringBack } from './bring-back.ts';
import { changeText, removeAt, setAt } from './change.ts';
import { newDocument } from './new-document.ts';
import { sampleAct, sampleDrill, sampleGame, sampleSpot } from './sample-documents.ts';
import { readDocument } from './snapshot.ts';
import { undoOf } from './undo.ts';

it('an earlier version comes back whole, and can be undone', () => {
  const ydoc = newDocument('drill', 'drill-1', sampleDrill());
  changeText(ydoc, ['keyPoints'], 'Something else', 'x');
  removeAt(ydoc, ['spots', 's1'], 'x');
  setAt(ydoc, ['spots', 's2', 'acts', 'a9'], sampleAct(1), 'x');
  setAt(ydoc, ['spots', 's9'], sampleSpot(9), 'x');
  const now = readDocument(ydoc);
  const undo = undoOf(ydoc, 'me');
  expect(bringBack(ydoc, sampleDrill(), 'me')).toEqual({ kind: 'done' });
  expect(readDocument(ydoc)).toEqual({ kind: 'ok', value: sampleDrill(), issues: [] });
  undo.undo();
  expect(readDocument(ydoc)).toEqual(now);
});

it('a field that the earlier version did not have is taken away', () => {
  const ydoc = newDocument('game', 'game-1', { ...sampleGame(), score: { us: 1, them: 2 } });
  bringBack(ydoc, sampleGame(), 'me');
  expect(readDocument(ydoc)).toEqual({ kind: 'ok', value: sampleGame(), issues: [] });
});
