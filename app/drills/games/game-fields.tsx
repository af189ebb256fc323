import type { Drill } from '@icewright/book';
import type { Id, SmallGame } from '@icewright/engine';
import { countSaid } from '../../parts/figures.ts';
import { Sentence, type SlotLine } from '../../parts/sentence.tsx';
import type { WhoIsHere } from '../../parts/who-is-here.ts';
import { numberLine } from '../flow/number-line.ts';
import type { Write } from '../write.ts';
import { netsInside } from './game-writes.ts';

const COUNTS = [0, 1, 2, 3, 4, 5, 6];
const SECONDS = [15, 20, 25, 30, 35, 40, 45, 60, 90, 120];
const SKATERS = Array.from({ length: 30 }, (_, index) => index + 1);
const RESETS = [
  { value: 'coach', said: 'the coach' },
  { value: 'whoScored', said: 'who scored' },
  { value: 'whoWasScoredOn', said: 'who was scored on' },
] as const;

/** A small game as a sentence whose parts can be chosen. */
export function GameFields(props: {
  readonly id: Id<'game'>;
  readonly game: SmallGame;
  readonly drill: Drill;
  readonly here: WhoIsHere;
  readonly onHere: (here: WhoIsHere) => void;
  readonly onKeep: (writes: Write[]) => void;
}) {
  const { game } = props;
  const resets = RESETS.find(one => one.value === game.resets)?.said ?? '';
  return (
    <Sentence slots={slotsOf(props)}>
      {slot => (
        <>
          {slot('us', String(game.usCount), true)} on {slot('them', String(game.themCount), true)} for{' '}
          {slot('shift', `${game.shiftS} s`, true)}, {slot('nets', netsSaid(game.nets.length))};{' '}
          {slot('resets', resets)} brings the next puck.{' '}
          {slot('skaters', countSaid(props.here.skaters, 'skater'), true)} are here.
        </>
      )}
    </Sentence>
  );
}

function slotsOf({
  id,
  game,
  drill,
  here,
  onHere,
  onKeep,
}: Parameters<typeof GameFields>[0]): Record<string, SlotLine[]> {
  const set = <Part extends keyof SmallGame>(part: Part, value: SmallGame[Part]) =>
    onKeep([{ path: ['games', id, part], value }]);
  const inside = netsInside(drill, game);
  const isAll = inside.length === game.nets.length && inside.every(net => game.nets.includes(net));
  return {
    us: [numberLine('of us', COUNTS, game.usCount, count => set('usCount', count))],
    them: [numberLine('of them', COUNTS, game.themCount, count => set('themCount', count))],
    shift: [numberLine('seconds', SECONDS, game.shiftS, shiftS => set('shiftS', shiftS))],
    nets: [
      {
        label: 'nets',
        choices: [
          { value: 'inside', said: `those that stand in it: ${inside.length}` },
          { value: 'none', said: 'none' },
          ...(isAll || game.nets.length === 0
            ? []
            : [{ value: 'kept', said: `as it is: ${game.nets.length}` }]),
        ],
        value: game.nets.length === 0 ? 'none' : isAll ? 'inside' : 'kept',
        onChoose: value => value !== 'kept' && set('nets', value === 'inside' ? inside : []),
      },
    ],
    resets: [
      {
        label: 'brings it',
        choices: RESETS,
        value: game.resets,
        onChoose: resets => set('resets', resets as SmallGame['resets']),
      },
    ],
    skaters: [numberLine('skaters', SKATERS, here.skaters, skaters => onHere({ ...here, skaters }))],
  };
}

const netsSaid = (count: number): string => (count === 0 ? 'without nets' : `on ${countSaid(count, 'net')}`);
