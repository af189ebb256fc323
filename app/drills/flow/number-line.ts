import { numberSaid } from '../../parts/figures.ts';
import type { SlotLine } from '../../parts/sentence.tsx';

/** A slot for a number: those offered, and the present one wherever it belongs. */
export function numberLine(
  label: string,
  offered: readonly number[],
  value: number,
  onChoose: (value: number) => void,
): SlotLine {
  const all = [...new Set([...offered, value])].sort((a, b) => a - b);
  return {
    label,
    choices: all.map(one => ({ value: String(one), said: numberSaid(one, Number.isInteger(one) ? 0 : 1) })),
    value: String(value),
    onChoose: chosen => onChoose(Number(chosen)),
  };
}
