import { newId, rankAtEnd, type Skater, type TakenRoster, type Team } from '@icewright/book';

type Put = readonly [id: string, skater: Skater];

/**
 * A roster from a file, as skaters of the team by number: new ones at the end, known ones brought up to date. What the
 * file has no column for stays: above all, a file that does not speak of contact lifts nobody's "no contact".
 */
export function skatersToPut(
  { skaters, saysGroup, saysNoContact }: TakenRoster,
  team: Pick<Team, 'skaters'>,
): { readonly puts: readonly Put[]; readonly added: number } {
  const byNumber = new Map(
    Object.entries(team.skaters).map(([id, skater]) => [skater.number, [id, skater] as const]),
  );
  let rank = rankAtEnd(team.skaters);
  let added = 0;
  const puts = skaters.map((skater): Put => {
    const [id, known] = byNumber.get(skater.number) ?? [];
    if (id !== undefined && known !== undefined) {
      const group = saysGroup ? skater.group : known.group;
      const noContact = saysNoContact ? skater.noContact : known.noContact;
      return [id, { ...skater, rank: known.rank, group, noContact }];
    }
    added += 1;
    return [newId<'skater'>(), { ...skater, rank: rank++ }];
  });
  return { puts, added };
}
