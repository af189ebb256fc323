import { useEffect } from 'react';
import { useKeys } from '../shell/keys.ts';
import type { Desk } from './freeze-desk.ts';

/** What is in use on the frozen picture is put away by Escape, wherever the keys are, and when marks begin to be drawn; taken up again, it ends the drawing. */
export const useToolAway = (desk: Desk | undefined, isDrawing: boolean, stopDrawing: () => void): void => {
  const isArmed = desk !== undefined && desk.tool.kind !== 'look';
  // Pins are what drawing itself needs first.
  const isOther = isArmed && desk.tool.kind !== 'pin';
  const putAway = () => desk?.setTool({ kind: 'look' });
  useKeys(isArmed ? [{ keys: 'Escape', says: 'put away what is in use on the picture', act: putAway }] : []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: only when drawing begins
  useEffect(() => {
    if (isDrawing && isOther) putAway();
  }, [isDrawing]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: only when something is taken up
  useEffect(() => {
    if (isDrawing && isOther) stopDrawing();
  }, [isOther]);
};
