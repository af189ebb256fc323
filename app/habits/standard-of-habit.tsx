import type { Habit, Team } from '@icewright/book';
import { useState } from 'react';
import { Act } from '../parts/act.tsx';
import { edit, endStep } from '../shell/book.ts';
import { StandardSentence } from './standard-sentence.tsx';
import { MUST_BE_MEANS } from './standard-words.ts';
import './by-eye.css';

/** What is judged, as a sentence that can be changed. One that nobody has written yet judges nothing until somebody says that it does. */
export function StandardOfHabit(props: {
  readonly habit: Habit;
  readonly habitId: string;
  readonly team: Team;
  readonly teamId: string;
}) {
  const { habit, habitId, team, teamId } = props;
  const [isWriting, setWriting] = useState(false);
  const at = (key: string) => ['habits', habitId, key];
  const sentence = (
    <>
      <StandardSentence
        standard={habit.standard}
        lengths={team.lengths}
        onChange={next => {
          endStep(teamId);
          edit(teamId).set(at('standard'), next);
        }}
      />
      <p className="q3 means">{MUST_BE_MEANS[habit.standard.kind]}</p>
    </>
  );
  if (habit.byEye !== true) return sentence;
  return (
    <>
      {isWriting && sentence}
      <p className="by-eye">
        <span>
          Judged by eye: its standard is not written yet.{' '}
          {isWriting
            ? 'When the sentence says what you look for, freezes, ideas and drills judge by it.'
            : 'What is marked on film counts as it is said; no freeze, idea or drill judges it.'}
        </span>{' '}
        {isWriting ? (
          <Act
            onPress={() => {
              endStep(teamId);
              edit(teamId).remove(at('byEye'));
              setWriting(false);
            }}
          >
            Judge by this sentence
          </Act>
        ) : (
          <Act onPress={() => setWriting(true)}>Write its standard</Act>
        )}
      </p>
    </>
  );
}
