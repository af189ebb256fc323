import { carryOption } from './option-carry.ts';
import type {
  CarryOption,
  NoOption,
  OptionScene,
  OptionSkater,
  PassOption,
  SceneOptions,
} from './option-parts.ts';
import { findBankOption, findDirectOption } from './option-pass.ts';

/**
 * What the carrier can do: for every team mate the best direct and the best bank pass, and skating it, ranked by the chance
 * that it comes off. Chance of a pass = lane (nobody cuts it off) × aim (the fan of the pass against the receiver's
 * reach) × control (receiver against opponents at the meeting); the constants are untuned estimates, so the ranking and
 * the margins count more than the figure. Velocities that are not given count as 0 with a wider spread and are named in
 * `unknownVelocity`. Receivers offside are refused when the blue line is given. Throws when the carrier is not one of us.
 */
export const passOptions = (scene: OptionScene): SceneOptions => {
  const carrier = scene.us.find(one => one.id === scene.carrierId);
  if (!carrier) throw new Error(`no carrier "${scene.carrierId}" among us`);
  const options: (PassOption | CarryOption)[] = [carryOption(scene, carrier)];
  const none: NoOption[] = [];
  for (const mate of scene.us) {
    if (mate === carrier) continue;
    if (isOffside(scene, mate)) {
      none.push(
        { toId: mate.id, kind: 'direct', reason: 'offside' },
        { toId: mate.id, kind: 'bank', reason: 'offside' },
      );
      continue;
    }
    const direct = findDirectOption(scene, carrier, mate);
    if (direct) options.push(direct);
    else none.push({ toId: mate.id, kind: 'direct', reason: 'noDirectPass' });
    const bank = findBankOption(scene, carrier, mate);
    if (bank) options.push(bank);
    else none.push({ toId: mate.id, kind: 'bank', reason: 'noBankPass' });
  }
  return {
    options: options.sort((one, other) => other.chance - one.chance),
    none,
    unknownVelocity: [...scene.us, ...scene.them].filter(one => !one.velocityMps).map(one => one.id),
  };
};

/** In the attacking zone before the puck: any pass to him is offside. Judged at the skater's middle. */
const isOffside = (scene: OptionScene, mate: OptionSkater): boolean => {
  if (scene.blueLineXM === undefined) return false;
  const sign = scene.attacks === 'plusX' ? 1 : -1;
  return sign * mate.atM.xM > scene.blueLineXM && sign * scene.puckM.xM < scene.blueLineXM;
};
