import type { Drill } from '@icewright/book';
import { type Flow, LINE_IDS, type LineId, lineWords, type SpotId } from '@icewright/engine';
import { countSaid, numberSaid } from '../../parts/figures.ts';
import { Sentence, type SlotLine } from '../../parts/sentence.tsx';
import type { WhoIsHere } from '../../parts/who-is-here.ts';
import { edit } from '../../shell/book.ts';
import { roleOf } from '../act-words.ts';
import { spotsOf } from '../route-writes.ts';
import type { Write } from '../write.ts';
import { flowChanged, flowIn, goesToChanged } from './flow-writes.ts';
import { numberLine } from './number-line.ts';

const MINUTES = [3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 20];
const SECONDS = [3, 4, 5, 6, 7, 8, 10, 12, 15, 20, 25, 30, 40, 45, 60, 90];
const PAUSES = [0, 2, 3, 5, 8, 10, 15, 20, 30];
const SKATERS = Array.from({ length: 30 }, (_, index) => index + 1);
const GOALIES = [0, 1, 2, 3, 4];

const NEXT = [
  { value: 'end', said: 'when this one has ended' },
  { value: 'every', said: 'every … seconds' },
  { value: 'clear', said: 'when the puck is over a line' },
] as const;
const ENDS = [
  { value: 'one', said: 'at one end' },
  { value: 'both', said: 'at both ends at once' },
  { value: 'byTurns', said: 'at the two ends by turns' },
] as const;
const BEYOND = [
  { value: 'join', said: 'join the shortest line' },
  { value: 'sitOut', said: 'sit out' },
] as const;

/** How goes follow each other, as a sentence whose parts can be chosen. */
export function FlowFields(props: {
  readonly id: string;
  readonly drill: Drill;
  readonly here: WhoIsHere;
  readonly onHere: (here: WhoIsHere) => void;
  readonly onKeep: (writes: Write[]) => void;
}) {
  const { drill, here } = props;
  const flow = flowIn(drill);
  return (
    <Sentence slots={slotsOf(props, flow)}>
      {slot => (
        <>
          In {slot('minutes', countSaid(drill.minutes, 'minute'), true)},{' '}
          {slot('skaters', countSaid(here.skaters, 'skater'), true)} and{' '}
          {slot('goalies', countSaid(here.goalies, 'goalie'), true)}: the next starts{' '}
          {slot('next', nextSaid(flow, drill))}, {slot('ends', saidIn(ENDS, flow.ends))}. After it{' '}
          {slot('goesTo', goesToSaid(drill, flow), false, '.')} More than the lines drawn{' '}
          {slot('beyond', saidIn(BEYOND, here.beyondLines), false, '.')}
        </>
      )}
    </Sentence>
  );
}

function slotsOf(
  { id, drill, here, onHere, onKeep }: Parameters<typeof FlowFields>[0],
  flow: Flow,
): Record<string, SlotLine[]> {
  return {
    minutes: [numberLine('minutes', MINUTES, drill.minutes, value => edit(id).set(['minutes'], value))],
    skaters: [numberLine('skaters', SKATERS, here.skaters, skaters => onHere({ ...here, skaters }))],
    goalies: [numberLine('goalies', GOALIES, here.goalies, goalies => onHere({ ...here, goalies }))],
    next: nextLines(
      drill,
      flow,
      next => onKeep(flowChanged(drill, 'next', next)),
      pauseS => onKeep(flowChanged(drill, 'pauseS', pauseS)),
    ),
    ends: [
      {
        label: 'where',
        choices: ENDS,
        value: flow.ends,
        onChoose: ends => onKeep(flowChanged(drill, 'ends', ends as Flow['ends'])),
      },
    ],
    goesTo: goesToLines(drill, flow, onKeep),
    beyond: [
      {
        label: 'who is more',
        choices: BEYOND,
        value: here.beyondLines,
        onChoose: beyondLines => onHere({ ...here, beyondLines: beyondLines as WhoIsHere['beyondLines'] }),
      },
    ],
  };
}

function nextLines(
  drill: Drill,
  flow: Flow,
  onNext: (next: Flow['next']) => void,
  onPause: (pauseS: number) => void,
): SlotLine[] {
  const { next } = flow;
  const when: SlotLine = {
    label: 'next',
    choices: NEXT,
    value: next.on,
    onChoose: on =>
      onNext(
        on === 'every' ? { on, seconds: 10 } : on === 'clear' ? { on, line: 'centreLine' } : { on: 'end' },
      ),
  };
  if (next.on === 'every')
    return [when, numberLine('seconds', SECONDS, next.seconds, seconds => onNext({ on: 'every', seconds }))];
  if (next.on === 'end') return [when, numberLine('pause, s', PAUSES, flow.pauseS, onPause)];
  const line: SlotLine = {
    label: 'line',
    choices: LINE_IDS.map(value => ({ value, said: lineWords(value, drill) })),
    value: next.line,
    onChoose: value => onNext({ on: 'clear', line: value as LineId }),
  };
  return [when, line];
}

function goesToLines(drill: Drill, flow: Flow, onKeep: (writes: Write[]) => void): SlotLine[] {
  const lines = skatersOf(drill);
  return lines.map(([from, spot]) => ({
    label: `${spot.role} goes to`,
    choices: lines.map(([value, other]) => ({
      value,
      said: value === from ? 'the own line' : `the ${other.role} line`,
    })),
    value: flow.goesTo[from] ?? from,
    onChoose: to => onKeep(goesToChanged(drill, from, to as SpotId)),
  }));
}

const skatersOf = (drill: Drill) => spotsOf(drill).filter(([, spot]) => spot.kind === 'skater');

function goesToSaid(drill: Drill, flow: Flow): string {
  const moves = skatersOf(drill).flatMap(([from, spot]) => {
    const to = flow.goesTo[from];
    return to === undefined || to === from ? [] : [`${spot.role} to ${roleOf(drill, to)}`];
  });
  return moves.length === 0 ? 'all go back to their own line' : `${moves.join(', ')}`;
}

function nextSaid({ next, pauseS }: Flow, drill: Drill): string {
  if (next.on === 'every')
    return `every ${numberSaid(next.seconds, Number.isInteger(next.seconds) ? 0 : 1)} s`;
  if (next.on === 'clear') return `when the puck is over ${lineWords(next.line, drill)}`;
  return pauseS === 0 ? 'when this one has ended' : `${numberSaid(pauseS, 0)} s after this one has ended`;
}

const saidIn = (
  choices: readonly { readonly value: string; readonly said: string }[],
  value: string,
): string => choices.find(choice => choice.value === value)?.said ?? '';
