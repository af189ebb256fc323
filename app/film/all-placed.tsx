import type { Freeze } from '@icewright/book';
import type { Desk } from './freeze-desk.ts';

type AllPlaced = Freeze['allPlaced'];

/** Whether one of us may be in this picture without a mark: only the person who looks at it can say. */
export function AllPlacedField({ desk }: { readonly desk: Desk }) {
  return (
    <p className="pins-acts">
      <label>
        <span className="q2">Of us without a mark</span>{' '}
        <select
          value={desk.freeze.allPlaced ?? ''}
          onChange={event => desk.write.set('allPlaced', event.target.value || undefined)}
        >
          {SAID.map(([value, said]) => (
            <option key={value} value={value}>
              {said}
            </option>
          ))}
        </select>
      </label>
    </p>
  );
}

const SAID: readonly (readonly [NonNullable<AllPlaced> | '', string])[] = [
  ['', 'somebody may be here'],
  ['inPicture', 'nobody in the picture'],
  ['onIce', 'nobody on the ice'],
];
