import type { ReactNode } from 'react';
import { named } from '../parts/named.ts';
import type { Editing } from './book.ts';
import { RunningHead } from './running-head.tsx';
import { UndoActs } from './undo-acts.tsx';

/** The head of a document that has a name: the name is written where it stands, and undo is the first of its acts. */
export function DocumentHead({
  what,
  title,
  editing,
  acts,
  ...rest
}: {
  readonly what: 'meeting' | 'practice';
  readonly title: string;
  readonly editing: Editing;
  readonly back: { readonly to: string; readonly said: string };
  readonly meta: ReactNode;
  readonly acts: ReactNode;
}) {
  return (
    <RunningHead
      {...rest}
      titleWords={named(title, what)}
      title={
        <input
          aria-label={`Name of the ${what}`}
          data-book="words"
          maxLength={200}
          value={title}
          onChange={event => editing.text(['title'], event.target.value)}
        />
      }
      acts={
        <>
          <UndoActs />
          {acts}
        </>
      }
    />
  );
}
