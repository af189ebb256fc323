import { RunningHead } from '../shell/running-head.tsx';

export function HabitsPlace(_: { readonly habitId?: string }) {
  return <RunningHead title="Habits" titleWords="Habits" />;
}
