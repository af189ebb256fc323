import type { Team } from '@icewright/book';
import { useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { countSaid } from '../../parts/figures.ts';
import { named } from '../../parts/named.ts';
import { OutRow } from './out-row.tsx';

/** Which drills go into a booklet or a file: the open one first, then the others in the order they were chosen. */
export function DrillChoice(props: {
  readonly team: Team;
  readonly drillId: string;
  readonly title: string;
  readonly others: readonly string[];
  readonly onOthers: (others: readonly string[]) => void;
}) {
  const { others } = props;
  const [isOpen, setOpen] = useState(false);
  const offered = Object.entries(props.team.contents)
    .filter(([id, entry]) => entry.kind === 'drill' && !entry.removed && id !== props.drillId)
    .sort(([, a], [, b]) => a.title.localeCompare(b.title));
  return (
    <OutRow
      wide
      name="Which"
      says={
        others.length === 0
          ? 'this drill alone; PDF and drill file take several'
          : `${countSaid(others.length + 1, 'drill')} in the PDF and the drill file`
      }
    >
      <span className="w">{named(props.title, 'drill')}</span>
      {offered.length > 0 && (
        <Act opens={isOpen} onPress={() => setOpen(!isOpen)}>
          With others
        </Act>
      )}
      {isOpen && (
        <fieldset className="out-drills">
          <legend className="vh">Other drills</legend>
          {offered.map(([id, entry]) => (
            <Act
              key={id}
              isOn={others.includes(id)}
              onPress={() =>
                props.onOthers(others.includes(id) ? others.filter(other => other !== id) : [...others, id])
              }
            >
              {named(entry.title, 'drill')}
            </Act>
          ))}
        </fieldset>
      )}
    </OutRow>
  );
}
