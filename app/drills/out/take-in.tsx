import { drillFileLimit, importDrills, type Team } from '@icewright/book';
import { type ReactNode, useState } from 'react';
import { Link } from 'wouter';
import { Act } from '../../parts/act.tsx';
import { DropHere } from '../../parts/drop-here.tsx';
import { countSaid } from '../../parts/figures.ts';
import { FileAct } from '../../parts/file-act.tsx';
import { named } from '../../parts/named.ts';
import { createDocument, type useDocuments } from '../../shell/book.ts';
import { type Already, alreadyHere } from './already-here.ts';
import './out.css';

type Taken =
  | {
      readonly kind: 'taken';
      readonly drills: readonly TakenDrill[];
      readonly otherHabits: readonly string[];
    }
  | { readonly kind: 'refused'; readonly file: string; readonly said: string };

interface TakenDrill {
  readonly id: string;
  readonly title: string;
  readonly already: Already;
}

type Views = ReturnType<typeof useDocuments<'drill'>>;

export interface TakeIn {
  readonly taken: Taken | null;
  readonly take: (file: File | undefined) => Promise<void>;
  readonly putAway: () => void;
}

/** Takes drill files into the team: all of a file, or nothing and the reason. */
export function useTakeIn(team: Team, views: Views): TakeIn {
  const [taken, setTaken] = useState<Taken | null>(null);
  const take = async (file: File | undefined) => {
    if (file === undefined) return;
    const refused = (said: string) => setTaken({ kind: 'refused', file: file.name, said });
    // Four bytes a letter at most: what is larger cannot be read anyway.
    if (file.size > 4 * drillFileLimit) return refused('the file is far larger than any drill file');
    const imported = importDrills(await file.text(), {
      habits: team.habits,
      madeAt: new Date().toISOString(),
    });
    if (imported.kind === 'refused') return refused(imported.said);
    const here = [...views].flatMap(([id, view]) =>
      view.state === 'ready' ? [[id as string, view.value] as const] : [],
    );
    const drills = imported.drills.map(({ id, value }) => ({
      id,
      value,
      already: alreadyHere(value, here, team.habits),
    }));
    const idOf = (id: string) => {
      const already = drills.find(one => one.id === id)?.already;
      return already?.kind === 'same' ? already.id : id;
    };
    for (const { id, value, already } of drills) {
      if (already.kind === 'same') continue;
      const { variantOf } = value;
      const of = variantOf && { variantOf: { ...variantOf, drill: idOf(variantOf.drill) as never } };
      createDocument('drill', { ...value, ...of }, id);
    }
    setTaken({
      kind: 'taken',
      drills: drills.map(({ id, value, already }) => ({ id: idOf(id), title: value.title, already })),
      otherHabits: [...new Set(imported.drills.flatMap(({ otherHabits }) => otherHabits))],
    });
  };
  return { taken, take, putAway: () => setTaken(null) };
}

/** The act in the head of the list. */
export function TakeInAct({ take }: { readonly take: TakeIn['take'] }) {
  return (
    <FileAct
      says="Take in a drill file"
      label="A drill file"
      accept=".json,application/json"
      onFile={file => void take(file)}
    />
  );
}

/** What came of it, below the head. */
export function TakenIn({ taken, putAway }: Pick<TakeIn, 'taken' | 'putAway'>) {
  if (taken === null) return null;
  if (taken.kind === 'refused')
    return (
      <p className="take-in warm" role="alert">
        {taken.file}: {taken.said}. Nothing was changed.{' '}
        <Act bare onPress={putAway}>
          Close
        </Act>
      </p>
    );
  return (
    <p className="take-in" role="status">
      <TakenList says="taken in" drills={taken.drills.filter(({ already }) => already.kind !== 'same')} />
      <TakenList
        says="already here, unchanged"
        drills={taken.drills.filter(({ already }) => already.kind === 'same')}
      />
      {taken.otherHabits.length > 0 && (
        <span className="q2">Made for habits you do not have: {taken.otherHabits.join(', ')}. </span>
      )}
      <Act bare onPress={putAway}>
        Close
      </Act>
    </p>
  );
}

function TakenList({ says, drills }: { readonly says: string; readonly drills: readonly TakenDrill[] }) {
  if (drills.length === 0) return null;
  return (
    <>
      {countSaid(drills.length, 'drill')} {says}:{' '}
      {drills.map(({ id, title, already }, index) => (
        <span key={id}>
          {index > 0 && ', '}
          <Link href={`/drills/${id}`}>{named(title, 'drill')}</Link>
          {already.kind === 'differs' && (
            <>
              {' '}
              (beside <Link href={`/drills/${already.id}`}>yours of that title</Link>, which differs in{' '}
              {already.parts.join(', ')})
            </>
          )}
        </span>
      ))}
      .{' '}
    </>
  );
}

/** The whole list takes a drill file that is dropped on it. */
export function DropDrills({
  take,
  children,
}: {
  readonly take: TakeIn['take'];
  readonly children: ReactNode;
}) {
  return (
    <DropHere className="drop-drills" onDrop={files => void take(files.files[0])}>
      {children}
    </DropHere>
  );
}
