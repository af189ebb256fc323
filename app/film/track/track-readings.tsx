import type { Game } from '@icewright/book';
import {
  BODY_HEIGHT,
  type Estimate,
  FOLLOW_DRIFT,
  FOLLOW_SD,
  firstOver,
  gapOverTime,
  type Look,
  MIND_KEPT,
  otherEnd,
  type Rink,
  SURELY_SDS,
  speedOverTime,
  type TimedEstimate,
  timeBetween,
} from '@icewright/engine';
import { useState } from 'react';
import { type Lengths, lengthNumberSaid, lengthSaid, numberSaid } from '../../parts/figures.ts';
import { clockText } from '../film-clock.ts';
import { WhyRow } from '../why-row.tsx';
import type { DrawnTrack } from './track-layer.tsx';

/** Figures of followed skaters, each with its ±: speed, gap, who is first over a line, time from loss to regain. */
export function TrackReadings({
  tracks,
  chosen,
  other,
  game,
  rink,
  lengths,
}: {
  readonly tracks: readonly DrawnTrack[];
  readonly chosen: DrawnTrack;
  readonly other: DrawnTrack | undefined;
  readonly game: Game;
  readonly rink: Rink;
  readonly lengths: Lengths;
}) {
  const top = most(speedOverTime(chosen.looks));
  const least = other && most(gapOverTime(chosen.looks, other.looks), -1);
  return (
    <table className="tt readings track-readings">
      <thead>
        <tr>
          <th>Over the stretch</th>
          <th className="r">
            <span className="vh">figure</span>
          </th>
          <th>
            <span className="vh">when</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {top && (
          <WhyRow
            columns={3}
            estimate
            why={SPEED_WHY}
            value={numberSaid(top.value)}
            plusMinus={`± ${numberSaid(SURELY_SDS * top.sd)} m/s`}
          >
            {figure => (
              <>
                <td>{chosen.name}, fastest</td>
                <td className="r">{figure}</td>
                <td className="q3">at {clockText(top.timeS, 1)}</td>
              </>
            )}
          </WhyRow>
        )}
        {other && least && (
          <WhyRow columns={3} estimate why={GAP_WHY} {...lengthOf(least, lengths)}>
            {figure => (
              <>
                <td>
                  {chosen.name} to {other.name}, least gap
                </td>
                <td className="r">{figure}</td>
                <td className="q3">at {clockText(least.timeS, 1)}</td>
              </>
            )}
          </WhyRow>
        )}
        <OverLine tracks={tracks} rink={rink} lengths={lengths} attacks={chosen.track.attacks} />
        {lossesOf(game, chosen).map(({ id, time }) => (
          <WhyRow
            key={id}
            columns={3}
            why={LOSS_WHY}
            value={numberSaid(time.value, 2)}
            plusMinus={`± ${numberSaid(SURELY_SDS * time.sd, 2)} s`}
          >
            {figure => (
              <>
                <td>From loss to regain</td>
                <td className="r">{figure}</td>
                <td className="q3">as marked</td>
              </>
            )}
          </WhyRow>
        ))}
      </tbody>
    </table>
  );
}

const LINES = ['ourBlue', 'red', 'theirBlue'] as const;
type LineWord = (typeof LINES)[number];
const LINE_SAID: Readonly<Record<LineWord, string>> = {
  ourBlue: 'our blue line',
  red: 'the red line',
  theirBlue: 'their blue line',
};

