import type { Team } from '@icewright/book';
import { memo, useState } from 'react';
import { clockText } from './film-clock.ts';
import { timeOfFrame } from './frame-index.ts';
import type { ListedMoment } from './moments/filter-moments.ts';
import type { Player } from './player.ts';
import { BASE, lookOf, markPath, pulsePaths } from './pulse-paths.ts';
import { ruleStepS } from './rule-step.ts';
import { usePlayerPart } from './use-player.ts';
import { useWidth } from './use-width.ts';

const LEFT = 46;
/** The last segment's words need room. */
const END_ROOM = 14;

/** The pulse: done above the line, missed below, height = cost, a ring for what could not be seen. Press or drag to jump. */
export function PulseStrip({
  player,
  moments,
  team,
  habit,
  chosen,
}: {
  readonly player: Player;
  /** Of this film, in order of time. */
  readonly moments: readonly ListedMoment[];
  readonly team: Team;
  /** Moments of this habit are dark, the others stay behind. */
  readonly habit: string | undefined;
  readonly chosen: string | undefined;
}) {
  const [strip, setStrip] = useState<HTMLDivElement | null>(null);
  const width = Math.max(280, useWidth(strip));
  const right = width - END_ROOM;
  const frameIndex = usePlayerPart(player, state => state.frameIndex);
  const { index, durationS: endS } = player.film;
  const xOf = (timeS: number) => xIn(endS, right, timeS);
  const jumpTo = (event: React.PointerEvent<HTMLElement>) => {
    const x = event.clientX - event.currentTarget.getBoundingClientRect().left;
    void player.jumpToTime(Math.max(0, ((x - LEFT) / (right - LEFT)) * endS));
  };
  return (
    <div
      ref={setStrip}
      className="pulse"
      aria-label="Where the film is"
      role="slider"
      tabIndex={0}
      aria-valuemin={0}
      aria-valuemax={index.frameCount - 1}
      aria-valuenow={frameIndex}
      aria-valuetext={`${clockText(timeOfFrame(index, frameIndex))}, frame ${frameIndex}`}
      onPointerDown={event => {
        event.currentTarget.setPointerCapture(event.pointerId);
        jumpTo(event);
      }}
      onPointerMove={event => event.buttons === 1 && jumpTo(event)}
    >
      <svg viewBox={`0 0 ${width} 98`} aria-hidden="true">
        <text className="ax" x="0" y="30">
          done
        </text>
        <text className="ax" x="0" y="58">
          missed
        </text>
        <path className="base" d={`M${LEFT} ${BASE}H${right}`} />
        <Marks moments={moments} team={team} habit={habit} chosen={chosen} endS={endS} right={right} />
        <Rule endS={endS} xOf={xOf} width={right - LEFT} />
        <LoopBand player={player} xOf={xOf} />
        <Playhead player={player} xOf={xOf} />
      </svg>
    </div>
  );
}

const xIn = (endS: number, right: number, timeS: number): number => LEFT + (timeS / endS) * (right - LEFT);

/** Drawn anew when a moment changes, not with every picture that plays. */
const Marks = memo(function Marks(props: {
  readonly moments: readonly ListedMoment[];
  readonly team: Team;
  readonly habit: string | undefined;
  readonly chosen: string | undefined;
  readonly endS: number;
  readonly right: number;
}) {
  const { moments, team, habit, chosen, endS, right } = props;
  const place = { team, habit, xOf: (timeS: number) => xIn(endS, right, timeS) };
  const one = moments.find(([id]) => id === chosen)?.[1];
  return (
    <>
      {pulsePaths(moments, place).map(([look, d]) => (
        <path key={look} className={`pm ${look}`} d={d} />
      ))}
      {one && <path className={`pm ${lookOf(one, habit)} chosen`} d={markPath(one, place)} />}
    </>
  );
});

function Playhead({ player, xOf }: { readonly player: Player; readonly xOf: (timeS: number) => number }) {
  const frameIndex = usePlayerPart(player, state => state.frameIndex);
  const x = xOf(timeOfFrame(player.film.index, frameIndex));
  return <path className="play" d={`M${x.toFixed(2)} 0V84`} />;
}

/** The stretch that plays over and over; a line while only its start is set. */
function LoopBand({ player, xOf }: { readonly player: Player; readonly xOf: (timeS: number) => number }) {
  const fromFrame = usePlayerPart(player, state => state.loop?.fromFrame ?? -1);
  const toFrame = usePlayerPart(player, state => state.loop?.toFrame ?? state.loop?.fromFrame ?? -1);
  if (fromFrame < 0) return null;
  const { index } = player.film;
  const from = xOf(timeOfFrame(index, fromFrame));
  const width = Math.max(1, xOf(timeOfFrame(index, toFrame)) - from);
  return <rect className="loop" x={from} y={70} width={width} height={5} />;
}

function Rule(props: {
  readonly endS: number;
  readonly xOf: (timeS: number) => number;
  readonly width: number;
}) {
  const { endS, xOf } = props;
  const { stepS, wordEvery } = ruleStepS(endS, props.width);
  const count = Math.ceil(endS / stepS);
  return (
    <>
      {Array.from({ length: count }, (_, i) => {
        const from = xOf(i * stepS);
        const to = xOf(Math.min(endS, (i + 1) * stepS));
        return (
          <rect
            // biome-ignore lint/suspicious/noArrayIndexKey: segments of a rule are nothing but their place
            key={i}
            className={i % 2 === 0 ? 'zf' : 'zo'}
            x={from}
            y={78}
            width={Math.max(0, to - from)}
            height={4}
          />
        );
      })}
      {Array.from({ length: Math.floor(count / wordEvery) + 1 }, (_, i) => (
        <text
          // biome-ignore lint/suspicious/noArrayIndexKey: words of a rule are nothing but their place
          key={i}
          className="ax"
          x={xOf(i * wordEvery * stepS)}
          y={95}
          textAnchor={i === 0 ? 'start' : 'middle'}
        >
          {clockText(i * wordEvery * stepS, 0)}
        </text>
      ))}
    </>
  );
}
