import type { Team } from '@icewright/book';
import { useEffect, useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { named } from '../../parts/named.ts';
import { clockText } from '../film-clock.ts';
import { timeOfFrame } from '../frame-index.ts';
import { gameTitle } from '../game-words.ts';
import { holdsOf } from '../holds/film-holds.ts';
import { marksAt } from '../marks/marks-at.ts';
import type { MarksLayerProps } from '../marks/marks-layer.tsx';
import type { ListedMoment } from '../moments/filter-moments.ts';
import { MomentGlyph, verdictSaid } from '../moments/moment-glyph.tsx';
import { reelItemOf } from './reel-items.ts';
import type { ReelKind } from './reel-kinds.ts';
import { AS_SHOWN, chosenOf, movedBy, orderOf, withOrWithout } from './reel-order.ts';
import { reelPlanOf } from './reel-plan.ts';
import { leftWords } from './reel-words.ts';
import { untiedCount } from './untied-count.ts';
import { useReel } from './use-reel.ts';

type ReelOf = Pick<MarksLayerProps, 'game' | 'film' | 'player' | 'tie' | 'lengths'> & {
  readonly team: Team;
  /** The moments that the list shows. */
  readonly shown: readonly ListedMoment[];
};

/** From the moments that are shown: a film of them in an order, with marks, stands and sound, as a file for others. */
export function ReelPanel(props: ReelOf) {
  const [isOpen, setOpen] = useState(false);
  const { shown } = props;
  return (
    <div className="reel">
      <Act
        opens={isOpen}
        notNow={shown.length === 0 ? 'no moment is shown' : undefined}
        onPress={() => setOpen(!isOpen)}
      >
        Make a reel of those shown
      </Act>
      {isOpen && <OpenPanel {...props} />}
    </div>
  );
}

function OpenPanel({ game, film, player, tie, lengths, team, shown }: ReelOf) {
  const [order, setOrder] = useState(AS_SHOWN);
  const [withCards, setWithCards] = useState(true);
  const [withSound, setWithSound] = useState(true);
  const [kinds, setKinds] = useState<readonly ReelKind[]>();
  const reel = useReel();
  const { widthPx, heightPx, index } = player.film;
  useEffect(() => {
    void import('./reel-kinds.ts').then(async ({ findReelKinds }) =>
      setKinds(await findReelKinds(widthPx, heightPx)),
    );
  }, [widthPx, heightPx]);
  const byId = new Map<string, ListedMoment[1]>(shown);
  const ids = shown.map(([id]) => id as string);
  const items = chosenOf(ids, order).map(id => reelItemOf(byId.get(id)!, index, game, team));
  const plan = reelPlanOf(items, index, holdsOf(game.freezes, film), withCards ? CARD_S : 0);
  const make = (kind: ReelKind) => {
    player.pause();
    void reel.make(
      {
        film: player.film,
        items,
        plan,
        kind,
        withSound,
        overAt: frameIndex => {
          const fit = tie.fitAt(frameIndex);
          const at = { film, frameIndex, filmTimeS: timeOfFrame(index, frameIndex) };
          return fit ? { fit, marks: marksAt(game, at, tie, fit, lengths) } : { marks: [] };
        },
      },
      `${gameTitle(game)}, ${items.length === 1 ? 'one moment' : `${items.length} moments`}.${kind}`,
    );
  };
  const untied = untiedCount(plan, index, game, film, tie);
  const notNow = reel.making ? 'one is being made' : items.length === 0 ? 'no moment is chosen' : undefined;
  return (
    <section className="reel-panel" aria-label="A reel">
      <ol>
        {orderOf(ids, order).map((id, i, all) => {
          const moment = byId.get(id)!;
          const item = reelItemOf(moment, index, game, team);
          const lengthS = timeOfFrame(index, item.toFrame) - timeOfFrame(index, item.fromFrame);
          const title = named(team.habits[moment.habit]?.title ?? '', 'habit');
          return (
            <li key={id} data-out={order.leftOut.has(id) || undefined}>
              <label>
                <input
                  type="checkbox"
                  checked={!order.leftOut.has(id)}
                  onChange={() => setOrder(withOrWithout(order, id))}
                />{' '}
                {clockText(moment.filmTimeS, 1)} <MomentGlyph verdict={moment.verdict} />{' '}
                {verdictSaid(moment.verdict)} <span className="w">{title}</span>{' '}
                <span className="q3">{lengthS.toFixed(1)} s</span>
              </label>
              <span className="reel-moves">
                <Act
                  bare
                  label={`Earlier: ${title} at ${clockText(moment.filmTimeS, 1)}`}
                  notNow={i === 0 ? 'it is the first' : undefined}
                  onPress={() => setOrder(movedBy(ids, order, id, -1))}
                >
                  ↑
                </Act>
                <Act
                  bare
                  label={`Later: ${title} at ${clockText(moment.filmTimeS, 1)}`}
                  notNow={i === all.length - 1 ? 'it is the last' : undefined}
                  onPress={() => setOrder(movedBy(ids, order, id, 1))}
                >
                  ↓
                </Act>
              </span>
            </li>
          );
        })}
      </ol>
      <p className="reel-acts">
        <label className="q2">
          <input type="checkbox" checked={withCards} onChange={event => setWithCards(event.target.checked)} />{' '}
          a title before each
        </label>
        <label className="q2">
          <input type="checkbox" checked={withSound} onChange={event => setWithSound(event.target.checked)} />{' '}
          sound
        </label>
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
      {reel.making && (
        <p className="reel-acts">
          <progress
            max={1}
            value={reel.making.atS / reel.making.lengthS}
            aria-label="How much of the reel is made"
          />
          <span className="q2">
            {clockText(reel.making.atS, 0)} of {clockText(reel.making.lengthS, 0)}{' '}
            {leftWords(reel.making, reel.making.lengthS, (performance.now() - reel.making.beganMs) / 1000)}
          </span>
          <Act onPress={reel.cancel}>Cancel</Act>
        </p>
      )}
      {reel.said !== '' && (
        <p className="q2" role="status">
          {reel.said}
        </p>
      )}
    </section>
  );
}

/** Long enough to read a habit and a name. Our own choice. */
const CARD_S = 2.5;
