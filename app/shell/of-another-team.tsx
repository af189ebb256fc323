import { Act, ActLink } from '../parts/act.tsx';
import { Failure } from '../parts/empty.tsx';
import { findPlace } from './places.ts';
import { RunningHead } from './running-head.tsx';
import { goToTeamOfPage } from './teams.ts';
import type { Thing, Whose } from './whose-page.ts';

/** In the place of a page that is not this team's: whose it is, and the one act that goes there. */
export function OfAnotherTeam({
  whose,
  path,
  ours,
}: {
  readonly whose: Extract<Whose, { readonly kind: 'theirs' | 'untold' }>;
  readonly path: string;
  readonly ours: string;
}) {
  const place = findPlace(path);
  const { word } = whose.thing;
  return (
    <>
      <RunningHead
        {...(place === undefined ? {} : { back: { to: place.path, said: place.name } })}
        title={titleOf(whose.thing)}
        titleWords={titleOf(whose.thing)}
      />
      {whose.kind === 'theirs' ? (
        <Failure
          where={whose.team.name}
          what={`This ${word} belongs to ${whose.team.name}; you are with ${ours}.`}
          lost="Nothing of it is shown here, so that skaters and habits of two teams never stand on one page."
        >
          <Act lead onPress={() => goToTeamOfPage(whose.team.id)}>
            Go to {whose.team.name}
          </Act>
        </Failure>
      ) : (
        <Failure
          where={ours}
          what={`This ${word} is not one of ${ours}’s, and it cannot be told whose it is.`}
          lost={`${whose.unread.map(({ name }) => name).join(', ')} cannot be read on this machine now.`}
        >
          {place !== undefined && <ActLink to={place.path}>To {place.name}</ActLink>}
        </Failure>
      )}
    </>
  );
}

const titleOf = ({ word }: Thing): string => `A ${word} of another team`;
