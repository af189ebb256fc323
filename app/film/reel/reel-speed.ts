/** How a stretch runs in a reel. */
export type ReelSpeed = 'full' | 'half' | 'quarter' | 'again';

/** Times real speed, once for each time it runs. */
export const RATES_OF: Readonly<Record<ReelSpeed, readonly number[]>> = {
  full: [1],
  half: [0.5],
  quarter: [0.25],
  again: [1, 0.5],
};

export const SPEED_CHOICES: readonly { readonly value: ReelSpeed; readonly said: string }[] = [
  { value: 'full', said: 'full speed' },
  { value: 'half', said: 'half speed' },
  { value: 'quarter', said: 'quarter speed' },
  { value: 'again', said: 'full, then half' },
];

/** How fast each stretch of a reel runs: all alike, but for those that were set by themselves. */
export interface ReelSpeeds {
  readonly all: ReelSpeed;
  readonly own: ReadonlyMap<string, ReelSpeed>;
}

export const FULL_SPEED: ReelSpeeds = { all: 'full', own: new Map() };

export const speedOf = ({ all, own }: ReelSpeeds, id: string): ReelSpeed => own.get(id) ?? all;

export const withSpeed = (speeds: ReelSpeeds, id: string, speed: ReelSpeed): ReelSpeeds => ({
  ...speeds,
  own: new Map(speeds.own).set(id, speed),
});
