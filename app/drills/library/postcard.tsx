import type { Drill, Team } from '@icewright/book';
import { Link } from 'wouter';
import { Act } from '../../parts/act.tsx';
import { DrillPicture } from '../../parts/drill-picture.tsx';
import { countSaid, daySaid } from '../../parts/figures.ts';
import { named } from '../../parts/named.ts';
import { needsOfDrill, type Shelf } from './library-query.ts';
import { ICE_SAID } from './library-sentence.tsx';
import type { DrillUses } from './uses-of.ts';
import { VARIANT_SAID } from './variant-words.ts';

/** A drill as it lies in the library: its picture, what it needs, where it was used, and its versions. */
export function Postcard(props: {
  readonly shelf: Shelf;
  readonly team: Team;
  readonly uses: DrillUses;
  readonly onTakeOut: () => void;
}) {
  const { shelf, team, uses } = props;
  const { id, drill, versions } = shelf;
  const served = (drill.habits as readonly string[]).flatMap(habit => {
    const title = team.habits[habit as never]?.title;
    return title === undefined ? [] : [named(title, 'habit')];
  });
  return (
    <>
      <Link href={`/drills/${id}`} className="postcard">
        <DrillPicture drill={drill} upright={false} idPrefix={id} lengths={team.lengths} postcard />
        <span className="w postcard-title">{named(drill.title, 'drill')}</span>
        <span className="w postcard-says">{drill.says}</span>
        <span className="q3">
          {needsSaid(drill)}
          {served.length > 0 && `. ${served.join(', ')}`}
        </span>
      </Link>
      <p className="postcard-more q3">
        {usesSaid(uses)}
        {versions.length > 0 && (
          <>
            {' '}
            Versions:{' '}
            {versions.map((version, index) => (
              <span key={version.id}>
                {index > 0 && ', '}
                <Link href={`/drills/${version.id}`} aria-label={version.drill.title}>
                  {version.drill.variantOf ? VARIANT_SAID[version.drill.variantOf.as] : version.drill.title}
                </Link>
              </span>
            ))}
            .
          </>
        )}{' '}
        <Act bare label={`Take ${named(drill.title, 'drill')} out of the library`} onPress={props.onTakeOut}>
          Take out
        </Act>
      </p>
    </>
  );
}

export function needsSaid(drill: Drill): string {
  const needs = needsOfDrill(drill);
  const parts = [
    countSaid(needs.skaterCount, 'skater'),
    ...(needs.goalieCount > 0 ? [countSaid(needs.goalieCount, 'goalie')] : []),
    ...(needs.coachCount > 0 ? [countSaid(needs.coachCount, 'coach', 'coaches')] : []),
  ];
  return `${parts.join(', ')} a rep, ${ICE_SAID[needs.ice]}, ${drill.minutes} min`;
}

export function usesSaid({ practised, planned, minutes }: DrillUses): string {
  const last = practised.at(-1);
  const next = planned[0];
  if (last === undefined && next === undefined) return 'In no practice yet.';
  return [
    last &&
      `In ${countSaid(practised.length, 'practice')} so far, ${minutes} min, last ${daySaid(last.day)}.`,
    next && `Planned ${daySaid(next.day)}.`,
  ]
    .filter(Boolean)
    .join(' ');
}
