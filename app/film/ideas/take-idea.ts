import { type Drill, emptyDrill, type Team } from '@icewright/book';
import type { Id, Idea, RinkChoice } from '@icewright/engine';
import { createDocument } from '../../shell/book.ts';

/** Where an idea comes from and what it serves. */
export interface IdeaOrigin {
  readonly title: string;
  readonly says: string;
  readonly habit: Id<'habit'>;
  readonly rink: RinkChoice;
  readonly from: NonNullable<Drill['from']>;
}

/** Keeps an idea as a drill; a simpler and a harder one are made of it on its page, when they are asked for. */
export const takeIdea = (idea: Idea, origin: IdeaOrigin, team: Team): string =>
  createDocument('drill', {
    ...emptyDrill({
      title: origin.title,
      level: team.level,
      rink: origin.rink,
      madeAt: new Date().toISOString(),
      from: origin.from,
    }),
    says: origin.says,
    habits: [origin.habit],
    // What the idea was tuned to stays what is counted of it.
    wanted: idea.outcome.kind === 'standardHeld' ? { kind: 'habitHeld', habit: origin.habit } : idea.outcome,
    ...(structuredClone(idea.plan) as Pick<Drill, 'spots' | 'pucks' | 'gear'>),
  });
