import type { Drill, DrillAct } from '@icewright/book';
import { type Cue, lineWords, type PassWay, type SpotId } from '@icewright/engine';

/** Acts and cues in the words of the bench. */

export const roleOf = (drill: Drill, spotId: SpotId): string => drill.spots[spotId]?.role ?? 'nobody';

export function actSaid(drill: Drill, act: DrillAct): string {
  switch (act.kind) {
    case 'skate':
      return act.facing === 'backward' ? 'skates backward' : 'skates';
    case 'carry':
      return act.facing === 'backward' ? 'carries backward' : 'carries';
    case 'pass':
      return passSaid(act.way, roleOf(drill, act.toSpot));
    case 'shoot':
      return 'shoots';
    case 'hold':
      return 'holds';
    case 'chase':
      return `chases ${roleOf(drill, act.whom)}`;
    case 'gap':
      return `keeps the gap to ${roleOf(drill, act.whom)}`;
    case 'steal':
      return `goes for the puck of ${roleOf(drill, act.whom)}`;
    case 'screen':
      return `is in the lane from ${roleOf(drill, act.from)} to ${act.to ? roleOf(drill, act.to) : 'the own net'}`;
    case 'pickUp':
      return 'picks a puck up';
    case 'leave':
      return 'leaves the puck';
    case 'stop':
      return 'stops';
    case 'turn':
      return `turns ${Math.abs(Math.round((act.angleRad * 180) / Math.PI))}° to the ${act.angleRad > 0 ? 'left' : 'right'}`;
    case 'pivot':
      return 'pivots';
    case 'face':
      return `faces ${act.whom ? roleOf(drill, act.whom) : 'the puck'}`;
  }
}

function passSaid(way: PassWay, to: string): string {
  switch (way) {
    case 'direct':
      return `passes to ${to}`;
    case 'bank':
      return `passes to ${to} off the boards`;
    case 'saucer':
      return `sends ${to} a saucer`;
    case 'rim':
      return `rims to ${to}`;
    case 'drop':
      return `drops to ${to}`;
  }
}

export function cueSaid(drill: Drill, cue: Cue | undefined): string {
  if (cue === undefined) return 'at once';
  switch (cue.on) {
    case 'whistle':
      return 'on the whistle';
    case 'after':
      return `after ${cue.seconds} s`;
    case 'receive':
      return `when ${roleOf(drill, cue.spot)} receives`;
    case 'shot':
      return `when ${roleOf(drill, cue.spot)} shoots`;
    case 'spotCrosses':
      return `when ${roleOf(drill, cue.spot)} is over ${lineWords(cue.line, drill)}`;
    case 'losesPuck':
      return `when ${roleOf(drill, cue.spot)} loses the puck`;
    case 'caught':
      return `when ${roleOf(drill, cue.spot)} is caught`;
    case 'reaches':
      return `when ${roleOf(drill, cue.spot)} comes to the place`;
    case 'puckCrosses':
      return `when the puck is over ${lineWords(cue.line, drill)}`;
  }
}
