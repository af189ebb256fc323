import { type Game, newId, type Team } from '@icewright/book';
import type { CarryOption, Id, PassOption } from '@icewright/engine';
import type { ReactNode } from 'react';
import { PutInMeeting } from '../meeting/put-in-meeting.tsx';
import { FreezeSheetAct } from '../meeting/sheet/freeze-sheet-act.tsx';
import { Act } from '../parts/act.tsx';
import { edit, endStep } from '../shell/book.ts';
import { CarriedNote } from './carry/carried-note.tsx';
import { clockText } from './film-clock.ts';
import type { Desk } from './freeze-desk.ts';
import type { FreezeView } from './freeze-view.ts';
import { HoldField } from './holds/hold-field.tsx';
import { IceMap } from './ice-map.tsx';
import { IdeasSection } from './ideas/ideas-section.tsx';
import { latestPinned } from './make-freeze.ts';
import type { PinsOfferHere } from './offer/use-pins-offer.ts';
import { type OptionsView, optionKey } from './options-of.ts';
import { OptionsTable } from './options-table.tsx';
import type { PeopleOffer } from './people/use-people-offer.ts';
import { PeopleList } from './people-list.tsx';
import { PinsList } from './pins-list.tsx';
import { Readings } from './readings.tsx';
import type { Shown } from './shown.ts';
import type { Followed } from './track/use-followed.tsx';
import { Verdict } from './verdict.tsx';
import { WhatIf } from './what-if.tsx';
import { WhichSheet } from './which-sheet.tsx';

