import { STANDING_CAUTIONS } from '@icewright/picture';
import { useEffect, useState } from 'react';
import { daySaid } from '../parts/figures.ts';
import { hurtingSentences } from '../parts/hurting-findings.ts';
import { fetchHandout, type HandedAnswer } from './fetch-handout.ts';
import { PlayerBoard } from './player-board.tsx';

/** One drill for a player: what it looks like, how it runs, what to do. Nothing can be changed here. */
export function PlayerPage() {
  const [answer, setAnswer] = useState<HandedAnswer | null>(null);
  useEffect(() => {
    void fetchHandout().then(setAnswer);
  }, []);
  const title = answer?.kind === 'ok' ? answer.value.drill.title : 'A drill';
  useEffect(() => {
    document.title = title;
  }, [title]);
  if (answer === null) return <p className="vh">Opening</p>;
  if (answer.kind === 'none')
    return (
      <main className="player">
        <h1 className="w">No drill here</h1>
        <p role="alert">{answer.said}</p>
      </main>
    );
  const { drill, teamName, endsAt } = answer.value;
  const points = drill.keyPoints.split('\n').filter(point => point.trim() !== '');
  return (
    <main className="player">
      {teamName !== '' && <p className="q3">{teamName}</p>}
      <h1 className="w">{drill.title}</h1>
      {drill.says !== '' && <p className="w player-says">{drill.says}</p>}
      <PlayerBoard drill={drill} />
      {points.length > 0 && (
        <section>
          <h2>Key points</h2>
          <ul>
            {points.map(point => (
              <li key={point}>{point}</li>
            ))}
          </ul>
        </section>
      )}
      <section>
        <h2>Before the first whistle</h2>
        <ul>
          {[...hurtingSentences(drill, 'metres'), ...STANDING_CAUTIONS].map(caution => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      </section>
      <p className="q3">
        {drill.minutes} min. This link ends on {daySaid(new Date(endsAt).toISOString().slice(0, 10), 'long')}.
      </p>
    </main>
  );
}
