import { lazy, Suspense, useEffect, useLayoutEffect, useRef } from 'react';
import { Redirect, Route, Switch, useLocation, useRoute } from 'wouter';
import { Act, ActLink } from '../parts/act.tsx';
import { Empty, Failure } from '../parts/empty.tsx';
import { openedId, redo, undo, useTeam } from './book.ts';
import { FirstStart } from './first-start.tsx';
import { listenForKeys, useKeys } from './keys.ts';
import { OfAnotherTeam } from './of-another-team.tsx';
import { findPlace, PLACES } from './places.ts';
import { RunningHead } from './running-head.tsx';
import { Strip } from './strip.tsx';
import { loadTeams, renameTeam, useTeams } from './teams.ts';
import { useTopOfPage } from './top-of-page.ts';
import { TroubleCatcher } from './trouble-catcher.tsx';
import { useWhosePage } from './use-whose-page.ts';
import type { Whose } from './whose-page.ts';

const FilmPlace = lazy(async () => ({ default: (await import('../film/film-place.tsx')).FilmPlace }));
const HabitsPlace = lazy(async () => ({ default: (await import('../habits/habits-place.tsx')).HabitsPlace }));
const DrillsPlace = lazy(async () => ({ default: (await import('../drills/drills-place.tsx')).DrillsPlace }));
const PracticesPlace = lazy(async () => ({
  default: (await import('../practices/practices-place.tsx')).PracticesPlace,
}));
const MeetingPlace = lazy(async () => ({
  default: (await import('../meeting/meeting-place.tsx')).MeetingPlace,
}));
const MeetingShown = lazy(async () => ({
  default: (await import('../meeting/meeting-shown.tsx')).MeetingShown,
}));
const LedgerPlace = lazy(async () => ({ default: (await import('../ledger/ledger-place.tsx')).LedgerPlace }));
const FiguresPage = lazy(async () => ({ default: (await import('./figures-page.tsx')).FiguresPage }));
const TeamPage = lazy(async () => ({ default: (await import('./team-page.tsx')).TeamPage }));

export function Frame() {
  const { state, teamId } = useTeams();
  useEffect(() => {
    void loadTeams();
  }, []);
  useEffect(listenForKeys, []);
  useBackToPlaceOnChange(teamId);
  const [isShown, shown] = useRoute('/film/meeting/:id/show');
  if (isShown)
    return (
      <Suspense fallback={null}>
        <MeetingShown meetingId={shown.id} />
      </Suspense>
    );
  if (teamId !== null) return <Places key={teamId} />;
  return state === 'loading' ? <p className="vh">Opening</p> : <FirstStart />;
}

/**
 * What is open belongs to the team that was: with another team one stands in the list of the same place, but where the
 * team was changed for the sake of the page.
 */
function useBackToPlaceOnChange(teamId: string | null): void {
  const [path, go] = useLocation();
  const before = useRef(teamId);
  useLayoutEffect(() => {
    if (before.current !== null && before.current !== teamId && !useTeams.getState().isForPage)
      go(findPlace(path)?.path ?? path);
    before.current = teamId;
  }, [teamId, path, go]);
}

