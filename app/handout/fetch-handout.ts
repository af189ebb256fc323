import { currentSchema, type Drill } from '@icewright/book';

export interface Handed {
  readonly drill: Drill;
  /** Empty when the coach did not show it. */
  readonly teamName: string;
  readonly endsAt: number;
}

export type HandedAnswer =
  | { readonly kind: 'ok'; readonly value: Handed }
  | { readonly kind: 'none'; readonly said: string };

/** The one thing this page asks for. The server checked the drill when it was written. */
export async function fetchHandout(): Promise<HandedAnswer> {
  try {
    const answer = await fetch(`${location.pathname.replace(/\/$/, '')}/drill.json`);
    const body = await answer.json();
    if (!answer.ok) return { kind: 'none', said: body.sentence };
    const { teamName, endsAt, file } = body;
    const drill = { ...file.drills[0], kind: 'drill', schema: currentSchema.drill, madeAt: '' } as Drill;
    return { kind: 'ok', value: { drill, teamName, endsAt } };
  } catch {
    return { kind: 'none', said: 'The coach’s machine cannot be reached now. Try again later.' };
  }
}
