import { Act } from '../parts/act.tsx';
import { Failure } from '../parts/empty.tsx';
import type { Refusal } from './film-refusal.ts';

/** A file that is no film to be shown here: what is wrong, what to do; nothing was changed. */
export function Refused({
  refusal,
  fileName,
  onLeave,
}: {
  readonly refusal: Refusal;
  readonly fileName: string;
  readonly onLeave?: () => void;
}) {
  return (
    <Failure
      where={`Film ${fileName}`}
      what={refusal.says}
      lost={`${refusal.todo} Nothing here was changed.`}
    >
      {onLeave && <Act onPress={onLeave}>Close</Act>}
    </Failure>
  );
}