/** Who came over a line first, and by how much: back over our blue line it is who is first back. */
function OverLine({
  tracks,
  rink,
  lengths,
  attacks,
}: {
  readonly tracks: readonly DrawnTrack[];
  readonly rink: Rink;
  readonly lengths: Lengths;
  readonly attacks: DrawnTrack['track']['attacks'];
}) {
  const [line, setLine] = useState<LineWord>('ourBlue');
  const [isBack, setBack] = useState(true);
  const sign = attacks === 'plusX' ? 1 : -1;
  const blue = rink.layout.blueLineCentreXM;
  const xM = line === 'red' ? 0 : line === 'theirBlue' ? sign * blue : -sign * blue;
  const ways = new Map<string, readonly Look[]>(tracks.map(({ id, looks }) => [id, looks]));
  const first = firstOver(ways, xM, isBack ? otherEnd(attacks) : attacks);
  const name = (id: string | undefined) => tracks.find(one => one.id === id)?.name ?? '';
  const choice = (
    <>
      <label>
        <span className="vh">Line</span>
        <select value={line} onChange={event => setLine(event.target.value as LineWord)}>
          {LINES.map(one => (
            <option key={one} value={one}>
              {LINE_SAID[one]}
            </option>
          ))}
        </select>
      </label>{' '}
      <label>
        <span className="vh">Which way</span>
        <select value={isBack ? 'back' : 'on'} onChange={event => setBack(event.target.value === 'back')}>
          <option value="back">coming back</option>
          <option value="on">going forward</option>
        </select>
      </label>
    </>
  );
  if (first.kind === 'none') {
    return (
      <tr>
        <td colSpan={3}>
          Over {choice}: <span className="q3">none of them crossed it in this stretch</span>
        </td>
      </tr>
    );
  }
  const [one, two] = first.order;
  const at = one!.timeS;
  return (
    <WhyRow
      columns={3}
      estimate
      testId="over-line"
      why={LINE_WHY}
      value={first.leadS ? numberSaid(first.leadS.value, 2) : clockText(at.value, 1)}
      plusMinus={`± ${numberSaid(SURELY_SDS * (first.leadS ?? at).sd, 2)} s`}
    >
      {figure => (
        <>
          <td>
            Over {choice}:{' '}
            {first.isSure || !two ? (
              <b className="b">{name(one!.id)} first</b>
            ) : (
              <>
                {name(one!.id)} and {name(two.id)}: cannot tell who was first
              </>
            )}
          </td>
          <td className="r">{figure}</td>
          <td className="q3">
            {two && first.leadM
              ? `before ${name(two.id)}, who was ${lengthSaid(first.leadM.value, lengths)} ± ${lengthNumberSaid(SURELY_SDS * first.leadM.sd, lengths)} from it`
              : two
                ? `before ${name(two.id)}`
                : 'the only one who crossed it'}
          </td>
        </>
      )}
    </WhyRow>
  );
}

const most = (series: readonly TimedEstimate[], sign: 1 | -1 = 1): TimedEstimate | undefined =>
  series.reduce<TimedEstimate | undefined>(
    (a, b) => (a && sign * a.value >= sign * b.value ? a : b),
    undefined,
  );

const lengthOf = ({ value, sd }: Estimate, lengths: Lengths) => ({
  value: lengthNumberSaid(value, lengths),
  plusMinus: `± ${lengthSaid(SURELY_SDS * sd, lengths)}`,
});

/** Marked losses and regains that lie within the stretch. */
const lossesOf = (game: Game, { track, looks }: DrawnTrack): { id: string; time: Estimate }[] => {
  const [first, last] = [looks[0], looks[looks.length - 1]];
  if (!first || !last) return [];
  const halfFrameS = halfFrameOf(looks);
  const follows = Object.values(game.follows).filter(
    one =>
      game.moments[one.moment]?.film === track.film &&
      one.filmTimeS >= first.timeS - 1 &&
      one.filmTimeS <= last.timeS + 1,
  );
  return follows
    .filter(one => one.step === 'lost')
    .flatMap(lost => {
      const won = follows.find(one => one.moment === lost.moment && one.step === 'regained');
      if (!won || won.filmTimeS <= lost.filmTimeS) return [];
      const time = timeBetween({ timeS: lost.filmTimeS, halfFrameS }, { timeS: won.filmTimeS, halfFrameS });
      return [{ id: `${lost.moment}`, time }];
    });
};

const halfFrameOf = (looks: readonly Look[]): number => {
  const [a, b] = [looks[0], looks[1]];
  return a && b ? (b.timeS - a.timeS) / Math.max(1, b.frameIndex - a.frameIndex) / 2 : 1 / 60;
};

const FOUND_WHY = `Feet were put down in some frames, by hand or as they were offered; between them his body (${numberSaid(BODY_HEIGHT.value, 2)} m high) was looked for in every picture from both sides, with the camera's move taken out, and the way was smoothed as a skater of this level moves, who keeps his mind for ${numberSaid(MIND_KEPT.value)} s (${MIND_KEPT.status}). A found body tells its feet within ${numberSaid(FOLLOW_SD.value)} m beside a hand and ${numberSaid(FOLLOW_DRIFT.value, 2)} m more each second away from it (${FOLLOW_SD.status}).`;
const SPEED_WHY = `The length of the smoothed velocity; ± is 95 %. ${FOUND_WHY}`;
const GAP_WHY = `Between both pairs of feet at the same time; ± is 95 % and counts what both share by the pins twice, so the true one is smaller. ${FOUND_WHY}`;
const LINE_WHY = `Feet over the middle of the line; the ± of a time is that of the place over the speed. Who was first is said only when the lead is larger than its ±. ${FOUND_WHY}`;
const LOSS_WHY =
  'From the frame in which the loss was marked to that of the regain; each is known to within half a frame. Marked by whoever watched, not found in the picture.';
