import { isInZone, type Outcome, type Run, rinkOf, type SpotId } from '@icewright/engine';
import { apartM, eventsOf, placeAt, puckAt, puckOverS, speedAt, wonByS } from './in-run.data.ts';
import { team } from './run-of-demo.data.ts';
import { wantsCaught, wantsLevel, wantsPass } from './wants.ts';

/** What a drill is for: in words, as it is counted over many reps, and as the middle run has to show it. */
export interface IsFor {
  readonly says: string;
  readonly want: Outcome;
  readonly shows: (run: Run) => boolean;
}

const spot = (role: string): SpotId => `spot-${role.toLowerCase()}` as SpotId;
const held = (habit: string): Outcome => ({
  kind: 'standardHeld',
  standard: Object.entries(team.habits).find(([id]) => id === habit)![1].standard,
});

const NET = { xM: -27.13, yM: 0 };
const receives = (run: Run, role: string) => eventsOf(run, 'receive').find(one => one.spot === spot(role));

/** Nearer to our net than the puck, give or take a metre, when the puck is over our blue line. */
const isGoalSide = (run: Run, role: string): boolean => {
  const timeS = puckOverS(run, 'blueLineMinusX');
  return apartM(placeAt(run, role, timeS), NET) <= apartM(puckAt(run, timeS), NET) + 1;
};
const isOnHerAtOurLine = (run: Run, role: string): boolean => {
  const timeS = puckOverS(run, 'blueLineMinusX');
  return apartM(placeAt(run, role, timeS), placeAt(run, 'X1', timeS)) <= 3;
};
const isLevelAtRed = (run: Run, role: string): boolean => {
  const timeS = puckOverS(run, 'centreLine');
  return placeAt(run, role, timeS).xM >= puckAt(run, timeS).xM - 2;
};
/** In the house before our net and slower than an easy glide when X1 shoots. */
const areStopping = (run: Run, roles: readonly string[]): boolean => {
  const { timeS } = eventsOf(run, 'shot')[0]!;
  return roles.every(
    role =>
      isInZone(rinkOf({ preset: '200x85ft' }), 'house', placeAt(run, role, timeS), 'minusX') &&
      speedAt(run, role, timeS) < EASY_MPS,
  );
};
/** Braking, and nearly there: an easy glide back to a line is 3 m/s. */
const EASY_MPS = 3;

