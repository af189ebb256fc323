import { lengthSaid } from '../../parts/figures.ts';
import type { FreezeView } from '../freeze-view.ts';
import { heldToM } from './carried-frames.ts';

/** Under the ice of a frame that has no pins of its own: where its tie comes from, and what it is worth. */
export function CarriedNote({ view }: { readonly view: FreezeView }) {
  const { freeze, fit, lengths } = view;
  const heldM = fit && heldToM(fit, freeze.picture);
  return (
    <p className="note" data-testid="carried">
      Carried from frame {freeze.carried?.from.join(' and ')} by following the camera
      {heldM !== undefined && (
        <>
          : <b className="b">± {lengthSaid(heldM, lengths, 2)}</b> in the middle
        </>
      )}
      . Drift grows with every second; four pins put down here hold it better.
    </p>
  );
}
