import type { Placed, Team } from '@icewright/book';
import { type FoundPerson, goalieAmong, otherEnd } from '@icewright/engine';
import { useMemo } from 'react';
import type { Desk } from '../freeze-desk.ts';
import type { FreezeView } from '../freeze-view.ts';
import { type Looking, useOneLook } from '../one-look.ts';
import type { Player } from '../player.ts';
import { knownDresses, rememberDresses } from './known-dresses.ts';
import { type OfferedPerson, offeredOf } from './offered-people.ts';
import type { PeopleAsk, PeopleSaid } from './people-messages.ts';

/** People found in the frozen picture, and what the coach may do with them. Nothing of it is in the game until he takes somebody. */
export interface PeopleOffer {
  readonly state: 'none' | 'looking' | 'looked';
  /** Why nobody could be looked for. */
  readonly refused?: string;
  readonly offered: readonly OfferedPerson[];
  readonly leftOutCount: number;
  readonly chosen: OfferedPerson | undefined;
  choose(id: string | undefined): void;
  /** Looks; while it looks it stops; an offer that lies there is put away. */
  toggle(): void;
  /** As one of a side; more than one together, of whom the one at his own net is the goalie. */
  take(people: readonly OfferedPerson[], side: Placed['side'], kind?: Placed['kind']): void;
  leaveOut(people: readonly OfferedPerson[]): void;
  bringBack(): void;
}

interface Looked extends Looking {
  readonly found: readonly FoundPerson[];
  readonly refused?: string;
  readonly leftOut: ReadonlySet<string>;
  readonly chosen?: string | undefined;
}

export const usePeopleOffer = (
  player: Player,
  desk: Desk | undefined,
  view: FreezeView | undefined,
  sheet: Team['rink'],
): PeopleOffer => {
  const { looked, change, putAway, begin } = useOneLook<Looked>(desk?.freezeId);
  const { fit, freeze } = view ?? {};
  const offered = useMemo(
    () => (looked && fit && freeze ? offeredOf(looked.found, fit, freeze.skaters, looked.leftOut) : []),
    [looked, fit, freeze],
  );
  const look = () => {
    const picture = player.shownPicture();
    if (!desk || !fit || !freeze || !picture) return;
    const made = new Worker(new URL('./people.worker.ts', import.meta.url), { type: 'module' });
    const told = begin(made, { on: desk.freezeId, state: 'looking', found: [], leftOut: new Set() });
    const ended = (part: Partial<Looked>) => told({ ...part, state: 'looked' });
    made.addEventListener('message', ({ data }: MessageEvent<PeopleSaid>) => {
      if (data.kind !== 'found') return ended({ refused: refusedSaid(data) });
      rememberDresses(freeze.film, data.people);
      ended({ found: data.people });
    });
    made.addEventListener('error', ({ message }) =>
      ended({ refused: refusedSaid({ kind: 'failed', why: message }) }),
    );
    const { data: rgba, width: widthPx, height: heightPx } = picture;
    const ask: PeopleAsk = { rgba, widthPx, heightPx, fit, sheet, known: knownDresses(freeze.film) };
    made.postMessage(ask, [rgba.buffer]);
    if (desk.tool.kind === 'pin') desk.setTool({ kind: 'look' });
  };
  return {
    state: looked?.state ?? 'none',
    ...(looked?.refused === undefined ? {} : { refused: looked.refused }),
    offered,
    leftOutCount: looked?.leftOut.size ?? 0,
    chosen: offered.find(one => one.id === looked?.chosen),
    choose: chosen => change({ chosen }),
    toggle: () => (looked ? putAway() : look()),
    take: (people, side, kind) => {
      if (!view || !desk) return;
      const ownEnd = side === 'us' ? otherEnd(view.freeze.attacks) : view.freeze.attacks;
      const hasGoalie = Object.values(view.freeze.skaters).some(
        one => one.side === side && one.kind === 'goalie',
      );
      const goalie =
        kind || hasGoalie
          ? -1
          : goalieAmong(
              people.map(({ atM }) => atM),
              view.rink,
              ownEnd,
            );
      desk.write.addFound(
        side,
        people.map(({ feetPx, footSdPx }, rank) => ({
          feet: feetPx,
          feetSdPx: footSdPx,
          kind: kind ?? (rank === goalie ? 'goalie' : 'skater'),
        })),
      );
    },
    leaveOut: people =>
      change({ leftOut: new Set([...(looked?.leftOut ?? []), ...people.map(({ id }) => id)]) }),
    bringBack: () => change({ leftOut: new Set() }),
  };
};

const refusedSaid = (said: Exclude<PeopleSaid, { kind: 'found' }>): string =>
  said.kind === 'noIce'
    ? 'Hardly any ice is seen where the pins put it: look whether they lie on their marks.'
    : `The picture could not be looked through: ${said.why}.`;