export const ARE_FOR: Readonly<Record<string, IsFor>> = {
  'drill-middle-first': {
    says: 'F3 is home inside, goal side of the puck, when it is over our line',
    want: held('firstBack'),
    shows: run => isGoalSide(run, 'F3'),
  },
  'drill-three-on-the-heels': {
    says: 'two of the three are on the carrier within a stick of the red line',
    want: wantsCaught('F1', 'centreLine'),
    shows: run => eventsOf(run, 'caught').filter(one => Math.abs(one.atM.xM) < 1.5).length >= 2,
  },
  'drill-gap-ladder': {
    says: 'D1 is within three metres of X1 at our line',
    want: held('gap'),
    shows: run => isOnHerAtOurLine(run, 'D1'),
  },
  'drill-off-the-boards': {
    says: 'the pass comes off the boards to a wing who is on her way',
    want: wantsPass('D1', 1),
    shows: run => eventsOf(run, 'bounce')[0]!.timeS < receives(run, 'F1')!.timeS,
  },
  'drill-start-with-the-pass': {
    says: 'D2 is level with the puck at the red line',
    want: wantsLevel('D2', 'centreLine', 2),
    shows: run => isLevelAtRed(run, 'D2'),
  },
  'drill-second-puck': {
    says: 'D1 and F1 are stopping in the house when the shot goes',
    want: held('house'),
    shows: run => areStopping(run, ['D1', 'F1']),
  },
  'drill-four-corners': {
    says: 'F1 has the pass before the red line',
    want: wantsPass('F2', 1),
    shows: run => receives(run, 'F1')!.atM.xM < 0,
  },
  'drill-five-together': {
    says: 'nobody is over twenty metres from the puck when it is over the red line',
    want: held('five'),
    shows: run => {
      const timeS = puckOverS(run, 'centreLine');
      return ['D1', 'D2', 'F1', 'F2', 'F3'].every(
        role => apartM(placeAt(run, role, timeS), puckAt(run, timeS)) < 20,
      );
    },
  },
  'drill-lose-it-win-it': {
    says: 'F1 has turned and is on the puck she lost before our blue line',
    want: wantsCaught('F1', 'blueLineMinusX'),
    shows: run => wonByS(run, 'F1') < puckOverS(run, 'centreLine') + 1,
  },
  'drill-lose-it-win-it-half-ice': {
    says: 'F1 is on the puck she lost before the blue line of that half',
    want: wantsCaught('F1', 'blueLineMinusX'),
    shows: run => wonByS(run, 'F1') < Number.POSITIVE_INFINITY,
  },
  'drill-off-the-wall': {
    says: 'F1 is on X1 before the red line, and F2 goes only then',
    want: wantsCaught('F1', 'centreLine'),
    shows: run => {
      const by = eventsOf(run, 'caught').find(one => one.by === spot('F1'))!;
      const goes = eventsOf(run, 'actStarts').find(one => one.spot === spot('F2'))!;
      return by.atM.xM > 0 && goes.timeS > by.timeS && receives(run, 'X1')!.from === spot('Co');
    },
  },
  'drill-shot-then-home': {
    says: 'F1 is home, goal side of the puck, when it is over our line',
    want: held('firstBack'),
    shows: run => isGoalSide(run, 'F1'),
  },
  'drill-shot-then-home-against-two': {
    says: 'F1 is home inside while D1 keeps to the carrier',
    want: held('firstBack'),
    shows: run => isGoalSide(run, 'F1') && isOnHerAtOurLine(run, 'D1'),
  },
  'drill-up-and-back': {
    says: 'D1 has been over the red line, and is within three metres at ours',
    want: held('gap'),
    shows: run =>
      eventsOf(run, 'spotCrosses').some(one => one.spot === spot('D1') && one.line === 'centreLine') &&
      isOnHerAtOurLine(run, 'D1'),
  },
  'drill-over-the-stick': {
    says: 'the puck comes to F1 over a stick that stands in the lane',
    want: wantsPass('D1', 1),
    shows: run => receives(run, 'F1')?.from === spot('D1'),
  },
  'drill-past-the-stick': {
    says: 'the puck comes to F2 past a stick',
    want: wantsPass('F1', 1),
    shows: run => receives(run, 'F2')?.from === spot('F1'),
  },
  'drill-drop-and-follow': {
    says: 'F2 is not more than five and a half metres behind when the puck is over their line',
    want: wantsLevel('F2', 'blueLinePlusX', 5.5),
    shows: run => {
      const timeS = puckOverS(run, 'blueLinePlusX');
      return placeAt(run, 'F2', timeS).xM > puckAt(run, timeS).xM - 5.5 && receives(run, 'F2') !== undefined;
    },
  },
  'drill-back-out-along': {
    says: 'D1 is level with her own pass at the red line',
    want: wantsLevel('D1', 'centreLine', 2),
    shows: run => isLevelAtRed(run, 'D1'),
  },
  'drill-round-and-stop': {
    says: 'D1 and F1 are stopping in the house at the shot, and D1 has the second puck out',
    want: held('house'),
    shows: run => areStopping(run, ['D1', 'F1']) && receives(run, 'Co')?.from === spot('D1'),
  },
  'drill-win-it-small-nets': {
    says: 'F1 wins the puck before X1 is at the dots with it',
    want: wantsCaught('F1', 'goalLineMinusX'),
    shows: run => wonByS(run, 'F1') < run.durationS && placeAt(run, 'X1', wonByS(run, 'F1')).xM > -19,
  },
};
