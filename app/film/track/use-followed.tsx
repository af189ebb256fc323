import type { Game, Team } from '@icewright/book';
import {
  type FilmPoint,
  gapOverTime,
  type Id,
  type PinFit,
  type Rink,
  speedOverTime,
} from '@icewright/engine';
import { type ReactNode, useMemo, useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { clockText } from '../film-clock.ts';
import { frameAtTime, timeOfFrame } from '../frame-index.ts';
import { namesApart, personWords } from '../people-words.ts';
import type { Player } from '../player.ts';
import { usePlayerPart } from '../use-player.ts';
import { DrillOfStretch } from './drill-of-stretch.tsx';
import { TimeChart } from './time-chart.tsx';
import { type DrawnTrack, TrackLayer } from './track-layer.tsx';
import { TrackMap } from './track-map.tsx';
import type { Tied } from './track-messages.ts';
import { trackOfPlaced } from './track-of-placed.ts';
import { TrackReadings } from './track-readings.tsx';
import { beginTracks, handAt, looksOf, removeHand, removeTrack, setHand } from './track-writing.ts';
import { TracksSection } from './tracks-section.tsx';
import { useFollowingSkaters } from './use-following-skaters.ts';
import './track.css';

/** What the film room needs of followed skaters. */
export interface Followed {
  /** Over the picture of a frame that is not frozen. */
  readonly layer: (filmPerScreen: number) => ReactNode;
  /** Under the picture: speed and gap over time. */
  readonly charts: ReactNode;
  /** Beside it: who, the ice, the figures. */
  readonly section: ReactNode;
  /** In a freeze: begin to follow those placed. */
  readonly begin: (freezeId: Id<'freeze'>, chosen: string | undefined) => ReactNode;
}

export const useFollowed = ({
  gameId,
  game,
  team,
  film,
  player,
  rink,
  tieds,
  fitAt,
}: {
  readonly gameId: string;
  readonly game: Game;
  readonly team: Team;
  readonly film: string;
  readonly player: Player;
  readonly rink: Rink;
  /** The stretches that are tied to the ice, and the tie of each of their frames. */
  readonly tieds: readonly Tied[];
  readonly fitAt: (frameIndex: number) => PinFit | undefined;
}): Followed => {
  const [chosenId, setChosen] = useState<string>();
  const [setting, setSetting] = useState<string>();
  const [otherId, setOther] = useState<string>();
  const following = useFollowingSkaters(gameId, game, film, player.film, tieds, team.level);
  // While it plays nothing is drawn anew: a figure that changes 60 times a second cannot be read.
  const frameIndex = usePlayerPart(player, state => (state.playing ? -1 : state.frameIndex));
  const tracks = useMemo(() => drawnTracks(game, film, team), [game, film, team]);
  const fit = frameIndex < 0 ? undefined : fitAt(frameIndex);
  const timeS = frameIndex < 0 ? Number.NaN : timeOfFrame(player.film.index, frameIndex);
  const chosen = tracks.find(({ id }) => id === chosenId) ?? tracks[0];
  const other = tracks.find(({ id }) => id === otherId && id !== chosen?.id);
  const show = (atS: number) => void player.jump(frameAtTime(player.film.index, atS));
  const set = (id: string, feet: FilmPoint, by: 'hand' | 'keys') => {
    if (frameIndex < 0) return;
    setHand(gameId, game, id as Id<'track'>, { frameIndex, filmTimeS: timeS, feet }, by);
    if (by === 'hand') setSetting(undefined);
  };
  const letGo = (id: string) => {
    const track = game.tracks[id as Id<'track'>];
    const hand = track && handAt(track, frameIndex);
    if (!hand) return;
    removeHand(gameId, id, hand);
  };
  const cannotFollow = tieds.length === 0 ? 'carry the pins of a freeze through the pan first' : undefined;
  const notHere = cannotFollow ?? (fit ? undefined : 'go to a frame that the pins are carried to');

  const layer = (filmPerScreen: number) =>
    fit && tracks.length > 0 ? (
      <TrackLayer
        tracks={tracks}
        fit={fit}
        frameIndex={frameIndex}
        timeS={timeS}
        picture={player.film}
        chosen={chosen?.id}
        setting={setting}
        filmPerScreen={filmPerScreen}
        onChoose={setChosen}
        onSet={set}
      />
    ) : null;

  const looks = chosen?.looks ?? [];
  const [first, last] = [looks[0], looks[looks.length - 1]];
  const span = first &&
    last && {
      fromS: first.timeS,
      toS: last.timeS,
      nowS: timeS,
      onShow: show,
      handsS: Object.values(chosen!.track.hands).map(hand => hand.filmTimeS),
    };
  const charts = chosen && span && (
    <div className="time-charts" data-testid="time-charts">
      <TimeChart
        title={`Speed of ${chosen.name}`}
        unit="m/s"
        stepUp={2}
        series={speedOverTime(looks)}
        {...span}
      />
      {tracks.length > 1 && (
        <p className="pins-acts">
          <label>
            <span className="q2">Gap of {chosen.name} to</span>{' '}
            <select value={other?.id ?? ''} onChange={event => setOther(event.target.value || undefined)}>
              <option value="">nobody</option>
              {tracks
                .filter(({ id }) => id !== chosen.id)
                .map(({ id, name, track }) => (
                  <option key={id} value={id}>
                    {name}, {track.side}
                  </option>
                ))}
            </select>
          </label>
        </p>
      )}
      {other && (
        <TimeChart
          title={`Gap of ${chosen.name} to ${other.name}`}
          unit="m"
          stepUp={5}
          series={gapOverTime(looks, other.looks)}
          {...span}
          handsS={[]}
        />
      )}
    </div>
  );

  const section = tracks.length > 0 && (
    <section className="sec followed" data-testid="followed">
      <TracksSection
        tracks={tracks}
        freezes={game.freezes}
        following={following}
        lengths={team.lengths}
        chosen={chosen?.id}
        setting={setting}
        frameIndex={frameIndex}
        cannotFollow={notHere}
        onChoose={setChosen}
        onSetting={setSetting}
        onDropHand={letGo}
        onTakeOut={id => removeTrack(gameId, id)}
      />
      <TrackMap tracks={tracks} rink={rink} timeS={timeS} chosen={chosen?.id} />
      {chosen && (
        <TrackReadings
          tracks={tracks}
          chosen={chosen}
          other={other}
          game={game}
          rink={rink}
          lengths={team.lengths}
        />
      )}
      <p className="pins-acts">
        <DrillOfStretch gameId={gameId} game={game} team={team} rink={rink} tracks={tracks} />
      </p>
    </section>
  );

  const begin = (freezeId: Id<'freeze'>, chosenPlaced: string | undefined) => {
    const freeze = game.freezes[freezeId];
    if (!freeze) return null;
    const notYet =
      cannotFollow ?? (fitAt(freeze.frameIndex) ? undefined : 'the pins are not carried to this frame');
    const fresh = Object.entries(freeze.skaters).filter(
      ([, placed]) => trackOfPlaced(game.tracks, freeze, placed) === undefined,
    );
    const one = fresh.find(([id]) => id === chosenPlaced);
    const start = (placed: typeof fresh) => {
      const ids = placed.map(([id]) => id);
      setChosen(beginTracks(gameId, game, freezeId, ids, player.film.index.endS)[0]);
    };
    return (
      <>
        {one && (
          <Act notNow={notYet} onPress={() => start([one])}>
            Follow {personWords(one[1], team)} through the film
          </Act>
        )}
        {fresh.length > 1 && (
          <Act notNow={notYet} onPress={() => start(fresh)}>
            Follow all {fresh.length}
          </Act>
        )}
      </>
    );
  };
  return { layer, charts, section, begin };
};

const drawnTracks = (game: Game, film: string, team: Team): DrawnTrack[] => {
  const all = Object.entries(game.tracks)
    .filter(([, track]) => track.film === film)
    .sort(([, a], [, b]) => a.madeAt.localeCompare(b.madeAt));
  // Each freeze counts its own from one on.
  const names = namesApart(
    all,
    ([, track]) => personWords(track, team),
    ([, { hands }]) => clockText(Math.min(...Object.values(hands).map(hand => hand.filmTimeS)), 1),
  );
  return all.map(([id, track], i) => ({ id, track, name: names[i]!, looks: looksOf(track) }));
};
