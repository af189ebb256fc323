import { clockSaid } from '../parts/figures.ts';
import { useTeam } from './book.ts';
import { useConnection } from './connection.ts';

/** When the server last said that everything is written down; or plainly that it has not. */
export function KeptWords() {
  const { isConnected, unkeptCount, keptAt } = useConnection();
  const face = useTeam().value?.clockFace ?? '24';
  const said = !isConnected
    ? unkeptCount === 0
      ? 'Offline'
      : 'Offline, kept on this machine'
    : unkeptCount > 0
      ? 'Not kept yet'
      : keptAt === null
        ? 'Opening'
        : `Kept ${timeSaid(new Date(keptAt), face)}`;
  return (
    <span className={isConnected ? 'kept' : 'kept warm'} role="status">
      {said}
    </span>
  );
}

function timeSaid(at: Date, face: '24' | '12'): string {
  const two = (value: number) => String(value).padStart(2, '0');
  const [clock, half] = clockSaid(`${two(at.getHours())}:${two(at.getMinutes())}`, face).split('\u2009');
  return `${clock}:${two(at.getSeconds())}${half === undefined ? '' : `\u2009${half}`}`;
}
