import { Empty } from '../parts/empty.tsx';
import { RunningHead } from '../shell/running-head.tsx';

export function FilmPlace(_: { readonly gameId?: string }) {
  return (
    <>
      <RunningHead title="Film" titleWords="Film" />
      <Empty says="Open a game, and mark the first moment while it plays." />
    </>
  );
}
