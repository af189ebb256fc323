import { RunningHead } from '../shell/running-head.tsx';

export function PracticesPlace(_: { readonly practiceId?: string }) {
  return <RunningHead title="Practices" titleWords="Practices" />;
}
