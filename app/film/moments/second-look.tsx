import { type Game, newId, type Team } from '@icewright/book';
import { useEffect, useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { named } from '../../parts/named.ts';
import { edit, endStep } from '../../shell/book.ts';
import { useKeys } from '../../shell/keys.ts';
import { clockText } from '../film-clock.ts';
import { stillToJudge } from './agreement.ts';
import { AgreementView } from './agreement-view.tsx';
import type { ListedMoment } from './filter-moments.ts';
import { keep, kept } from './who-marks.ts';

/**
 * A second pair of eyes judges the moments without seeing what the first said: the list and the pulse are put away
 * meanwhile. At the end stands how far the two agree, and where they do not.
 */
export function SecondLook({
  gameId,
  moments,
  team,
  opinions,
  onShow,
  onLeave,
}: {
  readonly gameId: string;
  readonly moments: readonly ListedMoment[];
  readonly team: Team;
  readonly opinions: Game['opinions'];
  readonly onShow: (frameIndex: number) => void;
  readonly onLeave: () => void;
}) {
  const [by, setBy] = useState(kept());
  const [begun, setBegun] = useState(false);
  const left = stillToJudge(moments, opinions, by);
  const next = begun ? left[0] : undefined;
  const frame = next?.[1].frameIndex;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the picture follows the moment, not the page
  useEffect(() => {
    if (frame !== undefined) onShow(frame);
  }, [frame]);
  const judge = (verdict: string) => {
    if (!next) return;
    endStep(gameId);
    edit(gameId).set(['opinions', newId<'opinion'>()], {
      moment: next[0],
      verdict,
      by,
      givenAt: new Date().toISOString(),
    });
    endStep(gameId);
  };
  useKeys([
    ...(next
      ? [
          { keys: 'd', says: 'second opinion: done', act: () => judge('done') },
          { keys: 'x', says: 'second opinion: missed', act: () => judge('missed') },
          { keys: 'c', says: 'second opinion: cannot see', act: () => judge('cannotSee') },
        ]
      : []),
    { keys: 'Escape', says: 'leave the second opinion', act: onLeave },
  ]);
  return (
    <section className="marking second-look" aria-label="A second opinion">
      <p className="b">
        A second opinion <span className="q3">what the first pair of eyes said is put away</span>
      </p>
      {!begun && (
        <p className="marking-acts">
          <label>
            <span className="q2">Your initials</span>{' '}
            <input
              value={by}
              maxLength={40}
              onChange={event => {
                setBy(event.target.value);
                keep(event.target.value);
              }}
            />
          </label>
          <Act
            onPress={() => setBegun(true)}
            notNow={
              by.trim() === ''
                ? 'write your initials first'
                : left.length === 0
                  ? 'you marked or judged all of these yourself'
                  : undefined
            }
          >
            Judge {left.length} {left.length === 1 ? 'moment' : 'moments'}
          </Act>
          <Act bare onPress={onLeave}>
            Leave
          </Act>
        </p>
      )}
      {next && (
        <>
          <p>
            {clockText(next[1].filmTimeS, 1)}{' '}
            <span className="w">{named(team.habits[next[1].habit]?.title ?? '', 'habit')}</span>{' '}
            <span className="q3">{left.length} to go</span>
          </p>
          <p className="marking-acts">
            <Act onPress={() => judge('done')}>
              Done <kbd>D</kbd>
            </Act>
            <Act onPress={() => judge('missed')}>
              Missed <kbd>X</kbd>
            </Act>
            <Act onPress={() => judge('cannotSee')}>
              Cannot see <kbd>C</kbd>
            </Act>
            <Act bare onPress={onLeave}>
              Go on later
            </Act>
          </p>
        </>
      )}
      {begun && !next && (
        <>
          <AgreementView moments={moments} opinions={opinions} team={team} onShow={onShow} />
          <Act onPress={onLeave}>Back to the moments</Act>
        </>
      )}
    </section>
  );
}
