import type { Drill } from '@icewright/book';
import { type IcePoint, type Rink, type Run, type SpotId, weAttack } from '@icewright/engine';
import { cornerMoved, cornerOf } from '../games/game-writes.ts';
import type { Grip } from '../grip.ts';
import { onIce } from '../on-ice.ts';
import { endOfRoutes, isRoute, routePulled, throughAdded, throughMoved } from '../route-writes.ts';
import { afterWrites, type Write } from '../write.ts';
import { cueDropped } from './cue-dropped.ts';
import { moved } from './laid-elsewhere.ts';
import { type Refusal, refusalOf } from './refusal.ts';
import { type Selection, spotsPicked } from './selection.ts';
import { type Snap, type SnapTo, snapOf } from './snap.ts';
import { othersSnaps } from './snap-to-others.ts';
import { rinkSnaps } from './snap-to-rink.ts';

/** What a hand holds just now: the drill as it would be left, and what is drawn beside the hand to say so. */
export interface Held {
  readonly writes: readonly Write[];
  readonly shown: Shown;
}

export interface Shown {
  /** Where the thing in the hand is. */
  readonly atM: IcePoint;
  /** Where what is held stood before. */
  readonly ghostsM: readonly IcePoint[];
  readonly snap: Snap | null;
  /** Why it cannot be set down here; it goes back when let go. */
  readonly refusal: Refusal | null;
  /** What the hand would do, beside it. */
  readonly words: string;
  /** A line from here to the hand: a cue on its way. */
  readonly lineFromM?: IcePoint;
  /** Where the finger is, when the thing stands above it so as to be seen. */
  readonly fingerM?: IcePoint;
}

export interface Holding {
  readonly drill: Drill;
  readonly rink: Rink;
  readonly run: Run | null;
  readonly grip: Grip;
  /** What the hand is drawn to, worked out once when it takes hold. */
  readonly snaps: readonly SnapTo[];
  /** How near is near enough, ice metres; 0 when nothing shall draw it. */
  readonly catchM: number;
  readonly hasPuckAtEnd: boolean;
}

/** What draws the hand while it has this grip. */
export const snapsFor = (drill: Drill, rink: Rink, grip: Grip): readonly SnapTo[] => {
  if (grip.kind === 'cue' || grip.kind === 'corner') return [];
  const own = grip.kind === 'things' ? null : grip.spotId;
  const held = grip.kind === 'things' ? spotsPicked(grip.selection) : new Set<SpotId>();
  return [...othersSnaps(drill, held, own), ...rinkSnaps(rink, weAttack(Object.values(drill.spots)))];
};

/** The drill with the hand at `toM`, ice metres. */
export const heldAt = (holding: Holding, toM: IcePoint): Held => {
  const { drill, rink, grip, catchM } = holding;
  if (grip.kind === 'cue') return cueHeld(holding, grip, toM);
  if (grip.kind === 'corner') return cornerHeld(holding, grip, toM);
  const inside = onIce(rink, toM);
  const snap = catchM > 0 ? snapOf(inside, holding.snaps, catchM) : null;
  const atM = snap === null ? inside : onIce(rink, rounded(snap.atM));
  const writes = writesAt(holding, atM);
  const refusal =
    grip.kind === 'things'
      ? refusalOf(afterWrites(drill, writes), rink, spotsPicked(grip.selection), toM)
      : null;
  return {
    writes,
    shown: {
      atM,
      ghostsM: ghostsOf(drill, grip),
      snap: refusal === null ? snap : null,
      refusal,
      words: refusal?.said ?? snap?.to.map(to => to.words).join(', ') ?? '',
    },
  };
};

const writesAt = ({ drill, grip, hasPuckAtEnd }: Holding, toM: IcePoint): Write[] => {
  switch (grip.kind) {
    case 'things':
      return moved(drill, grip.selection, { xM: toM.xM - grip.fromM.xM, yM: toM.yM - grip.fromM.yM });
    case 'through':
      return throughMoved(drill, grip.spotId, grip.actId, grip.index, toM);
    case 'bend':
      return throughAdded(drill, grip.spotId, grip.actId, grip.index, toM);
    case 'pull':
      return routePulled(drill, grip.spotId, toM, grip.newAct, hasPuckAtEnd);
    case 'cue':
    case 'corner':
      return [];
  }
};

/** Corners go to the edge of the sheet, where no skater stands, so they are not kept from the boards. */
const cornerHeld = (
  { drill, rink }: Holding,
  grip: Extract<Grip, { kind: 'corner' }>,
  toM: IcePoint,
): Held => {
  const writes = cornerMoved(drill, grip.game, grip.corner, toM, rink);
  const game = afterWrites(drill, writes).games[grip.game];
  const atM = game === undefined ? toM : cornerOf(game, grip.corner);
  return { writes, shown: { atM, ghostsM: [], snap: null, refusal: null, words: '' } };
};

const cueHeld = (holding: Holding, grip: Extract<Grip, { kind: 'cue' }>, toM: IcePoint): Held => {
  const { drill, rink, run } = holding;
  const dropped = cueDropped({ drill, rink, run, spotId: grip.spotId, actId: grip.actId, atM: toM });
  const path = ['spots', grip.spotId, 'acts', grip.actId, 'cue'];
  const spot = drill.spots[grip.spotId];
  return {
    writes: dropped.cue === null ? [] : [{ path, value: dropped.cue }],
    shown: {
      atM: dropped.atM,
      ghostsM: [],
      snap: null,
      refusal: dropped.cue === null ? { said: dropped.said, atM: [] } : null,
      words: dropped.said,
      ...(spot === undefined ? {} : { lineFromM: placeBefore(drill, grip) ?? spot.atM }),
    },
  };
};

/** Where a skater is when an act begins, by the routes as they are drawn. */
export const placeBefore = (
  drill: Drill,
  { spotId, actId }: { readonly spotId: SpotId; readonly actId: string },
): IcePoint | null => {
  const spot = drill.spots[spotId];
  const act = spot?.acts[actId as never];
  if (spot === undefined || act === undefined) return null;
  const acts = Object.fromEntries(Object.entries(spot.acts).filter(([, each]) => each.rank < act.rank));
  return endOfRoutes({ ...spot, acts: acts as typeof spot.acts });
};

const ghostsOf = (drill: Drill, grip: Exclude<Grip, { kind: 'cue' }>): readonly IcePoint[] => {
  if (grip.kind === 'things') return placesOf(drill, grip.selection);
  if (grip.kind !== 'through') return [];
  const act = drill.spots[grip.spotId]?.acts[grip.actId];
  const atM = act !== undefined && isRoute(act) ? act.throughM[grip.index] : undefined;
  return atM === undefined ? [] : [atM];
};

const placesOf = (drill: Drill, selection: Selection): IcePoint[] =>
  selection.flatMap(one => {
    if (one.kind === 'spot') return drill.spots[one.spot]?.atM ?? [];
    if (one.kind === 'puck') return drill.pucks[one.puck]?.atM ?? [];
    return one.kind === 'gear' ? (drill.gear[one.gear]?.atM ?? []) : [];
  });

const rounded = ({ xM, yM }: IcePoint): IcePoint => ({
  xM: Math.round(xM * 100) / 100,
  yM: Math.round(yM * 100) / 100,
});
