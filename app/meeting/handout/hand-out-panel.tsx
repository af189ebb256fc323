import type { Drill, Team } from '@icewright/book';
import { useCallback, useMemo, useState } from 'react';
import { LINK_DAYS, type LinkDays, LinkList, reachedSaid, useLinks } from '../../drills/out/link-list.tsx';
import '../../drills/out/out.css';
import { ShareDone } from '../../film/share-done.tsx';
import { Act } from '../../parts/act.tsx';
import { ChoiceField } from '../../parts/field.tsx';
import { countSaid } from '../../parts/figures.ts';
import { named } from '../../parts/named.ts';
import { saveFile } from '../../parts/save-file.ts';
import { useDocuments } from '../../shell/book.ts';
import { entriesOf } from '../../shell/season.ts';
import { endPage, findPages, makePage } from '../../shell/server.ts';
import type { ShownItem } from '../shown-item.ts';
import type { MeetingFilms } from '../use-films.ts';
import { allHisItemsOf, hisItemsOf, whoIsInIt } from './his-items.ts';
import { useMaking } from './use-making.ts';

/** One player's own page out of a meeting: his moments, their words and film, and a drill. Saved, or seen by a link that ends. */
export function HandOutPanel(props: {
  readonly team: Team;
  readonly meetingId: string;
  readonly items: readonly ShownItem[];
  readonly films: MeetingFilms;
}) {
  const { team, items } = props;
  const who = useMemo(() => whoIsInIt(items, team), [items, team]);
  const [chosen, setChosen] = useState<string>();
  const skaterId = who.some(([id]) => id === chosen) ? chosen : who[0]?.[0];
  if (skaterId === undefined)
    return (
      <p className="q2">No moment of these games is marked with a skater: say in the film room who it was.</p>
    );
  return (
    <div className="hand-out">
      <ChoiceField
        label="For"
        value={skaterId}
        choices={who.map(([value, one]) => ({ value, said: `${one.number} ${named(one.name, 'skater')}` }))}
        onChange={setChosen}
      />
      <ForOne key={skaterId} {...props} skaterId={skaterId as keyof Team['skaters']} />
    </div>
  );
}

function ForOne({
  team,
  meetingId,
  items,
  films,
  skaterId,
}: Parameters<typeof HandOutPanel>[0] & { readonly skaterId: keyof Team['skaters'] }) {
  const ofMeeting = useMemo(() => hisItemsOf(items, skaterId), [items, skaterId]);
  const all = useMemo(() => allHisItemsOf(items, skaterId, team), [items, skaterId, team]);
  const [which, setWhich] = useState<'meeting' | 'all'>(ofMeeting.length > 0 ? 'meeting' : 'all');
  const [drillId, setDrillId] = useState('');
  const [withFilm, setWithFilm] = useState(true);
  const [withNames, setWithNames] = useState(false);
  const [days, setDays] = useState<LinkDays>('7');
  const { base, open, isWorking, failed, ask } = useLinks(
    useCallback(() => findPages(meetingId), [meetingId]),
  );
  const making = useMaking();
  const his = which === 'meeting' ? ofMeeting : all;
  const without = withFilm ? his.filter(({ part }) => films.get(part.hash)?.kind !== 'open').length : 0;
  const skater = team.skaters[skaterId];
  const drill = useDrill(drillId);
  const make = () => making.make({ team, skaterId, items: his, films, drill, withFilm, withNames });
  const isBusy = making.share !== null ? 'one is being made' : undefined;
  const isDrillOpening = drillId !== '' && drill === undefined ? 'the drill is being opened' : undefined;
  const notNow =
    his.length === 0 ? 'no moment of this meeting is marked with this skater' : (isDrillOpening ?? isBusy);
  return (
    <>
      <div className="pair">
        <ChoiceField
          label="What"
          value={which}
          choices={[
            { value: 'meeting', said: `those of this meeting, ${ofMeeting.length}` },
            { value: 'all', said: `all of these games, ${all.length}` },
          ]}
          onChange={setWhich}
        />
        <ChoiceField
          label="Drill"
          value={drillId}
          choices={[
            { value: '', said: 'none' },
            ...entriesOf(team, 'drill').map(([value, { title }]) => ({ value, said: named(title, 'drill') })),
          ]}
          onChange={setDrillId}
        />
      </div>
      <p className="item-bar-acts">
        <Act isOn={withFilm} onPress={() => setWithFilm(!withFilm)}>
          With the film
        </Act>
        <Act isOn={withNames} onPress={() => setWithNames(!withNames)}>
          Name the others
        </Act>
      </p>
      <p className={withFilm ? 'warm' : 'q2'}>
        {withFilm
          ? 'Film leaves this machine with it, cut to these seconds, without sound. Others can be seen in it: of minors only with the consent that your club asks for.'
          : 'No film is in it.'}{' '}
        {withNames ? 'Others are named as you wrote them.' : 'Others of the roster are numbers.'}
        {without > 0 && ` The film of ${countSaid(without, 'moment')} is not here and is left out.`}
      </p>
      <p className="item-bar-acts">
        <Act
          notNow={notNow}
          onPress={() =>
            void make().then(page => page && saveFile(page, `${skater?.number} ${skater?.name}.html`))
          }
        >
          One page (HTML)
        </Act>
        <ChoiceField label="ends after" labelHidden value={days} choices={LINK_DAYS} onChange={setDays} />
        <Act
          working={isWorking}
          notNow={notNow}
          onPress={() =>
            void make().then(
              page =>
                page && ask(makePage(meetingId, page, { days: Number(days), said: `${skater?.number}` })),
            )
          }
        >
          Make a link
        </Act>
        {making.share !== null && (
          <ShareDone says="Film that is cut" share={making.share} onStop={making.stop} />
        )}
      </p>
      {(making.failed ?? failed) !== null && (
        <p className="warm" role="alert">
          {making.failed ?? failed}
        </p>
      )}
      <LinkList
        base={base}
        links={open}
        moreSaid={({ said, byteCount }) => `, for ${said}, ${(byteCount / 1e6).toFixed(1)} MB`}
        onEnd={token => void ask(endPage(meetingId, token))}
      />
      <p className="q3">{reachedSaid(base)}. Taken back or ended, its film is gone from the server too.</p>
    </>
  );
}

/** The drill that goes with it, once it is read. */
function useDrill(id: string): Drill | undefined {
  const views = useDocuments(
    'drill',
    useMemo(() => (id === '' ? [] : [id]), [id]),
  );
  return views.get(id)?.value;
}
