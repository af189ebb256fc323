import type { LineId } from '../rink/lines.ts';

/** Who a standard speaks of, named by what they are in the frozen picture. */
export type Who =
  | 'firstForwardBack'
  | 'everyForward'
  | 'puckCarrier'
  | 'nearestDefender'
  | 'everyDefender'
  | 'anyOfUs'
  | 'allOfUs';

/** `lastOfThem` is their skater nearest to the net they defend; `carrier` may be of either side. */
export type Whom = 'puck' | 'carrier' | 'nearestOfThem' | 'lastOfThem' | 'ourNet';

/** `house` is the one before our own net; `middleLane` runs the length of the sheet between the dot lines. */
export type Zone = 'house' | 'middleLane' | 'ourZone' | 'neutralZone' | 'theirZone' | 'picture';

/**
 * The measurable part of a habit, evaluated on one freeze. x is measured towards the net we attack in that freeze.
 * `levelWith`: not further from our net than whom along the sheet, give or take `withinM` (coming back).
 * `upWith`: not nearer to our net than whom along the sheet, give or take `withinM` (joining the rush).
 * `within`: distance to whom is at most `withinM`.
 * `goalSide`: nearer to our net than whom, give or take `withinM`.
 * `numbers`: at least `atLeastCount` of us in the zone.
 */
export type Standard =
  | {
      readonly kind: 'levelWith' | 'upWith' | 'within' | 'goalSide';
      readonly who: Who;
      readonly whom: Whom;
      readonly withinM: number;
      readonly when: Trigger;
    }
  | { readonly kind: 'numbers'; readonly zone: Zone; readonly atLeastCount: number; readonly when: Trigger };

/** When the picture is to be frozen: said in words to the person who tags; not evaluated. */
export type Trigger =
  | { readonly at: 'puckCrosses'; readonly line: LineId }
  | { readonly at: 'weLoseThePuck' | 'weWinThePuck' | 'passIsMade' | 'theyShoot' };

export type StandardAnswer = 'yes' | 'no' | 'cannotTell';
