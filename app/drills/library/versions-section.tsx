import type { Drill, Team } from '@icewright/book';
import type { Id, Outcome } from '@icewright/engine';
import { useMemo, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { Act } from '../../parts/act.tsx';
import { daySaid, percentSaid, today } from '../../parts/figures.ts';
import { named } from '../../parts/named.ts';
import { createDocument, useDocuments } from '../../shell/book.ts';
import { entriesOf } from '../../shell/season.ts';
import type { People } from '../people/people-of.ts';
import { HabitWent } from './habit-went.tsx';
import { halfIceOf, type Made } from './half-ice.ts';
import { halfIceBroughtIn } from './half-ice-brought-in.ts';
import { InTheLibrary } from './in-the-library.tsx';
import { useTunedVersion } from './use-tuned-version.ts';
import { usesOf } from './uses-of.ts';
import { VARIANT_SAID } from './variant-words.ts';
import { withFewer } from './with-fewer.ts';

type Variant = NonNullable<Drill['variantOf']>['as'];

/** The drill's versions, made and to be made, where it was practised, and how its habit went since. */
export function VersionsSection(props: {
  readonly id: string;
  readonly drill: Drill;
  readonly team: Team;
  readonly outcome: Outcome | null;
  readonly people: People;
}) {
  const { id, drill, team, outcome } = props;
  const [, go] = useLocation();
  const [whyNot, setWhyNot] = useState<string | null>(null);
  const [brought, setBrought] = useState<Drill | null>(null);
  const [isAsked, setAsked] = useState(false);
  const drills = useDocuments(
    'drill',
    useMemo(() => entriesOf(team, 'drill').map(([each]) => each), [team]),
  );
  const practices = useDocuments(
    'practice',
    useMemo(() => entriesOf(team, 'practice').map(([each]) => each), [team]),
  );
  const uses = useMemo(
    () =>
      usesOf(
        [...practices].flatMap(([each, view]) =>
          view.state === 'ready' ? [[each, view.value] as const] : [],
        ),
        today(),
      )(id),
    [practices, id],
  );
  const base = drill.variantOf?.drill;
  const baseTitle = base === undefined ? undefined : team.contents[base as never]?.title;
  const versions = [...drills].flatMap(([each, view]) =>
    view.state === 'ready' && view.value.variantOf?.drill === id ? [[each, view.value] as const] : [],
  );
  const keep = (made: Drill, as: Variant, without?: string) => {
    const title = `${named(drill.title, 'drill')}, ${without === undefined ? VARIANT_SAID[as] : `without ${without}`}`;
    go(
      `/drills/${createDocument('drill', {
        ...(structuredClone(made) as Drill),
        title,
        variantOf: { drill: id as Id<'document'>, as },
        madeAt: new Date().toISOString(),
      })}`,
    );
  };
  const tuned = useTunedVersion(drill, outcome, props.people, keep);
  const take = (made: Made, as: Variant) => {
    setBrought(null);
    if ('whyNot' in made) {
      setWhyNot(made.whyNot);
      if (as === 'halfIce') setBrought(halfIceBroughtIn(drill));
    } else keep(made.drill, as, made.without);
  };
  // Where nobody is told to do anything, nothing comes out more or less often.
  const hasRep = Object.values(drill.spots).some(spot => Object.keys(spot.acts).length > 0);
  const saidNot = whyNot ?? tuned.whyNot;
  return (
    <section className="sec versions">
      <h2>
        Versions <span className="q3">the same problem, otherwise</span>
      </h2>
      {base !== undefined && (
        <p>
          {baseTitle === undefined ? (
            'A version of a drill that is no longer here.'
          ) : (
            <>
              {capital(VARIANT_SAID[drill.variantOf!.as])} than{' '}
              <Link href={`/drills/${base}`} className="w">
                {named(baseTitle, 'drill')}
              </Link>
              .
            </>
          )}
        </p>
      )}
      {versions.length > 0 && (
        <ul className="versions-made">
          {versions.map(([each, version]) => (
            <li key={each}>
              <Link href={`/drills/${each}`}>{named(version.title, 'drill')}</Link>
            </li>
          ))}
        </ul>
      )}
      <p className="versions-acts">
        {(hasRep ? (['simpler', 'harder'] as const) : []).map(as => (
          <Act
            key={as}
            working={tuned.looking === as}
            onPress={() => {
              setWhyNot(null);
              tuned.look(as);
            }}
          >
            {tuned.looking === as
              ? `Stop, ${percentSaid(tuned.doneRatio)} looked through`
              : as === 'simpler'
                ? 'Simpler'
                : 'Harder'}
          </Act>
        ))}
        <Act onPress={() => take(halfIceOf(drill, team.lengths), 'halfIce')}>Half ice</Act>
        <Act onPress={() => take(withFewer(drill), 'fewer')}>With fewer</Act>
      </p>
      {saidNot !== null && (
        <p className="q2" role="status">
          No such version: {saidNot}.{' '}
          {brought !== null && whyNot !== null && (
            <Act onPress={() => keep(brought, 'halfIce')}>Make it, with those outside brought in</Act>
          )}
        </p>
      )}
      <p className="q2">
        {uses.practised.length === 0 && uses.planned.length === 0 ? (
          'Not in a practice yet.'
        ) : (
          <>
            In{' '}
            {[...uses.practised, ...uses.planned].map((use, index) => (
              <span key={use.practiceId}>
                {index > 0 && ', '}
                <Link href={`/practices/${use.practiceId}`}>{daySaid(use.day)}</Link> {use.minutes} min
              </span>
            ))}
            .
          </>
        )}{' '}
        {drill.habits.length > 0 && (
          <Act bare opens={isAsked} onPress={() => setAsked(!isAsked)}>
            How the habit went
          </Act>
        )}
      </p>
      <InTheLibrary id={id} team={team} />
      {isAsked && <HabitWent team={team} habits={drill.habits as readonly string[]} />}
    </section>
  );
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
