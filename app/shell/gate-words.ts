import type { Skater } from '@icewright/book';

type Gates = NonNullable<Skater['timed']>;

export type ReadGates =
  /** No gates: nobody was timed. */
  | { readonly kind: 'ok'; readonly gates: Gates | undefined }
  | { readonly kind: 'refused'; readonly said: string };

const GATE = /^(\d+(?:\.\d+)?)\s*(?:m\s+|m|\s+|:\s*|=\s*)(\d+(?:\.\d+)?)\s*s?$/;
const FEWEST = 3;
const MOST = 60;

/** Gates as they are typed: metres and seconds, gate after gate, with commas between. */
export const gatesOf = (typed: string): ReadGates => {
  const parts = typed
    .split(/[,;\n]/)
    .map(part => part.trim())
    .filter(part => part !== '');
  if (parts.length === 0) return { kind: 'ok', gates: undefined };
  const gates: Gates = [];
  for (const part of parts) {
    const [, distance, time] = GATE.exec(part) ?? [];
    if (distance === undefined || time === undefined)
      return refused(`“${part}” is not read: metres, then seconds, as in 10 m 2.25.`);
    const gate = { distanceM: Number(distance), timeS: Number(time) };
    if (gate.distanceM < 0.5 || gate.distanceM > 80)
      return refused(`A gate stands at 0.5 to 80 m, not at ${distance} m.`);
    if (gate.timeS < 0.1 || gate.timeS > 40) return refused(`${distance} m take 0.1 to 40 s, not ${time} s.`);
    gates.push(gate);
  }
  if (new Set(gates.map(({ distanceM }) => distanceM)).size < FEWEST)
    return refused('Three different distances are needed: two times fit any sprint.');
  return gates.length > MOST ? refused(`${MOST} times at most.`) : { kind: 'ok', gates };
};

/** As it would be typed. */
export const gatesSaid = (gates: Skater['timed']): string =>
  (gates ?? []).map(({ distanceM, timeS }) => `${distanceM} m ${timeS}`).join(', ');

const refused = (said: string): ReadGates => ({ kind: 'refused', said });
