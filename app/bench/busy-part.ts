import { drillPartText } from '@icewright/book';

/** Twenty-four spots with sixty acts on one sheet, as what is pasted: loops, passes, gaps and chases, both ends full. */
export const busyPart = (): string => {
  const spots: Record<string, object> = {};
  for (let i = 0; i < 24; i++) {
    const end = i % 2 === 0 ? 1 : -1;
    const lane = Math.floor(i / 2);
    const yM = -11 + 2 * lane;
    const acts: object[] = [
      route([end * 12, yM + 1, end * 4, yM - 1, end * -6, yM]),
      route([end * -12, yM + 0.5, end * -4, yM + 1.5]),
    ];
    if (lane % 3 === 0)
      acts.unshift({ kind: 'pass', toSpot: `s${(i + 2) % 24}`, way: 'direct', speedMps: 14 });
    if (lane % 3 === 1 && i < 20) acts.push({ kind: 'gap', whom: `s${i + 2}`, distanceM: 3 });
    if (lane % 3 === 2 && i < 12) acts.push({ kind: 'hold', seconds: 1 });
    spots[`s${i}`] = {
      rank: i,
      side: end === 1 ? 'us' : 'them',
      kind: 'skater',
      role: `${end === 1 ? 'F' : 'X'}${lane + 1}`,
      atM: { xM: end * 20, yM },
      facingRad: end === 1 ? Math.PI : 0,
      waitingCount: 0,
      acts: Object.fromEntries(
        acts.map((act, rank) => [
          `a${rank}`,
          { ...act, rank, ...(rank === 0 ? { cue: { on: 'after', seconds: 0.5 * lane } } : {}) },
        ]),
      ),
    };
  }
  const pucks = { p0: { atM: { xM: 20, yM: -11 }, ownerSpot: 's0', count: 1 } };
  const part = { spots, pucks, gear: {}, games: {}, acts: [], outside: {} };
  return drillPartText(part as unknown as Parameters<typeof drillPartText>[0]);
};

const route = (xy: readonly number[]): object => ({
  kind: 'skate',
  throughM: [0, 2, 4].flatMap(at => (xy[at] === undefined ? [] : [{ xM: xy[at], yM: xy[at + 1] }])),
  facing: 'forward',
  effortRatio: 1,
  stops: false,
});
