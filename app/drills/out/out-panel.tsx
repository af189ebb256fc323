import type { Drill, Team } from '@icewright/book';
import { useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { useDocuments } from '../../shell/book.ts';
import { DrillChoice } from './drill-choice.tsx';
import { FileActs } from './file-acts.tsx';
import { FilmActs } from './film-acts.tsx';
import { LinkActs } from './link-acts.tsx';
import './out.css';

/** The drill out of the workbench: on paper, as a picture, moving, as a file, as a link for a player. */
export function OutPanel(props: {
  readonly id: string;
  readonly drill: Drill;
  readonly team: Team;
  readonly onClose: () => void;
}) {
  const { id, drill, team } = props;
  const [others, setOthers] = useState<readonly string[]>([]);
  const views = useDocuments('drill', others);
  const drills = [
    { id, drill },
    ...others.flatMap(other => {
      const value = views.get(other)?.value;
      return value?.kind === 'drill' ? [{ id: other, drill: value }] : [];
    }),
  ];
  return (
    <section
      className="out"
      aria-label="Hand out"
      onKeyDown={event => {
        if (event.key !== 'Escape') return;
        // One press closes one thing.
        event.stopPropagation();
        props.onClose();
      }}
    >
      <div className="out-head">
        <h2>
          Hand out <span className="q3">what leaves this machine is what you save or send</span>
        </h2>
        <Act bare onPress={props.onClose}>
          Close
        </Act>
      </div>
      <div className="out-rows">
        <DrillChoice team={team} drillId={id} title={drill.title} others={others} onOthers={setOthers} />
        <FileActs drills={drills} team={team} />
        <FilmActs drill={drill} lengths={team.lengths} />
        <LinkActs drillId={id} team={team} />
      </div>
    </section>
  );
}
