import type { Drill, Practice, Team } from '@icewright/book';
import { RunningHead } from '../shell/running-head.tsx';

export function CardPage(_: {
  readonly team: Team;
  readonly practice: Practice;
  readonly practiceId: string;
  readonly drills: ReadonlyMap<string, Drill>;
}) {
  return <RunningHead title="Ice card" titleWords="Ice card" />;
}