/** Beside the frozen picture: what was seen, the ice, readings, who is where, and the pins that all of it hangs on. */
export function FreezeMargin({
  gameId,
  game,
  team,
  desk,
  view,
  shown,
  setShown,
  options,
  drawn,
  isFrozen,
  isBlind,
  isNamedAtPicture,
  offer,
  pinsOffer,
  carriedHere,
  others,
  followed,
  onBack,
  onLeave,
}: {
  readonly gameId: string;
  readonly game: Game;
  readonly team: Team;
  readonly desk: Desk;
  readonly view: FreezeView;
  readonly shown: Shown;
  readonly setShown: (shown: Shown) => void;
  readonly options: OptionsView | undefined;
  readonly drawn: readonly (PassOption | CarryOption)[];
  readonly isFrozen: boolean;
  /** Somebody judges the moments a second time: what was made of this picture is put away. */
  readonly isBlind: boolean;
  /** The mark of the next pin is named next to the picture, not here. */
  readonly isNamedAtPicture: boolean;
  readonly offer: PeopleOffer;
  readonly pinsOffer: PinsOfferHere;
  /** What carried pins say of the frame that is shown, while it is not this one. */
  readonly carriedHere: ReactNode;
  /** Carrying these pins to other frames. */
  readonly others: ReactNode;
  readonly followed: Followed;
  readonly onBack: () => void;
  readonly onLeave: () => void;
}) {
  const { freeze } = view;
  const earlier = latestPinned(game, freeze.film, desk.freezeId);
  const copyPins = () => {
    const change = edit(gameId);
    endStep(gameId);
    change.transact(() => {
      for (const pin of Object.values(earlier?.pins ?? {})) {
        change.set(['freezes', desk.freezeId, 'pins', newId<'pin'>()], pin);
      }
    });
    setShown({ ...shown, paint: true });
    desk.setTool({ kind: 'look' });
  };
  // While pins are put down they stand next to the ice; later they are what all of it hangs on, at the foot.
  const pinsFirst = desk.tool.kind === 'pin' || !view.fit;
  const pins = (
    <div key="pins">
      <PinsList {...{ desk, view, isFrozen, isNamedAtPicture }} offer={pinsOffer} />
      {others}
      <WhichSheet gameId={gameId} game={game} team={team} view={view} />
      {view.pins.length === 0 && earlier && !view.isCarried && (
        <p className="note">
          <Act onPress={copyPins}>Begin with the pins of {clockText(earlier.filmTimeS, 1)}</Act> only if the
          camera has not moved or zoomed since: the sheet's lines are then drawn over the picture, and must
          lie on the paint.
        </p>
      )}
    </div>
  );
  return (
    <>
      <Verdict {...{ gameId, desk, view, team, game, isBlind }} />
      {!isFrozen && (
        <p className="note" role="status">
          This freeze belongs to frame {freeze.frameIndex}, at {clockText(freeze.filmTimeS, 1)}
          {carriedHere ? '.' : ', and to no other.'} <Act onPress={onBack}>Back to it</Act>
        </p>
      )}
      {carriedHere}
      {!isFrozen && followed.section}
      <div className="freeze-seen">
        <figure>
          <IceMap
            desk={desk}
            view={view}
            shown={shown}
            drawn={drawn}
            offered={offer.offered}
            pinsOffered={pinsOffer.here.adds}
          />
        </figure>
        {view.isCarried && <CarriedNote view={view} />}
        <p className="pins-acts tools">
          <Act
            isOn={desk.tool.kind === 'measure'}
            notNow={view.people.length + (freeze.puck ? 1 : 0) < 2 ? 'place two skaters first' : undefined}
            onPress={() =>
              desk.setTool(desk.tool.kind === 'measure' ? { kind: 'look' } : { kind: 'measure' })
            }
          >
            Measure
          </Act>
          <Act
            isOn={desk.tool.kind === 'wanted'}
            notNow={desk.noWanted ?? (view.fit ? undefined : 'the pins must hold the picture first')}
            onPress={() => desk.setTool(desk.tool.kind === 'wanted' ? { kind: 'look' } : { kind: 'wanted' })}
          >
            Wanted place
          </Act>
          <Act
            isOn={shown.paint}
            notNow={view.fit ? undefined : 'the pins must hold the picture first'}
            onPress={() => setShown({ ...shown, paint: !shown.paint })}
          >
            Lines over the picture
          </Act>
          <Act isOn={shown.ellipses} onPress={() => setShown({ ...shown, ellipses: !shown.ellipses })}>
            Ellipses
          </Act>
          <Act bare onPress={onLeave}>
            Close the freeze
          </Act>
        </p>
        <ToolHint desk={desk} view={view} />
        <div className="pins-acts tools">
          <PutInMeeting
            team={team}
            gameId={gameId}
            game={game}
            chosen={[{ kind: 'freeze', id: desk.freezeId }]}
          />
          {view.fit && !isBlind && <FreezeSheetAct team={team} game={game} freezeId={desk.freezeId} />}
        </div>
        <HoldField gameId={gameId} freezeId={desk.freezeId} holdS={freeze.holdS} />
        {view.fit && !isBlind && <IdeasSection {...{ gameId, game, desk, view, team }} />}
        {pinsFirst && pins}
        {view.fit && view.people.length > 0 && <Readings {...{ desk, view, team, isBlind }} />}
        {view.fit && view.people.length > 0 && options && (
          <OptionsTable
            view={view}
            options={options}
            drawn={drawn.map(optionKey)}
            onDraw={keys => setShown({ ...shown, options: keys })}
          />
        )}
        {options && <WhatIf view={view} level={team.level} options={options} />}
      </div>
      <div className="freeze-set">
        <PeopleList {...{ desk, view, team, offer, isFrozen }} />
        <p className="pins-acts">{followed.begin(desk.freezeId as Id<'freeze'>, desk.chosen)}</p>
        {isFrozen && followed.section}
        {!pinsFirst && pins}
      </div>
    </>
  );
}

function ToolHint({ desk, view }: { readonly desk: Desk; readonly view: FreezeView }) {
  const { tool } = desk;
  const says =
    tool.kind === 'measure'
      ? tool.first
        ? 'Now press the other one.'
        : 'Press two of them in the picture: a skater and another, or the puck.'
      : tool.kind === 'wanted'
        ? tool.who
          ? 'Press where that skater should have been, in the picture or on the ice.'
          : 'Press the skater first.'
        : tool.kind === 'place'
          ? 'Press the ice midway between the skates.'
          : tool.kind === 'puck'
            ? 'Press the puck, where it touches the ice.'
            : undefined;
  return says && view ? (
    <p className="q2 hint" role="status">
      {says}
    </p>
  ) : null;
}
