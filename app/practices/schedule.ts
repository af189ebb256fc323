import { type Block, inOrder, type Practice } from '@icewright/book';
import { type BlockTime, blockTimes } from '@icewright/engine';

/** A block with its place in time. */
export interface TimedBlock extends BlockTime {
  readonly id: string;
  readonly block: Block;
}

export interface Schedule {
  readonly blocks: readonly TimedBlock[];
  /** Blocks and the changeovers between them; the last one needs none. */
  readonly usedMinutes: number;
  readonly leftMinutes: number;
  readonly iceMinutes: number;
  readonly iceEndsClock: string;
}

export function scheduleOf(practice: Pick<Practice, 'blocks' | 'iceMinutes' | 'starts'>): Schedule {
  const ordered = inOrder(practice.blocks);
  const times = blockTimes(
    practice.starts,
    ordered.map(([, block]) => block),
    practice.iceMinutes,
  );
  return {
    blocks: ordered.map(([id, block], index) => ({ id, block, ...times.blocks[index]! })),
    usedMinutes: times.usedMinutes,
    leftMinutes: times.leftMinutes,
    iceMinutes: practice.iceMinutes,
    iceEndsClock: times.iceEndsClock,
  };
}

/** 3 min left, 4 min over, full. */
export function leftSaid({ leftMinutes }: Pick<Schedule, 'leftMinutes'>): string {
  if (leftMinutes === 0) return 'the ice is full';
  return leftMinutes > 0 ? `${leftMinutes} min left` : `${-leftMinutes} min over`;
}
