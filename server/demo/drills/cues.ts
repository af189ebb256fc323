import type { LineId } from '@icewright/engine';
import { type At, pointOf, spotIdOf } from './drill-of.ts';

export const whistle = { on: 'whistle' } as const;
export const received = (role: string) => ({ on: 'receive', spot: spotIdOf(role) }) as const;
export const after = (seconds: number) => ({ on: 'after', seconds }) as const;
export const shot = (role: string) => ({ on: 'shot', spot: spotIdOf(role) }) as const;
export const loses = (role: string) => ({ on: 'losesPuck', spot: spotIdOf(role) }) as const;
export const caught = (role: string) => ({ on: 'caught', spot: spotIdOf(role) }) as const;
export const crosses = (role: string, line: LineId) =>
  ({ on: 'spotCrosses', spot: spotIdOf(role), line }) as const;
export const reaches = (role: string, at: At, withinM: number) =>
  ({ on: 'reaches', spot: spotIdOf(role), atM: pointOf(at), withinM }) as const;
