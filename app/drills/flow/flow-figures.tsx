import type { Drill } from '@icewright/book';
import { type FlowResult, GOALIE_RESET_S, HIGH_SPEED_MPS, MOVING_RATIO, RETURN_MPS } from '@icewright/engine';
import type { ReactNode } from 'react';
import { countSaid, type Lengths, lengthSaid, numberSaid } from '../../parts/figures.ts';
import { Reading } from '../../parts/reading.tsx';
import { roleOf } from '../act-words.ts';
import { countWord } from './flow-words.ts';
import { MISSING } from './use-flow.ts';

interface Figure {
  readonly label: string;
  readonly said: string;
  /** The same with two missing; left out where it says nothing. */
  readonly fewer: string | null;
  readonly isLow?: boolean;
  readonly why: ReactNode;
}

/** What the block gives each, in figures; below each the same with two missing. */
export function FlowFigures(props: {
  readonly drill: Drill;
  readonly flow: FlowResult;
  readonly missing: FlowResult | null;
  readonly lengths: Lengths;
  /** Figures of the rep that have no other with two missing. */
  readonly more?: ReactNode;
}) {
  return (
    <>
      <dl className="flow-figures">
        {figuresOf(props).map(figure => (
          <div key={figure.label}>
            <dt className="q3">{figure.label}</dt>
            <dd>
              <Reading
                value={figure.said}
                estimate
                {...(figure.isLow === undefined ? {} : { warm: figure.isLow })}
                why={figure.why}
              />
              {figure.fewer !== null && (
                <span className="q3 fewer">
                  <span className="vh">with {countWord(MISSING)} missing </span>
                  {figure.fewer}
                </span>
              )}
            </dd>
          </div>
        ))}
        {props.more}
      </dl>
      {props.missing !== null && (
        <p className="cap">
          Below each: with {countWord(MISSING)} missing, {props.missing.setting.roster.skaters} skaters.
        </p>
      )}
    </>
  );
}

function figuresOf({ drill, flow, missing, lengths }: Parameters<typeof FlowFigures>[0]): readonly Figure[] {
  const { each } = flow;
  const fewer = (of: (flow: FlowResult) => string): string | null => (missing === null ? null : of(missing));
  const figure = (
    label: string,
    of: (flow: FlowResult) => string,
    why: ReactNode,
    isLow?: boolean,
  ): Figure => ({ label, said: of(flow), fewer: fewer(of), why, ...(isLow === undefined ? {} : { isLow }) });
  const slowest = [...flow.lines].sort((a, b) => b.standsLongestS - a.standsLongestS)[0];
  const goalies = flow.goalies.filter(goalie => goalie.shotCount > 0);
  return [
    figure(
      'reps each',
      one => numberSaid(one.each.goCount),
      <>
        <b>{flow.repCount} reps</b> of {numberSaid(flow.repS)} s that end within the minutes, times the spots,
        over {flow.setting.roster.skaters} skaters; the fewest {each.fewestGoes}, the most {each.mostGoes}.
      </>,
    ),
    figure(
      'work : rest',
      one => (one.each.restRatio === null ? '–' : `1 : ${numberSaid(one.each.restRatio)}`),
      <>
        <b>{numberSaid(each.workS, 0)} s of work</b> each, from the first motion of a rep to the last, and{' '}
        {numberSaid(each.waitS, 0)} s of the rest of the minutes.
        {each.restS !== null && <> Between two reps {numberSaid(each.restS, 0)} s.</>}
      </>,
    ),
    figure(
      slowest === undefined ? 'longest stand' : `${roleOf(drill, slowest.spot)} line stands`,
      one => `${numberSaid(Math.max(0, ...one.lines.map(line => line.standsLongestS)), 0)} s`,
      <>
        <b>The longest of all lines.</b>{' '}
        {flow.lines
          .filter(line => line.end === 0)
          .map(
            line =>
              `${roleOf(drill, line.spot)}: mean ${numberSaid(line.standsMeanS, 0)} s, longest ${numberSaid(line.standsLongestS, 0)} s`,
          )
          .join('; ')}
        . From being back in line, at {numberSaid(RETURN_MPS.value, 0)} m/s, to the own rep.
      </>,
    ),
    figure(
      'moving at once',
      one => `${numberSaid(one.movingCount, one.movingCount < 10 ? 1 : 0)} of ${one.setting.roster.skaters}`,
      <>
        <b>On the mean of the block.</b> Those who skate back to their line are not counted.{' '}
        {flow.inGamesCount > 0 &&
          `Of the ${countSaid(flow.inGamesCount, 'skater')} of the small game, those who play are. `}
        {Math.round(MOVING_RATIO.value * 100)} % is {MOVING_RATIO.source}.
      </>,
      flow.movingRatio < MOVING_RATIO.value,
    ),
    figure(
      'skated each',
      one => lengthSaid(one.each.distanceM, lengths, 0),
      <>
        <b>In the reps alone</b>, as the run has the ways; without the way back to the line.
      </>,
    ),
    figure(
      'at high speed',
      one => `${numberSaid(one.each.highSpeedS, 0)} s`,
      <>
        <b>From {numberSaid(HIGH_SPEED_MPS.value)} m/s.</b> {HIGH_SPEED_MPS.source}.
      </>,
    ),
    figure(
      'puck on stick',
      one => `${numberSaid(one.each.puckS, 0)} s`,
      <>
        <b>Each, with {numberSaid(each.receiveCount)} passes received.</b> As the run has it: every pass that
        it has arrive arrives.
      </>,
    ),
    figure('shots each', one => numberSaid(one.each.shotCount), <b>Shots of the run, times the reps.</b>),
    ...(goalies.length === 0
      ? []
      : [
          figure(
            'shots a goalie',
            one =>
              [...new Set(one.goalies.filter(each => each.shotCount > 0).map(each => each.shotCount))].join(
                ', ',
              ),
            <>
              <b>{goalies.map(goalie => `${goalie.number}: ${goalie.shotCount}`).join(', ')}.</b> Two at one
              net take turns, rep by rep.
            </>,
          ),
          figure(
            'between shots',
            one => betweenSaid(one),
            <>
              <b>Mean of each goalie; the least is {leastSaid(flow)}.</b> A goalie is ready again after{' '}
              {numberSaid(GOALIE_RESET_S.value, 0)} s: {GOALIE_RESET_S.source}.
            </>,
            flow.nets.some(net => net.leastBetweenS !== null && net.leastBetweenS < GOALIE_RESET_S.value),
          ),
        ]),
  ];
}

function betweenSaid(flow: FlowResult): string {
  const means = flow.goalies.flatMap(goalie => (goalie.betweenS === null ? [] : [goalie.betweenS]));
  return means.length === 0 ? '–' : `${numberSaid(Math.min(...means), 0)} s`;
}

function leastSaid(flow: FlowResult): string {
  const least = flow.nets.flatMap(net => (net.leastBetweenS === null ? [] : [net.leastBetweenS]));
  return least.length === 0 ? 'not known' : `${numberSaid(Math.min(...least))} s at one net`;
}
