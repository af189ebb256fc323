import { RunningHead } from '../shell/running-head.tsx';

export function LedgerPlace(_: { readonly x?: string }) {
  return <RunningHead title="Ledger" titleWords="Ledger" />;
}
