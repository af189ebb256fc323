import { useEffect, useState } from 'react';
import type { Stills } from '../../meeting/stills.ts';
import { Act } from '../../parts/act.tsx';
import { ChoiceField } from '../../parts/field.tsx';
import { clockText } from '../film-clock.ts';
import { CARD_LINE_SAID, CARD_LINES, type CardLine } from './card-lines.ts';
import { type ReelEntry, reelItemOf } from './reel-entry.ts';
import { flashesS, type ReelFilms, untiedCount } from './reel-films.ts';
import type { ReelKind } from './reel-kinds.ts';
import { ReelMaking } from './reel-making.tsx';
import { AS_SHOWN, chosenOf, movedBy, orderOf, withOrWithout } from './reel-order.ts';
import { reelPlanOf } from './reel-plan.ts';
import { ReelRow } from './reel-row.tsx';
import { reelSizeOf } from './reel-size.ts';
import { FULL_SPEED, type ReelSpeed, SPEED_CHOICES, speedOf, withSpeed } from './reel-speed.ts';
import { useReel } from './use-reel.ts';
import './reel.css';

/** Where a reel is put together: which stretches, in which order, how fast, what stands before each; then its file. */
export function ReelDesk({
  entries,
  films,
  stills,
  title,
  onMake,
}: {
  readonly entries: readonly ReelEntry[];
  readonly films: ReelFilms;
  /** Small pictures of those films. */
  readonly stills: ReadonlyMap<string, Stills>;
  /** What the file is called, without its ending. */
  readonly title: (count: number) => string;
  readonly onMake?: () => void;
}) {
  const [order, setOrder] = useState(AS_SHOWN);
  const [speeds, setSpeeds] = useState(FULL_SPEED);
  const [withCards, setWithCards] = useState(true);
  const [lines, setLines] = useState<ReadonlySet<CardLine>>(FIRST_LINES);
  const [withSound, setWithSound] = useState(true);
  const reel = useReel();
  const byId = new Map(entries.map(one => [one.id, one]));
  const ids = entries.map(({ id }) => id);
  const items = chosenOf(ids, order).map(id => reelItemOf(byId.get(id)!, speedOf(speeds, id), lines));
  const plan = reelPlanOf(items, key => films.get(key)!.film.index, withCards ? CARD_S : 0);
  const needed = new Map([...films].filter(([key]) => items.some(({ film }) => film === key)));
  const size = reelSizeOf([...(needed.size > 0 ? needed : films).values()].map(({ film }) => film));
  const kinds = useKinds(size.widthPx, size.heightPx);
  const untied = untiedCount(plan, items, films);
  const flashes = flashesS(plan, items, films);
  const isAlike = ids.every(id => speedOf(speeds, id) === speeds.all);
  const isSlowed = items.some(({ rates }) => rates.some(rate => rate !== 1));
  const make = (kind: ReelKind) => {
    onMake?.();
    void reel.make(
      { films: needed, items, plan, kind, size, withSound, quality: 'high' },
      `${title(items.length)}.${kind}`,
    );
  };
  const notNow = whyNot(reel.making !== undefined, items.length, withCards && lines.size === 0);
  return (
    <section className="reel-panel" aria-label="A reel">
      <ol>
        {orderOf(ids, order).map((id, index, all) => (
          <ReelRow
            key={id}
            entry={byId.get(id)!}
            stills={stills.get(byId.get(id)!.film)}
            isOut={order.leftOut.has(id)}
            speed={speedOf(speeds, id)}
            place={{ index, count: all.length }}
            onOut={() => setOrder(withOrWithout(order, id))}
            onSpeed={speed => setSpeeds(withSpeed(speeds, id, speed))}
            onMove={places => setOrder(movedBy(ids, order, id, places))}
          />
        ))}
      </ol>
      <div className="reel-acts">
        <ChoiceField<ReelSpeed | 'own'>
          label="All run at"
          value={isAlike ? speeds.all : 'own'}
          choices={isAlike ? SPEED_CHOICES : [OWN_SPEEDS, ...SPEED_CHOICES]}
          onChange={all => all !== 'own' && setSpeeds({ all, own: new Map() })}
        />
        <label className="q2">
          <input type="checkbox" checked={withSound} onChange={event => setWithSound(event.target.checked)} />{' '}
          sound{isSlowed && withSound ? ', not where it is slowed' : ''}
        </label>
        <label className="q2">
          <input type="checkbox" checked={withCards} onChange={event => setWithCards(event.target.checked)} />{' '}
          a title before each
        </label>
        {withCards && (
          <fieldset className="reel-lines">
            <legend className="vh">On the title</legend>
            {CARD_LINES.map(line => (
              <label key={line} className="q2">
                <input
                  type="checkbox"
                  checked={lines.has(line)}
                  onChange={() =>
                    setLines(
                      new Set(CARD_LINES.filter(one => (one === line ? !lines.has(one) : lines.has(one)))),
                    )
                  }
                />{' '}
                {CARD_LINE_SAID[line]}
              </label>
            ))}
          </fieldset>
        )}
      </div>
      <p className="reel-acts">
        <span className="q2">
          <b className="b">{clockText(plan.lengthS, 1)}</b> long, with marks and stands
        </span>
        {kinds?.map(kind => (
          <Act key={kind} working={reel.making?.kind === kind} notNow={notNow} onPress={() => make(kind)}>
            {kind === 'mp4' ? 'MP4' : 'WebM'}
          </Act>
        ))}
        {kinds?.length === 0 && <span className="warm">This browser cannot write films.</span>}
        {kinds && kinds.length > 0 && !kinds.includes('mp4') && (
          <span className="q3">This browser has no H.264 encoder: no MP4 here.</span>
        )}
      </p>
      {untied > 0 && (
        <p className="q2">
          <span className="warm b">
            {untied} {untied === 1 ? 'picture' : 'pictures'}
          </span>{' '}
          in it have marks and are not tied to the ice: those show none. Carry the pins through them first.
        </p>
      )}
      {flashes.length > 0 && (
        <p className="q2">
          <span className="warm b">
            {flashes.length === 1 ? 'The freeze' : 'The freezes'} at{' '}
            {flashes.map(atS => clockText(atS, 1)).join(', ')}
          </span>{' '}
          {flashes.length === 1 ? 'has marks and stands' : 'have marks and stand'} 0 s: the marks flash by in
          one picture. Open {flashes.length === 1 ? 'it' : 'them'} and say how long playback stands there.
        </p>
      )}
      <ReelMaking reel={reel} />
    </section>
  );
}

/** Long enough to read a habit and a name. Our own choice. */
const CARD_S = 2.5;
const OWN_SPEEDS = { value: 'own', said: 'each as set' } as const;
const FIRST_LINES: ReadonlySet<CardLine> = new Set(['what', 'verdict', 'who', 'where']);

const whyNot = (isMaking: boolean, count: number, isTitleEmpty: boolean): string | undefined => {
  if (isMaking) return 'one is being made';
  if (count === 0) return 'no moment is chosen';
  return isTitleEmpty ? 'nothing is chosen for the titles' : undefined;
};

const useKinds = (widthPx: number, heightPx: number): readonly ReelKind[] | undefined => {
  const [kinds, setKinds] = useState<readonly ReelKind[]>();
  useEffect(() => {
    void import('./reel-kinds.ts').then(async ({ findReelKinds }) =>
      setKinds(await findReelKinds(widthPx, heightPx)),
    );
  }, [widthPx, heightPx]);
  return kinds;
};
