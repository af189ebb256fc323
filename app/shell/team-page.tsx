import { RunningHead } from './running-head.tsx';

export function TeamPage() {
  return <RunningHead title="Team" titleWords="Team" />;
}
