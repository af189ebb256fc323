import type { Team } from '@icewright/book';
import { Act } from '../parts/act.tsx';
import { named } from '../parts/named.ts';
import { Slip } from '../parts/slip.tsx';
import { entriesOf, type Season } from '../shell/season.ts';

/** Chooses what the next block plays: a drill of the team, or talk. */
export function AddBlock(props: {
  readonly team: Team;
  readonly season: Season;
  readonly onAdd: (drillId: string | null) => void;
  readonly onClose: () => void;
}) {
  const { team, season, onAdd } = props;
  const drills = entriesOf(team, 'drill').sort(([, a], [, b]) => a.title.localeCompare(b.title));
  return (
    <Slip label="Add a block" onClose={props.onClose}>
      <span className="add-block">
        {drills.map(([id, entry]) => {
          const drill = season.drills.get(id);
          const serves =
            drill?.habits.map(habit => named(team.habits[habit]?.title ?? 'a habit taken out', 'habit')) ??
            [];
          return (
            <button type="button" key={id} className="choice-row" onClick={() => onAdd(id)}>
              <span className="w">{named(entry.title, 'drill')}</span>
              <span className="q3">
                {drill === undefined ? 'opening' : `${drill.minutes} min`}
                {serves.length > 0 && `, ${serves.join(', ').toLowerCase()}`}
              </span>
            </button>
          );
        })}
        {drills.length === 0 && (
          <span className="q2">There is no drill yet. Draw one in Drills, or add a talk.</span>
        )}
      </span>
      <span className="slip-acts">
        <Act onPress={() => onAdd(null)}>A talk, no drill</Act>
        <Act bare onPress={props.onClose}>
          Close
        </Act>
      </span>
    </Slip>
  );
}
