import type { Playable } from '../drill/playable.ts';
import { lineAtOtherEnd, weAttack } from '../drill/playing-end.ts';
import type { FrozenScene } from '../film/frozen-scene.ts';
import { judgeStandard } from '../habit/judge-standard.ts';
import type { Standard, Trigger } from '../habit/standard.ts';
import type { LineId } from '../rink/lines.ts';
import type { Run } from '../run/run-result.ts';
import type { Side } from '../units/ends.ts';
import type { SpotId } from '../units/ids.ts';
import type { IcePoint } from '../units/points.ts';

/** Whether the standard held when its moment came in the rep, and where who decided it stood. `none`: the moment did not come. */
export type StandardHeld =
  | { readonly kind: 'held' | 'notHeld'; readonly timeS: number; readonly atM: IcePoint }
  | { readonly kind: 'none' };

/**
 * Judges a habit's standard on a rep as it is judged on film: the picture is frozen at the standard's trigger, with everybody's place
 * known exactly. Metres, seconds after the whistle; lines and nets are ours or theirs by the end that we attack in this drill (`weAttack`). Any run of that playable. Coaches are nobody. `none` when the
 * trigger does not come in the rep, or the standard speaks of somebody who is not in the drill. Source: `judgeStandard`.
 */
export const standardHeldIn = (standard: Standard, run: Run, playable: Playable): StandardHeld => {
  const timeS = triggerTimeOf(standard.when, run, playable);
  if (timeS === undefined) return { kind: 'none' };
  const sample = Math.min(run.sampleCount - 1, Math.round(timeS * run.stepHz));
  const scene = sceneAt(run, playable, sample);
  const judged = judgeStandard(scene, standard);
  if (judged.answer === 'cannotTell') return { kind: 'none' };
  const decided = scene.skaters.find(skater => skater.id === judged.who[0]) ?? scene.skaters[0];
  if (decided === undefined) return { kind: 'none' };
  return { kind: judged.answer === 'yes' ? 'held' : 'notHeld', timeS, atM: decided.atM };
};

/** When the picture is to be frozen, seconds after the whistle; undefined when that moment does not come. */
const triggerTimeOf = (when: Trigger, run: Run, playable: Playable): number | undefined => {
  const sideOf = new Map<SpotId, Side>(playable.spots.map(spot => [spot.id, spot.side]));
  switch (when.at) {
    case 'puckCrosses':
      return run.events.find(
        event => event.kind === 'puckCrosses' && event.line === lineOfTeam(when.line, playable),
      )?.timeS;
    case 'passIsMade':
      return run.events.find(event => event.kind === 'pass' && sideOf.get(event.spot) === 'us')?.timeS;
    case 'theyShoot':
      return run.events.find(event => event.kind === 'shot' && sideOf.get(event.spot) === 'them')?.timeS;
    case 'weLoseThePuck':
      return changeOfSideS(run, sideOf, 'them');
    case 'weWinThePuck':
      return changeOfSideS(run, sideOf, 'us');
  }
};

/** Standards name lines as seen by a team that attacks plusX. */
const lineOfTeam = (line: LineId, { spots }: Playable): LineId =>
  weAttack(spots) === 'plusX' ? line : lineAtOtherEnd(line);

/** When a puck that the other side had last is first on a stick of this one. */
const changeOfSideS = (run: Run, sideOf: ReadonlyMap<SpotId, Side>, to: Side): number | undefined => {
  const ownerSides = run.tracks.map(track => sideOf.get(track.spot));
  let firstSample = Number.POSITIVE_INFINITY;
  for (const puck of run.pucks) {
    let last: Side | undefined;
    for (let sample = 0; sample < run.sampleCount && sample < firstSample; sample++) {
      const side = ownerSides[puck.owner[sample]!];
      if (side === undefined || side === last) continue;
      if (side === to && last !== undefined) firstSample = sample;
      last = side;
    }
  }
  return Number.isFinite(firstSample) ? firstSample / run.stepHz : undefined;
};

const EXACTLY = { xxM2: 0, xyM2: 0, yyM2: 0 };

/** One sample of a rep as a frozen picture in which everybody is seen and nothing is uncertain. */
const sceneAt = (run: Run, playable: Playable, sample: number): FrozenScene => {
  const spots = new Map(playable.spots.map(spot => [spot.id, spot]));
  const skaters = run.tracks.flatMap(track => {
    const spot = spots.get(track.spot);
    return spot === undefined || spot.kind === 'coach'
      ? []
      : [
          {
            id: spot.id as string,
            side: spot.side,
            kind: spot.kind,
            role: spot.role,
            atM: { xM: track.xM[sample]!, yM: track.yM[sample]! },
            covM2: EXACTLY,
          },
        ];
  });
  const puck =
    run.pucks.find(each => each.owner[sample]! >= 0) ?? run.pucks.find(each => each.owner[sample] === -1);
  const carrier = puck && run.tracks[puck.owner[sample]!]?.spot;
  const places = skaters.length + (puck ? 1 : 0);
  return {
    rink: playable.rink,
    attacks: weAttack(playable.spots),
    skaters,
    ...(puck && {
      puck: {
        atM: { xM: puck.xM[sample]!, yM: puck.yM[sample]! },
        covM2: EXACTLY,
        ...(carrier !== undefined && { carrierId: carrier as string }),
      },
    }),
    jointM2: new Array<number>((2 * places) ** 2).fill(0),
    isEveryonePlaced: true,
  };
};
