import { Act } from '../parts/act.tsx';
import type { Desk } from './freeze-desk.ts';
import { type FreezeView, landmarksInPicture, nearestUnpinned } from './freeze-view.ts';
import { LANDMARK_GROUPS, landmarkGroup, landmarkWords } from './landmark-words.ts';
import { pickLandmark } from './map-pins.tsx';

/** Naming the mark of the next pin: from the list, by pressing it on the ice, or the one that lies nearest. */
export function LandmarkChoice({ desk, view }: { readonly desk: Desk; readonly view: FreezeView }) {
  const { tool } = desk;
  if (tool.kind !== 'pin') return null;
  const near = tool.waitingAt && nearestUnpinned(view, tool.waitingAt);
  return (
    <div className="pins-acts">
      <span className="q2 pins-hint" role="status">
        {tool.landmark
          ? 'Press its place in the picture.'
          : tool.waitingAt
            ? 'Press that mark on the rink, or name it here.'
            : view.fit
              ? 'Press a mark in the picture: the nearest name is taken. Or press the place on the rink first.'
              : 'Press a mark on the rink, or choose it here; then press its place in the picture.'}
      </span>
      <LandmarkSelect
        label={tool.waitingAt ? 'Which mark is that?' : 'Next mark'}
        value={tool.landmark ?? ''}
        view={view}
        onlyFree
        onChoose={id => pickLandmark(desk, id)}
      />
      {near !== undefined && <Act onPress={() => pickLandmark(desk, near)}>It is: {landmarkWords(near)}</Act>}
      <Act onPress={() => desk.setTool({ kind: 'look' })}>Pins are down</Act>
    </div>
  );
}

export function LandmarkSelect({
  label,
  value,
  view,
  onlyFree,
  onChoose,
}: {
  readonly label: string;
  readonly value: string;
  readonly view: FreezeView;
  readonly onlyFree?: boolean;
  readonly onChoose: (id: string) => void;
}) {
  const pinned = new Set(view.pins.map(pin => pin.landmark));
  const free = view.landmarks.filter(one => one.id === value || !onlyFree || !pinned.has(one.id));
  const seen = new Set(landmarksInPicture(view).map(one => one.id));
  const groupOf = (id: string) =>
    seen.size > 0 && !seen.has(id) ? 'Not in this picture' : landmarkGroup(id);
  const order = [...LANDMARK_GROUPS, 'Others', 'Not in this picture'];
  return (
    <label className="landmark-select">
      <span className="q2">{label}</span>{' '}
      <select value={value} onChange={event => event.target.value !== '' && onChoose(event.target.value)}>
        <option value="">choose</option>
        {order.map(name => {
          const marks = free.filter(one => groupOf(one.id) === name);
          return marks.length > 0 ? (
            <optgroup key={name} label={name}>
              {marks.map(one => (
                <option key={one.id} value={one.id}>
                  {landmarkWords(one.id)}
                </option>
              ))}
            </optgroup>
          ) : null;
        })}
      </select>
    </label>
  );
}
