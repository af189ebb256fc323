import { ActLink } from '../parts/act.tsx';
import { Failure } from '../parts/empty.tsx';
import { countSaid } from '../parts/figures.ts';
import { RunningHead } from './running-head.tsx';

type What = 'meeting' | 'practice';

/** In the place of a document that is not on this machine, or that this program must not read. */
export function DocumentNotHere({
  what,
  isRefused,
  back,
  to,
}: {
  readonly what: What;
  readonly isRefused: boolean;
  readonly back: { readonly to: string; readonly said: string };
  /** The way out, in words. */
  readonly to: string;
}) {
  return (
    <>
      <RunningHead back={back} title={`No ${what}`} titleWords={`No ${what}`} />
      <Failure
        where={what === 'meeting' ? 'Meeting' : 'Practice'}
        what={isRefused ? `This ${what} cannot be read by this Icewright.` : `This ${what} is not here.`}
        lost={
          isRefused
            ? 'It was written by a newer one, or is damaged. Nothing in it was changed.'
            : 'It may lie on another machine that has not been connected since.'
        }
      >
        <ActLink to={back.to}>{to}</ActLink>
      </Failure>
    </>
  );
}

/** Above a document of which some values could not be read. */
export const UnfitValues = ({ what, count }: { readonly what: What; readonly count: number }) =>
  count > 0 ? (
    <p className="warm" role="alert">
      {countSaid(count, 'value')} in this {what} no longer fit and are left out; nothing was deleted.
    </p>
  ) : null;
