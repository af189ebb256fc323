import { useEffect, useState } from 'react';
import type { Player } from '../player.ts';
import { usePlayerPart } from '../use-player.ts';

/** While playback stands at a freeze: how long it still does, and a press to go on. */
export function HoldCountdown({ player }: { readonly player: Player }) {
  const untilMs = usePlayerPart(player, state => state.holding?.untilMs ?? 0);
  return untilMs === 0 ? null : <Counting key={untilMs} player={player} untilMs={untilMs} />;
}

function Counting({ player, untilMs }: { readonly player: Player; readonly untilMs: number }) {
  const [leftS, setLeftS] = useState(secondsTo(untilMs));
  useEffect(() => {
    const timer = setInterval(() => setLeftS(secondsTo(untilMs)), 200);
    return () => clearInterval(timer);
  }, [untilMs]);
  return (
    <button type="button" className="hold-countdown" data-testid="holds" onClick={() => player.toggle()}>
      stands <b>{leftS} s</b>, go on
    </button>
  );
}

const secondsTo = (untilMs: number): number => Math.max(0, Math.ceil((untilMs - performance.now()) / 1000));
