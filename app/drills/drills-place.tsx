import { Failure } from '../parts/empty.tsx';
import { useDocument, useTeam } from '../shell/book.ts';
import './drills.css';
import { DrillList } from './drill-list.tsx';
import { Studio } from './studio.tsx';

/** The drills of the team, or one of them opened on the ice. */
export function DrillsPlace({ drillId }: { readonly drillId?: string }) {
  const { value: team } = useTeam();
  if (team === undefined) return null;
  return drillId === undefined ? <DrillList team={team} /> : <OneDrill id={drillId} />;
}

function OneDrill({ id }: { readonly id: string }) {
  const team = useTeam().value;
  const view = useDocument('drill', id);
  if (team === undefined || view.state === 'loading') return null;
  if (view.state === 'missing')
    return (
      <Failure
        where="Drills"
        what="This drill is not on this machine."
        lost="Nothing is lost: it may be on another that has not been reached yet."
      />
    );
  if (view.state === 'refused')
    return (
      <Failure
        where="Drills"
        what="This drill cannot be read by this Icewright."
        lost="It was written by a newer one, or is damaged. Nothing in it was changed."
      />
    );
  return <Studio id={id} kept={view.value} team={team} />;
}
