import type { Meeting, Team } from '@icewright/book';
import { useEffect, useMemo, useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { named } from '../../parts/named.ts';
import { addressOfMeeting, addressOfShowing } from '../../shell/addresses.ts';
import { useKeys } from '../../shell/keys.ts';
import { RunningHead } from '../../shell/running-head.tsx';
import { meetingTimesOf } from '../meeting-times.ts';
import { lineOf, type ShownItem } from '../shown-item.ts';
import { useFilms } from '../use-films.ts';
import { RUN_KEYS } from './run-keys.ts';
import { SpeakerSide } from './speaker-side.tsx';
import { Stage } from './stage.tsx';
import { useElapsed } from './use-elapsed.ts';
import { useKeptRun } from './use-kept-run.ts';
import { type Speaker, useSpeaker } from './use-speaker.ts';

/** What the speaker has before him: the picture that the team sees, the next one, the notes and the clock. */
export function SpeakPage(props: {
  readonly team: Team;
  readonly meetingId: string;
  readonly meeting: Meeting;
  readonly items: readonly ShownItem[];
}) {
  const { team, meetingId, meeting } = props;
  const items = useMemo(() => props.items.filter(({ item }) => !item.hidden), [props.items]);
  const times = useMemo(() => meetingTimesOf(meeting, items), [meeting, items]);
  const { films } = useFilms(
    useMemo(() => items.flatMap(one => (one.state === 'there' ? [one.part.hash] : [])), [items]),
  );
  const { first, keep } = useKeptRun(meetingId, items);
  const speaker = useSpeaker({ meetingId, meeting, team, items, films, first: first.run });
  const { press, run } = speaker;
  const hasBegun = run.phase !== 'ready' || run.index > 0;
  const { elapsedS, beganMs, again } = useElapsed(hasBegun, first.beganMs);
  // The clock draws the page twice a second: so often it is written down where a film that runs is.
  useEffect(() => keep(run, beganMs, speaker.player?.now().frameIndex));
  const [isAlone, setAlone] = useState(false);
  const [isForbidden, setForbidden] = useState(false);
  const openAudience = () => {
    const opened = window.open(
      addressOfShowing(meetingId),
      `icewright-audience-${meetingId}`,
      'popup,width=1280,height=760',
    );
    setForbidden(opened === null);
  };
  useKeys([
    ...RUN_KEYS.map(({ keys, says, does }) => ({ keys, says, act: () => press(does) })),
    { keys: 'Home', says: 'to the first moment', act: () => speaker.goTo(0) },
    { keys: 'f', says: 'the picture alone, here', act: () => setAlone(!isAlone) },
    ...(isAlone ? [{ keys: 'Escape', says: 'back to the notes', act: () => setAlone(false) }] : []),
  ]);
  return (
    <>
      {!isAlone && (
        <RunningHead
          back={{ to: addressOfMeeting(meetingId), said: named(meeting.title, 'meeting') }}
          title="Speaker"
          titleWords={`Speaker, ${named(meeting.title, 'meeting')}`}
          meta={
            <>
              {Math.min(run.index + 1, items.length)} of {items.length}.{' '}
              {speaker.hasAudience ? 'The other window shows the picture.' : 'No other window is open.'}
            </>
          }
          acts={
            <>
              <Act onPress={() => setAlone(true)}>
                Picture alone, here <kbd>F</kbd>
              </Act>
              <Act onPress={openAudience}>Open the team’s window</Act>
            </>
          }
        />
      )}
      <main className="place speak">
        {isForbidden && !isAlone && (
          <p className="warm speak-wide" role="alert">
            The browser did not open a second window: allow windows for this page, or show the picture alone
            here.
          </p>
        )}
        {/* The picture stays where it is in both forms: mounted anew, a film that runs would stop. */}
        <div className={isAlone ? 'show' : 'speak-picture'}>
          <Stage
            player={speaker.player}
            picture={speaker.showing.picture}
            line={speaker.showing.line}
            isBlack={run.isBlack || (isAlone && run.phase === 'over')}
            says={noPictureSaid(speaker, team)}
          />
          {isAlone ? (
            <AloneActs speaker={speaker} onLeave={() => setAlone(false)} />
          ) : (
            <RunActs speaker={speaker} />
          )}
        </div>
        {!isAlone && (
          <SpeakerSide
            team={team}
            meeting={meeting}
            items={items}
            times={times}
            films={films}
            speaker={speaker}
            elapsedS={elapsedS}
            onClockAgain={again}
          />
        )}
      </main>
    </>
  );
}

function RunActs({ speaker }: { readonly speaker: Speaker }) {
  const { press, run } = speaker;
  return (
    <div className="run-acts">
      <Act onPress={() => press('back')}>Back</Act>
      <Act onPress={() => press('black')} isOn={run.isBlack}>
        Black
      </Act>
      <Act
        onPress={() => press('hold')}
        isOn={run.heldAt !== undefined}
        notNow={run.phase === 'toStop' || run.phase === 'toEnd' ? undefined : 'the film does not run'}
      >
        Hold
      </Act>
      <Act onPress={() => press('skip')} notNow={noSkip(speaker)}>
        Skip to the next <kbd>N</kbd>
      </Act>
      <Act lead onPress={() => press('on')}>
        {speaker.onSaid}
      </Act>
    </div>
  );
}

/** In one window: the picture fills it, a press anywhere takes it on. */
function AloneActs({ speaker, onLeave }: { readonly speaker: Speaker; readonly onLeave: () => void }) {
  return (
    <>
      <button type="button" className="show-press" onClick={() => speaker.press('on')}>
        <span className="vh">{speaker.onSaid}</span>
      </button>
      <span className="show-acts">
        <Act onPress={() => speaker.press('back')}>Back</Act>
        <Act onPress={() => speaker.press('skip')} notNow={noSkip(speaker)}>
          Skip to the next
        </Act>
        <Act onPress={onLeave}>Notes</Act>
      </span>
    </>
  );
}

const noSkip = ({ next, run }: Speaker): string | undefined =>
  next === undefined || run.phase === 'over' ? 'this is the last moment' : undefined;

const noPictureSaid = ({ shown, run, isOpening }: Speaker, team: Team): string => {
  if (run.phase === 'over') return 'The end';
  if (shown === undefined) return 'This meeting has no moment that is shown.';
  if (shown.state === 'gone') return `${lineOf(shown, team)}: the moment is no longer there.`;
  return isOpening ? 'Opening' : `${lineOf(shown, team)}: the film is not here.`;
};
