import type { ActId, Cue, DrillPlan, Run, SpotId } from '@icewright/engine';
import { type SheetPoint, sheetPoint } from '../ice/sheet-point.ts';
import { byRank } from './by-rank.ts';
import { cueEventOf } from './cue-event.ts';
import { spotPlacesOf } from './pass-places.ts';

/** One lozenge of a drill: where it fires (full) or is waited for (open), about the place it belongs to. */
export interface CueSign {
  readonly letter: string;
  readonly way: 'fires' | 'waits';
  readonly anchor: SheetPoint;
  readonly cue: Cue;
  /** The waiting act; a firing sign names the first act that waits for it. */
  readonly spot: SpotId;
  readonly act: ActId;
}

/**
 * Letters of the cues: one letter for each thing that is waited for, in the order of the spots. A whistle is a full w
 * and a wait of some seconds a full figure, since nothing on the ice fires them.
 */
export const cueSignsOf = (plan: DrillPlan, run?: Run): readonly CueSign[] => {
  const places = spotPlacesOf(plan);
  const letters = new Map<string, string>();
  const signs: CueSign[] = [];
  for (const [spot, { acts }] of byRank(plan.spots)) {
    for (const [act, { cue }] of byRank(acts)) {
      if (!cue) continue;
      const own = places.get(spot)?.beforeAct.get(act);
      if (!own) continue;
      const of = { cue, spot, act };
      if (cue.on === 'whistle' || cue.on === 'after') {
        if (cue.on === 'after' && cue.seconds === 0) continue;
        const letter = cue.on === 'whistle' ? 'w' : shortSeconds(cue.seconds);
        signs.push({ ...of, letter, way: 'fires', anchor: sheetPoint(own) });
        continue;
      }
      const key = cueKey(cue);
      const known = letters.get(key);
      const letter = known ?? letterAt(letters.size);
      letters.set(key, letter);
      const fires = firingPlace(plan, places, cue, run);
      if (!known && fires) signs.push({ ...of, letter, way: 'fires', anchor: fires });
      signs.push({ ...of, letter, way: 'waits', anchor: sheetPoint(own) });
    }
  }
  return signs;
};

/** What is waited for, as a key that two acts may share. */
export const cueKey = (cue: Cue): string => {
  switch (cue.on) {
    case 'whistle':
      return 'whistle';
    case 'after':
      return `after ${cue.seconds}`;
    case 'receive':
    case 'shot':
    case 'losesPuck':
    case 'caught':
      return `${cue.on} ${cue.spot}`;
    case 'reaches':
      return `${cue.on} ${cue.spot} ${cue.atM.xM} ${cue.atM.yM}`;
    case 'spotCrosses':
      return `${cue.on} ${cue.spot} ${cue.line}`;
    case 'puckCrosses':
      return `${cue.on} ${cue.line}`;
  }
};

const shortSeconds = (seconds: number): string => `${Math.round(seconds * 10) / 10}`;

const letterAt = (index: number): string => 'abcdefghijklmnopqrstuvxyz'[index] ?? `${index + 1}`;

/** Where the cue fires: as it was played, or without a run at the spot that fires it. */
const firingPlace = (
  plan: DrillPlan,
  places: ReturnType<typeof spotPlacesOf>,
  cue: Cue,
  run: Run | undefined,
): SheetPoint | null => {
  if (cue.on === 'reaches') return sheetPoint(cue.atM);
  const played = run && cueEventOf(run, cue);
  if (played) return sheetPoint(played.atM);
  if (!('spot' in cue)) return null;
  const spot = plan.spots[cue.spot];
  if (!spot) return null;
  const wanted = cue.on === 'shot' ? 'shoot' : 'carry';
  const act = byRank(spot.acts).find(([, each]) => each.kind === wanted)?.[0];
  const at = act ? places.get(cue.spot)?.beforeAct.get(act) : undefined;
  return sheetPoint(at ?? spot.atM);
};
