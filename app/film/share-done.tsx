import { Act } from '../parts/act.tsx';

/** How much of a long work is done, and its end. */
export function ShareDone({
  says,
  share,
  onStop,
}: {
  readonly says: string;
  /** Null while it is not known yet. */
  readonly share: number | null;
  readonly onStop: () => void;
}) {
  return (
    <span className="keep-copy">
      <progress max={1} value={share ?? undefined} aria-label={says} />{' '}
      {share === null ? '' : `${Math.round(share * 100)} %`}{' '}
      <Act bare onPress={onStop}>
        stop
      </Act>
    </span>
  );
}
