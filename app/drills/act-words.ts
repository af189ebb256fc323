import type { Drill, DrillAct } from '@icewright/book';
import type { Cue, LineId, SpotId } from '@icewright/engine';

/** Acts and cues in the words of the bench. */

export const LINE_SAID: Readonly<Record<LineId, string>> = {
  goalLineMinusX: 'our goal line',
  blueLineMinusX: 'our blue line',
  centreLine: 'the red line',
  blueLinePlusX: 'their blue line',
  goalLinePlusX: 'their goal line',
};

export const roleOf = (drill: Drill, spotId: SpotId): string => drill.spots[spotId]?.role ?? 'nobody';

export function actSaid(drill: Drill, act: DrillAct): string {
  switch (act.kind) {
    case 'skate':
      return act.facing === 'backward' ? 'skates backward' : 'skates';
    case 'carry':
      return act.facing === 'backward' ? 'carries backward' : 'carries';
    case 'pass':
      return `passes to ${roleOf(drill, act.toSpot)}${act.way === 'bank' ? ' off the boards' : ''}`;
    case 'shoot':
      return 'shoots';
    case 'hold':
      return 'holds';
    case 'chase':
      return `chases ${roleOf(drill, act.whom)}`;
    case 'gap':
      return `keeps the gap to ${roleOf(drill, act.whom)}`;
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
      return `when ${roleOf(drill, cue.spot)} is over ${LINE_SAID[cue.line]}`;
    case 'puckCrosses':
      return `when the puck is over ${LINE_SAID[cue.line]}`;
  }
}