function Places() {
  const [path, go] = useLocation();
  const { state, value: team, issues } = useTeam();
  const teamId = useTeams(teams => teams.teamId);
  const whose = useWhosePage(path, team);
  // What is not ours is not shown, so no key may change it either.
  const undoable = whose.kind === 'ours' || whose.kind === 'nobodys' ? openedId(path) : null;
  useTopOfPage(path);
  useLayoutEffect(() => {
    document.documentElement.dataset.theme = path.startsWith('/film') ? 'film' : 'ice';
  }, [path]);
  useEffect(() => {
    if (team !== undefined && teamId !== null) renameTeam(teamId, team.name);
  }, [team, teamId]);
  useKeys([
    ...PLACES.map(place => ({
      keys: `g ${place.key}`,
      says: `go to ${place.name}`,
      act: () => go(place.path),
    })),
    { keys: 'Mod+z', says: 'undo, here', act: () => undo(undoable) },
    { keys: 'Shift+Mod+z', says: 'redo', act: () => redo(undoable) },
  ]);
  return (
    <>
      <a className="skip" href="#work">
        To the work
      </a>
      <Strip team={team ?? null} />
      <div id="work" tabIndex={-1}>
        <TroubleCatcher key={path}>
          <Suspense fallback={<p className="vh">Opening</p>}>
            {state === 'ready' && issues.length > 0 && <DoNotFit count={issues.length} />}
            {state === 'ready' && <WhosePages whose={whose} path={path} ours={team.name} />}
            {state === 'missing' && <TeamIsMissing />}
            {state === 'refused' && (
              <Failure
                where="Team"
                what="This team cannot be read by this Icewright."
                lost="It was written by a newer one, or is damaged. Nothing in it was changed."
              />
            )}
          </Suspense>
        </TroubleCatcher>
      </div>
    </>
  );
}

function WhosePages({
  whose,
  path,
  ours,
}: {
  readonly whose: Whose;
  readonly path: string;
  readonly ours: string;
}) {
  if (whose.kind === 'looking') return <p className="vh">Opening</p>;
  if (whose.kind === 'theirs' || whose.kind === 'untold') {
    return <OfAnotherTeam whose={whose} path={path} ours={ours} />;
  }
  return <Pages />;
}

function Pages() {
  return (
    <Switch>
      <Route path="/film">{() => <FilmPlace />}</Route>
      <Route path="/film/:game">{({ game }) => <FilmPlace key={game} gameId={game} />}</Route>
      <Route path="/film/meeting/:id">
        {({ id }) => <MeetingPlace key={id} meetingId={id} view="plan" />}
      </Route>
      <Route path="/film/meeting/:id/speak">
        {({ id }) => <MeetingPlace key={id} meetingId={id} view="speak" />}
      </Route>
      <Route path="/film/meeting/:id/sheet">
        {({ id }) => <MeetingPlace key={id} meetingId={id} view="sheet" />}
      </Route>
      <Route path="/habits">{() => <HabitsPlace />}</Route>
      <Route path="/habits/:id">{({ id }) => <HabitsPlace key={id} habitId={id} />}</Route>
      <Route path="/drills">{() => <DrillsPlace />}</Route>
      <Route path="/drills/:id">{({ id }) => <DrillsPlace key={id} drillId={id} />}</Route>
      <Route path="/practices">{() => <PracticesPlace />}</Route>
      <Route path="/practices/:id">{({ id }) => <PracticesPlace key={id} practiceId={id} />}</Route>
      <Route path="/practices/:id/card">{({ id }) => <PracticesPlace key={id} practiceId={id} card />}</Route>
      <Route path="/ledger">{() => <LedgerPlace />}</Route>
      <Route path="/figures">{() => <FiguresPage />}</Route>
      <Route path="/team">{() => <TeamPage />}</Route>
      <Route path="/">
        <Redirect to="/film" replace />
      </Route>
      <Route>
        <RunningHead back={{ to: '/film', said: 'Film' }} title="No page" titleWords="No page" />
        <Empty says="There is no such page here.">
          <ActLink lead to="/film">
            To the film
          </ActLink>
        </Empty>
      </Route>
    </Switch>
  );
}

function DoNotFit({ count }: { readonly count: number }) {
  return (
    <p className="do-not-fit warm" role="alert">
      {count === 1 ? 'One value' : `${count} values`} in the team no longer {count === 1 ? 'fits' : 'fit'} and{' '}
      {count === 1 ? 'is' : 'are'} left out here; nothing was deleted.
    </p>
  );
}

function TeamIsMissing() {
  return (
    <Failure
      where="Team"
      what="This team is not on this machine, and the server cannot be reached."
      lost="Start the server again; this page then opens by itself."
    >
      <Act onPress={() => location.reload()}>Try again</Act>
    </Failure>
  );
}
