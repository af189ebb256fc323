import { type Drill, newId, type Practice, type Team } from '@icewright/book';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { Act } from '../parts/act.tsx';
import { daySaid, fromToday, today } from '../parts/figures.ts';
import { Slip } from '../parts/slip.tsx';
import { makePractice } from '../practices/make-practice.ts';
import { rankPutIn } from '../practices/rank-put-in.ts';
import { addressOfBlock } from '../shell/addresses.ts';
import { edit } from '../shell/book.ts';
import { documentWhenRead } from '../shell/document-when-read.ts';

/** Puts the drill at the end of a practice, before its closing talk: of a coming one, the last one held, or a new one. */
export function PutInPractice(props: {
  readonly team: Team;
  readonly drillId: string;
  readonly drill: Drill;
  readonly onClose: () => void;
}) {
  const [, go] = useLocation();
  const [isWorking, setWorking] = useState<string | null>(null);
  const practices = Object.entries(props.team.contents)
    .filter(([, entry]) => entry.kind === 'practice' && !entry.removed)
    .sort(([, a], [, b]) => (a.day < b.day ? -1 : 1));
  const coming = practices.filter(([, entry]) => entry.day >= today());
  const offered = coming.length > 0 ? coming : practices.slice(-1);
  const put = async (practiceId: string) => {
    setWorking(practiceId);
    const practice = await documentWhenRead('practice', practiceId);
    if (practice === null) return setWorking(null);
    const block = newId<'block'>();
    edit(practiceId).set(['blocks', block], blockOf(props.drillId, props.drill, practice));
    go(addressOfBlock(practiceId, block));
  };
  return (
    <Slip label="Put in a practice" onClose={props.onClose}>
      <span className="slip-acts">
        {offered.map(([id, entry]) => (
          <Act key={id} working={isWorking === id} onPress={() => void put(id)}>
            {entry.title}, {daySaid(entry.day)}, {fromToday(entry.day)}
          </Act>
        ))}
        <Act onPress={() => void put(makePractice(props.team))}>A new practice, today</Act>
        <Act bare onPress={props.onClose}>
          Not now
        </Act>
      </span>
    </Slip>
  );
}

function blockOf(drillId: string, drill: Drill, practice: Practice): Practice['blocks'][never] {
  return {
    rank: rankPutIn(practice.blocks),
    drill: drillId,
    title: drill.title,
    minutes: drill.minutes,
    changeoverMinutes: 1,
    says: drill.says,
    keyPoints: drill.keyPoints,
    leads: '',
    pucks: '',
    ice: '',
    groups: '',
  } as unknown as Practice['blocks'][never];
}
