import type { Team } from '@icewright/book';
import { useRef, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { dayInMonth, daySaid, fromToday, today } from '../parts/figures.ts';
import { useDocuments } from './book.ts';
import { KeptWords } from './kept-words.tsx';
import { useKeys } from './keys.ts';
import { KeysSlip } from './keys-slip.tsx';
import { findPlace, PLACES } from './places.ts';
import { SettingsSlip } from './settings-slip.tsx';

type SlipName = 'keys' | 'settings';

/** The five places on one graduated rule; the place one is in is the full segment. */
export function Strip({ team }: { readonly team: Team | null }) {
  const [path] = useLocation();
  const [open, setOpen] = useState<{ readonly which: SlipName; readonly path: string } | null>(null);
  const settings = useRef<HTMLButtonElement>(null);
  // Of the page it was opened on: on another page it is closed.
  const slip = open?.path === path ? open.which : null;
  const here = findPlace(path);
  /** Where the focus was before a slip took it. */
  const before = useRef<Element | null>(null);
  const toggle = (which: SlipName) => {
    if (slip === which) return close();
    before.current = document.activeElement;
    setOpen({ which, path });
  };
  const close = () => {
    setOpen(null);
    const back = before.current;
    // By a key it may have been opened from anywhere on the page, which must not move for it.
    if (back instanceof HTMLElement && back !== document.body && back.isConnected)
      back.focus({ preventScroll: true });
    else if (slip === 'settings') settings.current?.focus();
  };
  useKeys([{ keys: '?', says: 'these keys', act: () => toggle('keys') }]);
  useKeys(slip === null ? [] : [{ keys: 'Escape', says: 'close this', act: close }]);
  return (
    <header>
      <div className="strip">
        <span className="name">Icewright</span>
        <nav aria-label="Places">
          <ol>
            {PLACES.map(place => (
              <li key={place.path}>
                <Link href={place.path} aria-current={place === here ? 'page' : undefined}>
                  {place.name}
                  {place === here && team !== null && <CountOf team={team} path={place.path} />}
                </Link>
              </li>
            ))}
          </ol>
        </nav>
        <div className="who">
          {team !== null && (
            <Link href="/team" className="team-name" aria-label={`Team: ${team.name}`}>
              {team.name}
            </Link>
          )}
          {team !== null && <NextGame team={team} />}
          <KeptWords />
          <button
            type="button"
            className="quiet keys-act"
            aria-expanded={slip === 'keys'}
            onClick={() => toggle('keys')}
          >
            Keys
          </button>
          <button
            type="button"
            className="quiet"
            ref={settings}
            aria-expanded={slip === 'settings'}
            onClick={() => toggle('settings')}
          >
            Settings
          </button>
        </div>
      </div>
      {slip === 'keys' && (
        <div className="keys-over">
          <KeysSlip onClose={close} />
        </div>
      )}
      {slip === 'settings' && <SettingsSlip team={team} onClose={close} />}
    </header>
  );
}

function CountOf({ team, path }: { readonly team: Team; readonly path: string }) {
  const count = countAt(team, path);
  return count === 0 ? null : <span className="nn">{count}</span>;
}

function countAt(team: Team, path: string): number {
  if (path === '/habits') return Object.values(team.habits).filter(habit => habit.kept).length;
  const kind = ({ '/film': 'game', '/drills': 'drill', '/practices': 'practice' } as const)[path as '/film'];
  return Object.values(team.contents).filter(entry => entry.kind === kind && !entry.removed).length;
}

/** The next game to come. One that there is film of has been played, even when that was today. */
function NextGame({ team }: { readonly team: Team }) {
  const coming = Object.entries(team.contents)
    .filter(([, entry]) => entry.kind === 'game' && !entry.removed && entry.day >= today())
    .sort(([, a], [, b]) => a.day.localeCompare(b.day));
  const games = useDocuments(
    'game',
    coming.map(([id]) => id),
  );
  const next = coming.find(([id]) => {
    const view = games.get(id);
    return view?.state === 'ready' && Object.keys(view.value.films).length === 0;
  })?.[1];
  if (next === undefined) return null;
  return (
    <span className="next-game" title={`${dayInMonth(next.day)}`}>
      <b>{next.title}</b> {daySaid(next.day)}, {fromToday(next.day)}
    </span>
  );
}
