import type { Drill, Team } from '@icewright/book';
import { levelOf, type SpotId } from '@icewright/engine';
import { useMemo } from 'react';
import { Link } from 'wouter';
import { ChoiceField } from '../../parts/field.tsx';
import { countSaid } from '../../parts/figures.ts';
import { Sentence } from '../../parts/sentence.tsx';
import { spotsOf } from '../route-writes.ts';
import type { Hand } from '../use-hand.ts';
import { type TimedSkater, timedSkatersOf } from './people-of.ts';
import './people.css';

/** Which people skate the drill: the level's, all of ours that are timed in turn, or some of them by name. */
export function PeopleSentence({ hand, team }: { readonly hand: Hand; readonly team: Team }) {
  const { drill } = hand;
  const timed = useMemo(() => timedSkatersOf(team, drill.level), [team, drill.level]);
  if (timed.length === 0)
    return (
      <p className="q3 people-line">
        Nobody of ours is timed yet: <Link href="/team">gates on the team’s page</Link>.
      </p>
    );
  const said = {
    level: `skaters of the level`,
    timedTeam: `our ${countSaid(timed.length, 'timed skater')}, in turn`,
    named: 'ours by name',
  };
  const as = drill.people?.as ?? 'level';
  const choose = (next: string) => {
    if (next === 'level') hand.keep([{ path: ['people'], value: undefined }]);
    else if (next === 'timedTeam') hand.keep([{ path: ['people'], value: { as: next } }]);
    else hand.keep([{ path: ['people'], value: { as: 'named', bySpot: {} } }]);
  };
  return (
    <div className="people-line">
      <Sentence
        slots={{
          who: [
            {
              label: 'who skates',
              value: as,
              choices: [
                { value: 'level', said: `${said.level}: ${levelOf(drill.level).words.toLowerCase()}` },
                { value: 'timedTeam', said: said.timedTeam },
                { value: 'named', said: said.named },
              ],
              onChoose: choose,
            },
          ],
        }}
      >
        {slot => <>Skated by {slot('who', said[as], false, '.')}</>}
      </Sentence>
      {drill.people?.as === 'named' && <ByName hand={hand} people={drill.people} timed={timed} />}
    </div>
  );
}

function ByName(props: {
  readonly hand: Hand;
  readonly people: Extract<Drill['people'], { as: 'named' }>;
  readonly timed: readonly TimedSkater[];
}) {
  const { hand, people, timed } = props;
  const level = { value: 'level', said: 'of the level' };
  const choices = [
    level,
    ...timed.map(({ id, skater }) => ({ value: id as string, said: `${skater.number} ${skater.name}` })),
  ];
  return (
    <div className="people-names">
      {spotsOf(hand.drill)
        .filter(([, spot]) => spot.kind === 'skater')
        .map(([spotId, { role }]) => (
          <ChoiceField
            key={spotId}
            label={role}
            value={people.bySpot[spotId] ?? level.value}
            choices={choices}
            onChange={value => hand.keep([{ path: ['people'], value: withName(people, spotId, value) }])}
          />
        ))}
    </div>
  );
}

const withName = (
  people: Extract<Drill['people'], { as: 'named' }>,
  spotId: SpotId,
  skater: string,
): Drill['people'] => {
  const { [spotId]: _before, ...others } = people.bySpot;
  return { as: 'named', bySpot: skater === 'level' ? others : { ...others, [spotId]: skater as never } };
};
