import type { Team } from '@icewright/book';
import { newId, rankAtEnd } from '@icewright/book';
import type { Id } from '@icewright/engine';
import { useState } from 'react';
import { useSearch } from 'wouter';
import { Act, ActLink } from '../parts/act.tsx';
import { clockSaid, countSaid, daySaid } from '../parts/figures.ts';
import { addressOfCard } from '../shell/addresses.ts';
import { edit, endStep, useDocument } from '../shell/book.ts';
import { DocumentHead } from '../shell/document-head.tsx';
import { DocumentNotHere, UnfitValues } from '../shell/document-not-here.tsx';
import { useKeys } from '../shell/keys.ts';
import { useSeason } from '../shell/season.ts';
import { AddBlock } from './add-block.tsx';
import { BlockFields } from './block-fields.tsx';
import { wordsOfDrill } from './block-words.ts';
import { CardPage } from './card-page.tsx';
import { HabitsServed } from './habits-served.tsx';
import { PlanOverTime } from './plan-over-time.tsx';
import { PracticeFields } from './practice-fields.tsx';
import { leftSaid, type Schedule, scheduleOf } from './schedule.ts';
import { WhoIsHere } from './who-is-here.tsx';

export function PracticePage(props: {
  readonly team: Team;
  readonly teamId: string;
  readonly practiceId: string;
  readonly asCard: boolean;
}) {
  const { team, teamId, practiceId } = props;
  const { state, value: practice, issues } = useDocument('practice', practiceId);
  const season = useSeason(team);
  // A block that has just been put in is open, and it is said where it went.
  const putIn = new URLSearchParams(useSearch()).get('block');
  const [selected, setSelected] = useState(putIn);
  const [isAdding, setAdding] = useState(false);
  const editing = edit(practiceId);
  const schedule = practice === undefined ? undefined : scheduleOf(practice);
  const ids = schedule?.blocks.map(({ id }) => id) ?? [];
  const chosen = selected !== null && ids.includes(selected) ? selected : (ids[0] ?? null);
  const select = (by: number) => {
    const next = ids[Math.max(0, Math.min(ids.length - 1, ids.indexOf(chosen ?? '') + by))];
    if (next !== undefined) setSelected(next);
  };
  useKeys([
    { keys: 'a', says: 'add a block', act: () => setAdding(true) },
    { keys: 'ArrowLeft', says: 'the block before', act: () => select(-1) },
    { keys: 'ArrowRight', says: 'the block after', act: () => select(1) },
  ]);
  if (state === 'loading') return <p className="vh">Opening</p>;
  const back = { to: '/practices', said: 'Practices' };
  if (practice === undefined || schedule === undefined)
    return (
      <DocumentNotHere what="practice" isRefused={state === 'refused'} back={back} to="To the practices" />
    );
  if (props.asCard) {
    return <CardPage team={team} practice={practice} practiceId={practiceId} drills={season.drills} />;
  }
  const add = (drillId: string | null) => {
    const drill = drillId === null ? undefined : season.drills.get(drillId);
    const id = newId<'block'>();
    endStep(practiceId);
    editing.set(['blocks', id], {
      rank: rankAtEnd(practice.blocks),
      ...(drillId === null ? {} : { drill: drillId as Id<'document'> }),
      ...wordsOfDrill(drill),
      minutes: drill?.minutes ?? 3,
      changeoverMinutes: 1,
      leads: '',
      pucks: '',
      ice: '',
      groups: '',
    });
    setSelected(id);
    setAdding(false);
  };
  return (
    <>
      <DocumentHead
        back={back}
        what="practice"
        title={practice.title}
        editing={editing}
        meta={
          <>
            {daySaid(practice.day)}
            {practice.place !== '' && `, ${practice.place}`}.{' '}
            <b>
              {clockSaid(practice.starts, team.clockFace)} to{' '}
              {clockSaid(schedule.iceEndsClock, team.clockFace)}
            </b>
            , {practice.iceMinutes} min of ice, {hereSaid(team, practice.missing)}
          </>
        }
        acts={
          <>
            <Act opens={isAdding} onPress={() => setAdding(!isAdding)}>
              Add a block
            </Act>
            <ActLink lead to={addressOfCard(practiceId)}>
              Ice card
            </ActLink>
          </>
        }
      />
      <main className="place practice">
        <div className="plan-side">
          {isAdding && <AddBlock team={team} season={season} onAdd={add} onClose={() => setAdding(false)} />}
          <UnfitValues what="practice" count={issues.length} />
          {putIn !== null && <PutInSaid schedule={schedule} blockId={putIn} team={team} />}
          <PlanOverTime
            team={team}
            practice={practice}
            schedule={schedule}
            drills={season.drills}
            chosen={chosen}
            onChoose={setSelected}
            onMove={(id, toIndex) => {
              endStep(practiceId);
              editing.move(['blocks'], id, toIndex);
              setSelected(id);
            }}
            onMinutes={(id, minutes) => editing.set(['blocks', id, 'minutes'], minutes)}
            onAdd={() => setAdding(true)}
          />
          <p
            className={schedule.usedMinutes > schedule.iceMinutes ? 'plan-total warm b' : 'plan-total q2'}
            role="status"
          >
            {schedule.usedMinutes} of {schedule.iceMinutes} min with changeovers, {leftSaid(schedule)}.
          </p>
          <HabitsServed team={team} schedule={schedule} drills={season.drills} />
        </div>
        <aside className="margin">
          {chosen !== null && (
            <BlockFields
              key={chosen}
              team={team}
              season={season}
              schedule={schedule}
              practiceId={practiceId}
              blockId={chosen}
              editing={editing}
              onRemove={() => {
                endStep(practiceId);
                editing.remove(['blocks', chosen]);
              }}
            />
          )}
          <WhoIsHere team={team} teamId={teamId} practice={practice} editing={editing} />
          <PracticeFields practice={practice} editing={editing} face={team.clockFace} />
        </aside>
      </main>
    </>
  );
}

function PutInSaid(props: { readonly schedule: Schedule; readonly blockId: string; readonly team: Team }) {
  const { blocks } = props.schedule;
  const at = blocks.findIndex(({ id }) => id === props.blockId);
  const put = blocks[at];
  if (put === undefined) return null;
  const after = blocks[at + 1];
  return (
    <p className="q2" role="status">
      Put in: <b className="w">{put.block.title}</b>, {put.block.minutes} min from{' '}
      {clockSaid(put.startsClock, props.team.clockFace)}
      {after === undefined ? ', at the end' : <>, before {after.block.title}</>}.
    </p>
  );
}

function hereSaid(team: Team, missing: readonly string[]): string {
  const here = Object.entries(team.skaters).filter(([id]) => !missing.includes(id));
  const goalies = here.filter(([, skater]) => skater.position === 'G').length;
  return `${countSaid(here.length - goalies, 'skater')}, ${countSaid(goalies, 'goalie')}`;
}
