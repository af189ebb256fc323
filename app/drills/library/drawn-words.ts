import type { Drill } from '@icewright/book';
import type { Act, PassWay } from '@icewright/engine';

/** What the trade calls what is drawn (`common practice, no source`): a coach looks for a bank pass by its name, whatever its drill is called. */
const OF_PASS: Readonly<Record<PassWay, string>> = {
  direct: 'pass',
  bank: 'bank pass off the boards',
  saucer: 'saucer pass',
  rim: 'rim along the boards',
  drop: 'drop pass',
};

const OF_ACT: Readonly<Record<Exclude<Act['kind'], 'pass' | 'hold'>, string>> = {
  skate: 'skating',
  carry: 'carry with puck',
  shoot: 'shot shoot',
  chase: 'chase back-check backcheck',
  gap: 'gap',
  steal: 'steal poke check',
  screen: 'screen',
  pickUp: 'pick up loose puck',
  leave: 'leave the puck',
  stop: 'stop',
  turn: 'tight turn',
  pivot: 'pivot turn round',
  face: 'face',
};

const known = new WeakMap<Drill, string>();

/** The acts of a drill in the trade's words, and its numbers by sides: "bank pass … 3 on 2". Read once for each state of it. */
export function drawnWords(drill: Drill): string {
  const before = known.get(drill);
  if (before !== undefined) return before;
  const acts = Object.values(drill.spots).flatMap(spot => Object.values(spot.acts) as Act[]);
  const words = [...new Set(acts.map(wordsOf)), ...numbersOf(drill)].filter(part => part !== '').join('; ');
  known.set(drill, words);
  return words;
}

function wordsOf(act: Act): string {
  if (act.kind === 'hold') return '';
  if (act.kind === 'pass') return OF_PASS[act.way];
  const backward = 'facing' in act && act.facing === 'backward' ? ' backward' : '';
  return OF_ACT[act.kind] + backward;
}

/** Attackers first; where both sides play the puck, or neither does, either way round. */
function numbersOf(drill: Drill): readonly string[] {
  const skaters = Object.entries(drill.spots).filter(([, spot]) => spot.kind === 'skater');
  const count = (side: 'us' | 'them') => skaters.filter(([, spot]) => spot.side === side).length;
  const plays = (side: 'us' | 'them') =>
    skaters.some(
      ([id, spot]) =>
        spot.side === side &&
        (Object.values(drill.pucks).some(puck => puck.ownerSpot === id) ||
          Object.values(spot.acts).some(act => PLAYS.includes((act as Act).kind))),
    );
  const games = Object.values(drill.games ?? {}).flatMap(game => eitherWay(game.usCount, game.themCount));
  const us = count('us');
  const them = count('them');
  if (us === 0 || them === 0) return games;
  if (plays('us') === plays('them')) return [...eitherWay(us, them), ...games];
  return [plays('us') ? `${us} on ${them}` : `${them} on ${us}`, ...games];
}

const PLAYS: readonly Act['kind'][] = ['carry', 'pass', 'shoot'];

const eitherWay = (one: number, other: number): readonly string[] => [
  `${one} on ${other}`,
  `${other} on ${one}`,
];
