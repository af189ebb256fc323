import { type Drill, emptyDrill, type Team } from '@icewright/book';
import type { DrillPlan, Id, Idea, IdeaVersion, RinkChoice } from '@icewright/engine';
import { createDocument } from '../../shell/book.ts';

/** Where an idea comes from and what it serves. */
export interface IdeaOrigin {
  readonly title: string;
  readonly says: string;
  readonly habit: Id<'habit'>;
  readonly rink: RinkChoice;
  readonly from: NonNullable<Drill['from']>;
}

/** Keeps an idea as a drill, with its simpler and its harder version as drills of their own that lead back to it. */
export function takeIdea(idea: Idea, origin: IdeaOrigin, team: Team): string {
  const drillOf = (title: string, plan: DrillPlan, more: Partial<Drill> = {}): string =>
    createDocument('drill', {
      ...emptyDrill({
        title,
        level: team.level,
        rink: origin.rink,
        madeAt: new Date().toISOString(),
        from: origin.from,
      }),
      says: origin.says,
      habits: [origin.habit],
      // What the idea was tuned to stays what is counted of it.
      wanted:
        idea.outcome.kind === 'standardHeld' ? { kind: 'habitHeld', habit: origin.habit } : idea.outcome,
      ...(structuredClone(plan) as Pick<Drill, 'spots' | 'pucks' | 'gear'>),
      ...more,
    });
  const id = drillOf(origin.title, idea.plan);
  const version = (as: 'simpler' | 'harder', made: IdeaVersion) => {
    if (made.kind === 'version')
      drillOf(`${origin.title}, ${as}`, made.plan, { variantOf: { drill: id as Id<'document'>, as } });
  };
  version('simpler', idea.simpler);
  version('harder', idea.harder);
  return id;
}
