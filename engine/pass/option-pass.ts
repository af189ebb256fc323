import { puckPath } from '../puck/path.ts';
import { contestantOf } from '../skater/contestant.ts';
import { controlAt, type RaceEntry } from '../skater/control-at.ts';
import { RACE_ROWS } from '../skater/race-rows.ts';
import { timeTo } from '../skater/reach.ts';
import { normalBelow } from '../statistics/normal.ts';
import { isNone } from '../units/none.ts';
import { bankCone, bankSpreadOf } from './bank-cone.ts';
import { bankPasses } from './bank-pass.ts';
import { directPass } from './direct-pass.ts';
import { completionOf, laneBand, laneBandOfMargin, laneMargins } from './lane.ts';
import type { OptionScene, OptionSkater, PassOption, WhyTerm } from './option-parts.ts';
import { arrivalSpreadOf, laneOpponentOf, velocityOf } from './option-people.ts';
import type { BankPass, DirectPass, Receiver } from './pass-parts.ts';

/** The best direct pass to this team mate, at the level's typical or hard speed; nothing when there is none. */
export const findDirectOption = (
  scene: OptionScene,
  passer: OptionSkater,
  mate: OptionSkater,
): PassOption | undefined =>
  best(
    speedsOf(passer).flatMap(speedMps => {
      const pass = directPass(scene.puck, scene.puckM, receiverOf(mate), { speedMps });
      return isNone(pass) ? [] : [ratedPass(scene, passer, mate, pass)];
    }),
  );

/**
 * The best bank pass with one bounce to this team mate; with two when one gives none. Passes that meet a corner so flat that
 * they would follow the boards are left out.
 */
export const findBankOption = (
  scene: OptionScene,
  passer: OptionSkater,
  mate: OptionSkater,
): PassOption | undefined => {
  for (const bounceCount of [1, 2] as const) {
    const found = best(
      speedsOf(passer).flatMap(speedMps =>
        bankPasses(scene.boards, scene.puck, scene.puckM, speedMps, receiverOf(mate), { bounceCount })
          .filter(pass => !pass.followsBoards)
          .map(pass => ratedPass(scene, passer, mate, pass)),
      ),
    );
    if (found) return found;
  }
  return undefined;
};

const best = (options: readonly PassOption[]): PassOption | undefined =>
  options.reduce<PassOption | undefined>(
    (kept, option) => (kept && kept.chance >= option.chance ? kept : option),
    undefined,
  );

const speedsOf = (passer: OptionSkater): readonly number[] => [
  passer.model.typicalPassMps,
  passer.model.hardPassMps,
];

/** The blade is taken at the skater's middle: one picture does not tell which way the stick points. */
const receiverOf = (mate: OptionSkater): Receiver => ({
  atM: mate.atM,
  velocityMps: velocityOf(mate),
  bladeOffsetM: { xM: 0, yM: 0 },
});

const ratedPass = (
  scene: OptionScene,
  passer: OptionSkater,
  mate: OptionSkater,
  pass: DirectPass | BankPass,
): PassOption => {
  const { boards, puck, puckM, them } = scene;
  const path = puckPath(boards, puck, puckM, pass.launchRad, pass.launchSpeedMps, {
    maxTimeS: pass.arrivalS,
    rims: false,
  });
  const margins = laneMargins(path, pass.arrivalS, them.map(laneOpponentOf));
  const heldStill = laneBand(
    path,
    pass.arrivalS,
    them.filter(one => one.kind === 'skater'),
    passer.model.laneOpenM,
  );
  const aimSdRad = passer.model.passDirectionSdRad;
  const cone = pass.kind === 'bank' ? bankCone(boards, puck, puckM, pass, bankSpreadOf(aimSdRad)) : undefined;
  const apart = Math.hypot(pass.meetM.xM - puckM.xM, pass.meetM.yM - puckM.yM);
  const atMeetSdM = cone ? cone.atMeetSdM : aimSdRad * apart;
  const aim = atMeetSdM > 0 ? 2 * normalBelow(mate.model.reachM / atMeetSdM) - 1 : 1;
  const laneChance = completionOf(margins, 1);
  const control = receiverControl(scene, mate, pass);
  const why: WhyTerm[] = [
    { term: 'lane', value: laneChance, unit: '' },
    { term: 'aim', value: aim, unit: '' },
    { term: 'control', value: control, unit: '' },
    ...margins
      .slice(0, 3)
      .map(one => ({ term: 'margin', value: one.marginS, unit: 's', id: one.id }) as const),
    { term: 'clearance', value: heldStill.clearanceM, unit: 'm' },
    { term: 'coneAtMeet', value: atMeetSdM, unit: 'm' },
    { term: 'arrivalSpeed', value: pass.arrivalSpeedMps, unit: 'm/s' },
  ];
  return {
    kind: pass.kind,
    toId: mate.id,
    pass,
    margins,
    lane: {
      band: laneBandOfMargin(margins[0]?.marginS ?? Number.POSITIVE_INFINITY),
      heldStill: heldStill.band,
      clearanceM: heldStill.clearanceM,
    },
    marginS: margins[0]?.marginS ?? Number.POSITIVE_INFINITY,
    chance: laneChance * aim * control,
    why,
    ...(cone ? { cone } : {}),
  };
};

/**
 * Chance that the receiver, there when the puck comes, controls it before an opponent does. The opponents' arrivals count from
 * the meeting on: that none of them was in the lane before is the lane's factor.
 */
const receiverControl = (scene: OptionScene, mate: OptionSkater, pass: DirectPass | BankPass): number => {
  const still = { atM: mate.atM, velocityMps: velocityOf(mate) };
  const entries: RaceEntry[] = [
    {
      side: 'us',
      arrivalS: 0,
      spreadS: mate.model.spreadS,
      controlRatePerS: contestantOf('us', still, mate.model, mate.kind).controlRatePerS,
    },
  ];
  for (const one of scene.them) {
    const state = { atM: one.atM, velocityMps: velocityOf(one) };
    const arrival = timeTo(state, one.model, pass.meetM);
    if (isNone(arrival)) continue;
    entries.push({
      side: 'them',
      arrivalS: Math.max(arrival, pass.arrivalS),
      spreadS: arrivalSpreadOf(one),
      controlRatePerS: contestantOf('them', state, one.model, one.kind).controlRatePerS,
    });
  }
  const { us, them } = controlAt(entries, pass.arrivalS, RACE_ROWS.horizonS.value);
  return us / (us + them);
};
