import type { Desk } from './freeze-desk.ts';
import type { FreezeView } from './freeze-view.ts';
import { landmarksInPicture } from './freeze-view.ts';

/** The pins on the sheet, and while pins are put down every marking that can take one. */
export function MapPins({
  desk,
  view,
  k,
}: {
  readonly desk: Desk;
  readonly view: FreezeView;
  readonly k: number;
}) {
  const { tool } = desk;
  const pinned = new Set(view.pins.map(pin => pin.landmark));
  const seen = new Set(landmarksInPicture(view).map(one => one.id));
  return (
    <>
      {tool.kind === 'pin' &&
        view.landmarks
          .filter(one => !pinned.has(one.id) && (seen.size === 0 || seen.has(one.id)))
          .map(({ id, atM }) => (
            <g
              key={id}
              className={`map-mark${tool.landmark === id ? ' chosen' : ''}`}
              onPointerUp={() => pickLandmark(desk, id)}
            >
              <circle className="hit" cx={atM.xM} cy={-atM.yM} r={0.95} />
              <circle className="dot" cx={atM.xM} cy={-atM.yM} r={tool.landmark === id ? 0.75 : 0.4} />
            </g>
          ))}
      {view.pins.map(pin =>
        pin.iceM ? (
          <g key={pin.id} className={`map-pin${pin.disagrees ? ' bad' : pin.leftOut ? ' out' : ''}`}>
            <path
              d={`M${pin.iceM.xM - 0.5 * k} ${-pin.iceM.yM}h${k}M${pin.iceM.xM} ${-pin.iceM.yM - 0.5 * k}v${k}`}
              strokeWidth={0.13 * k}
            />
            <text
              x={pin.iceM.xM + 0.3 * k}
              y={-pin.iceM.yM + (pin.iceM.yM > view.rink.boards.widthM / 2 - k ? 1 : -0.3) * k}
              fontSize={0.95 * k}
            >
              {pin.number}
            </text>
          </g>
        ) : null,
      )}
    </>
  );
}

/** A marking was named: it takes the place that was pressed before, or waits for one. */
export const pickLandmark = (desk: Desk, id: string): void => {
  const { tool } = desk;
  if (tool.kind === 'pin' && tool.waitingAt) {
    desk.write.addPin(id, tool.waitingAt);
    desk.setTool({ kind: 'pin' });
  } else desk.setTool({ kind: 'pin', landmark: id });
};
