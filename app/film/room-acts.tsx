import type { Game, Team } from '@icewright/book';
import { Act } from '../parts/act.tsx';
import type { Desk } from './freeze-desk.ts';
import type { FreezeView } from './freeze-view.ts';
import { ToIdeas } from './ideas/to-ideas.tsx';
import { MakeDrill } from './make-drill.tsx';
import type { useMarks } from './marks/use-marks.ts';
import type { useMarking } from './moments/use-marking.ts';
import { useToolAway } from './tool-away.ts';

/** What a coach begins from the head of the room: a moment, a freeze, marks, and with a freeze open what comes of it. */
export function RoomActs({
  gameId,
  game,
  team,
  desk,
  view,
  isNarrow,
  isBlind,
  marks,
  mark,
  freezeNow,
}: {
  readonly gameId: string;
  readonly game: Game;
  readonly team: Team;
  readonly desk: Desk | undefined;
  readonly view: FreezeView | undefined;
  readonly isNarrow: boolean;
  /** Somebody judges the moments blind: nothing is marked or drawn meanwhile, and no drill made of an answer. */
  readonly isBlind: boolean;
  readonly marks: ReturnType<typeof useMarks>;
  readonly mark: ReturnType<typeof useMarking>;
  readonly freezeNow: () => void;
}) {
  const notNow = isBlind ? 'moments are being judged a second time' : undefined;
  useToolAway(desk, marks.desk.isOpen, marks.toggle);
  return (
    <>
      <Act onPress={() => mark.begin()} isOn={mark.draft !== undefined} notNow={notNow}>
        Mark a moment <kbd>M</kbd>
      </Act>
      <Act onPress={freezeNow}>
        Freeze <kbd>F</kbd>
      </Act>
      <Act onPress={marks.toggle} isOn={marks.desk.isOpen} notNow={notNow}>
        Draw <kbd>⇧M</kbd>
      </Act>
      {view?.fit && isNarrow && !isBlind && <ToIdeas />}
      {view && desk && !isBlind && <MakeDrill {...{ gameId, game, desk, view, team }} />}
    </>
  );
}
