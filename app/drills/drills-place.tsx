import { ActLink } from '../parts/act.tsx';
import { Failure } from '../parts/empty.tsx';
import { useDocument, useTeam } from '../shell/book.ts';
import { RunningHead } from '../shell/running-head.tsx';
import './drills.css';
import './many/many.css';
import { DrillList } from './drill-list.tsx';
import { Studio } from './studio.tsx';

/** The drills of the team, or one of them opened on the ice. */
export function DrillsPlace({ drillId }: { readonly drillId?: string }) {
  const { value: team, id: teamId } = useTeam();
  if (team === undefined) return null;
  return drillId === undefined ? <DrillList team={team} teamId={teamId} /> : <OneDrill id={drillId} />;
}

function OneDrill({ id }: { readonly id: string }) {
  const team = useTeam().value;
  const view = useDocument('drill', id);
  if (view.state === 'ready' && team !== undefined) return <Studio id={id} kept={view.value} team={team} />;
  if (team === undefined || view.state === 'loading') return <p className="vh">Opening</p>;
  const isRefused = view.state === 'refused';
  return (
    <>
      <RunningHead back={{ to: '/drills', said: 'Drills' }} title="No drill" titleWords="No drill" />
      <Failure
        where="Drill"
        what={
          isRefused ? 'This drill cannot be read by this Icewright.' : 'This drill is not on this machine.'
        }
        lost={
          isRefused
            ? 'It was written by a newer one, or is damaged. Nothing in it was changed.'
            : 'It may lie on another machine that has not been connected since.'
        }
      >
        <ActLink to="/drills">To the drills</ActLink>
      </Failure>
    </>
  );
}
