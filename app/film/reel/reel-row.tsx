import { Still } from '../../meeting/still-picture.tsx';
import type { Stills } from '../../meeting/stills.ts';
import { Act } from '../../parts/act.tsx';
import { MomentGlyph } from '../moments/moment-glyph.tsx';
import type { ReelEntry } from './reel-entry.ts';
import { type ReelSpeed, SPEED_CHOICES } from './reel-speed.ts';

/** One stretch of a reel: whether it goes in, how fast it runs, and where in the order it stands. */
export function ReelRow({
  entry,
  stills,
  isOut,
  speed,
  place,
  onOut,
  onSpeed,
  onMove,
}: {
  readonly entry: ReelEntry;
  readonly stills: Stills | undefined;
  readonly isOut: boolean;
  readonly speed: ReelSpeed;
  readonly place: { readonly index: number; readonly count: number };
  readonly onOut: () => void;
  readonly onSpeed: (speed: ReelSpeed) => void;
  readonly onMove: (places: -1 | 1) => void;
}) {
  const { at, card, verdict, lengthS } = entry;
  const which = `${card.what} at ${at}`;
  return (
    <li data-out={isOut || undefined}>
      <Still stills={stills} frameIndex={entry.aboutFrame} />
      <label>
        <input type="checkbox" checked={!isOut} onChange={onOut} /> {at}{' '}
        {verdict && <MomentGlyph verdict={verdict} />} {card.verdict} <span className="w">{card.what}</span>{' '}
        <span className="q3">{lengthS.toFixed(1)} s</span>
      </label>
      <span className="reel-row-acts">
        <select
          className="entry reel-speed"
          aria-label={`Speed of ${which}`}
          value={speed}
          disabled={isOut}
          onChange={event => onSpeed(event.target.value as ReelSpeed)}
        >
          {SPEED_CHOICES.map(({ value, said }) => (
            <option key={value} value={value}>
              {said}
            </option>
          ))}
        </select>
        <span className="reel-moves">
          <Act
            bare
            label={`Earlier: ${which}`}
            notNow={place.index === 0 ? 'it is the first' : undefined}
            onPress={() => onMove(-1)}
          >
            ↑
          </Act>
          <Act
            bare
            label={`Later: ${which}`}
            notNow={place.index === place.count - 1 ? 'it is the last' : undefined}
            onPress={() => onMove(1)}
          >
            ↓
          </Act>
        </span>
      </span>
    </li>
  );
}
