import type { Drill } from '@icewright/book';
import {
  type ActId,
  type Cue,
  type IcePoint,
  LINE_IDS,
  type Rink,
  type Run,
  type SpotId,
} from '@icewright/engine';
import { cueSaid } from '../act-words.ts';
import { actsOf, endOfRoutes, isRoute, spotsOf } from '../route-writes.ts';

export interface CueDropped {
  /** Null where nothing can fire the act. */
  readonly cue: Cue | null;
  readonly said: string;
  /** Where it fires, for the line that is drawn there. */
  readonly atM: IcePoint;
}

/** A lozenge this near to a spot means the spot; so near to a line, the line. Ice metres, our choice: a disc and a finger. */
const AT_SPOT_M = 1.4;
const AT_LINE_M = 0.6;
/** How near counts as there: a stick's reach. */
const THERE_M = 1.5;

/** What a lozenge means where it is let go: a spot, a line that the puck crosses, or a place that somebody comes to. */
export const cueDropped = (of: {
  readonly drill: Drill;
  readonly rink: Rink;
  readonly run: Run | null;
  readonly spotId: SpotId;
  readonly actId: ActId;
  readonly atM: IcePoint;
}): CueDropped => {
  const { drill, rink, atM } = of;
  const spot = nearestSpot(drill, atM);
  if (spot !== null) {
    const cue = cuesOfSpot(drill, spot)[0] ?? null;
    const { role, atM: spotM } = drill.spots[spot]!;
    return made(drill, cue, spotM, `${role} does nothing that could start it`);
  }
  const line = LINE_IDS.find(id => Math.abs(rink.lines[id].centreXM - atM.xM) <= AT_LINE_M);
  if (line !== undefined)
    return made(drill, { on: 'puckCrosses', line }, { xM: rink.lines[line].centreXM, yM: atM.yM }, '');
  const passer = nearestPasser(of);
  const cue: Cue | null = passer === null ? null : { on: 'reaches', spot: passer, atM, withinM: THERE_M };
  return made(drill, cue, atM, 'nobody comes here who could start it');
};

/** The cues that a spot can give as the drill stands, the likeliest first: what it does with the puck, else where its route ends. */
export const cuesOfSpot = (drill: Drill, spotId: SpotId): readonly Cue[] => {
  const spot = drill.spots[spotId];
  if (spot === undefined) return [];
  const acts = actsOf(spot).map(([, act]) => act);
  const others = spotsOf(drill).flatMap(([id, each]) =>
    id === spotId ? [] : actsOf(each).map(([, act]) => act),
  );
  const receives = others.some(act => act.kind === 'pass' && act.toSpot === spotId);
  const chased = others.some(act => (act.kind === 'chase' || act.kind === 'steal') && act.whom === spotId);
  const cues: Cue[] = [];
  if (receives) cues.push({ on: 'receive', spot: spotId });
  if (acts.some(act => act.kind === 'shoot')) cues.push({ on: 'shot', spot: spotId });
  if (acts.some(isRoute))
    cues.push({ on: 'reaches', spot: spotId, atM: endOfRoutes(spot), withinM: THERE_M });
  if (chased) cues.push({ on: 'caught', spot: spotId }, { on: 'losesPuck', spot: spotId });
  return cues;
};

const made = (drill: Drill, cue: Cue | null, atM: IcePoint, whyNot: string): CueDropped => ({
  cue,
  said: cue === null ? whyNot : cueSaid(drill, cue),
  atM,
});

const nearestSpot = (drill: Drill, atM: IcePoint): SpotId | null => {
  const near = spotsOf(drill)
    .map(([id, spot]) => ({ id, awayM: awayM(spot.atM, atM) }))
    .sort((a, b) => a.awayM - b.awayM)[0];
  return near !== undefined && near.awayM <= AT_SPOT_M ? near.id : null;
};

/** Who comes nearest to the place: as played, else by the points of the routes. Who waits cannot start himself. */
const nearestPasser = ({ drill, run, spotId, atM }: Parameters<typeof cueDropped>[0]): SpotId | null => {
  const near = spotsOf(drill)
    .filter(([id, spot]) => id !== spotId && actsOf(spot).length > 0)
    .map(([id, spot]) => {
      const track = run?.tracks.find(each => each.spot === id);
      const points = actsOf(spot).flatMap(([, act]) => (isRoute(act) ? act.throughM : []));
      let leastM = Math.min(...[spot.atM, ...points].map(point => awayM(point, atM)));
      for (let sample = 0; track !== undefined && sample < track.xM.length; sample += 6)
        leastM = Math.min(leastM, Math.hypot(track.xM[sample]! - atM.xM, track.yM[sample]! - atM.yM));
      return { id, leastM };
    })
    .sort((a, b) => a.leastM - b.leastM)[0];
  return near?.id ?? null;
};

const awayM = (a: IcePoint, b: IcePoint): number => Math.hypot(a.xM - b.xM, a.yM - b.yM);
