import type { Practice } from '@icewright/book';

/** Where a drill was practised, before today, and where it is planned. */
export interface DrillUses {
  readonly practised: readonly Use[];
  readonly planned: readonly Use[];
  readonly minutes: number;
}

export interface Use {
  readonly practiceId: string;
  readonly day: string;
  readonly minutes: number;
}

const NEVER: DrillUses = { practised: [], planned: [], minutes: 0 };

/** The uses of every drill, one a practice, the oldest first; of another drill none. */
export function usesOf(
  practices: readonly (readonly [string, Practice])[],
  today: string,
): (drillId: string) => DrillUses {
  const uses = new Map<string, Use[]>();
  for (const [practiceId, practice] of practices) {
    for (const block of Object.values(practice.blocks)) {
      if (block.drill === undefined) continue;
      const of = uses.get(block.drill) ?? [];
      const before = of.find(use => use.practiceId === practiceId)?.minutes ?? 0;
      uses.set(block.drill, [
        ...of.filter(use => use.practiceId !== practiceId),
        { practiceId, day: practice.day, minutes: before + block.minutes },
      ]);
    }
  }
  return drillId => {
    const of = uses.get(drillId);
    if (of === undefined) return NEVER;
    const inOrder = [...of].sort((a, b) => a.day.localeCompare(b.day));
    const practised = inOrder.filter(use => use.day < today);
    return {
      practised,
      planned: inOrder.filter(use => use.day >= today),
      minutes: practised.reduce((sum, use) => sum + use.minutes, 0),
    };
  };
}

/** What stays as it is when a drill is taken out of the library: the practices it stands in. */
export function staysSaid({ practised, planned }: DrillUses, daySaid: (day: string) => string): string {
  const days = [...practised, ...planned].map(use => daySaid(use.day));
  return days.length === 0 ? '' : ` It stays in the practice of ${days.join(', of ')}.`;
}
