import type { Drill } from '@icewright/book';
import { expect, it } from 'vitest';
import { endsSaid } from './ends-said.ts';

const drill = (attacks?: 'minusX') =>
  ({ spots: { f: { side: 'us', kind: 'skater', ...(attacks && { attacks }) } } }) as unknown as Drill;

it('calls that end ours which is ours in the drills of the practice', () => {
  expect(endsSaid([])).toEqual(['far end', 'our end']);
  expect(endsSaid([drill(), drill()])).toEqual(['far end', 'our end']);
  expect(endsSaid([drill('minusX')])).toEqual(['our end', 'far end']);
  expect(endsSaid([drill(), drill('minusX')])).toEqual(['one end', 'other end']);
});
