import type { Team } from '@icewright/book';
import { useCallback, useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { ChoiceField } from '../../parts/field.tsx';
import { endHandout, findHandouts, makeHandout } from '../../shell/server.ts';
import { LINK_DAYS, type LinkDays, LinkList, reachedSaid, useLinks } from './link-list.tsx';
import { OutRow } from './out-row.tsx';

/** Links by which a player sees this drill and nothing else, and an end to each. */
export function LinkActs({ drillId, team }: { readonly drillId: string; readonly team: Team }) {
  const { base, open, isWorking, failed, ask } = useLinks(
    useCallback(() => findHandouts(drillId), [drillId]),
  );
  const [days, setDays] = useState<LinkDays>('14');
  const [isNamed, setNamed] = useState(false);
  return (
    <OutRow
      wide
      name="Link for a player"
      says={`shows this drill as it stands, and nothing else of yours. ${reachedSaid(base)}`}
    >
      <ChoiceField label="ends after" labelHidden value={days} choices={LINK_DAYS} onChange={setDays} />
      <Act isOn={isNamed} onPress={() => setNamed(!isNamed)}>
        With the team’s name
      </Act>
      <Act
        working={isWorking}
        onPress={() =>
          void ask(makeHandout(drillId, { days: Number(days), teamName: isNamed ? team.name : '' }))
        }
      >
        Make a link
      </Act>
      {failed !== null && (
        <span className="warm" role="alert">
          {failed}
        </span>
      )}
      <LinkList
        base={base}
        links={open}
        moreSaid={({ teamName }) => (teamName === '' ? '' : `, says ${teamName}`)}
        onEnd={token => void ask(endHandout(drillId, token))}
      />
    </OutRow>
  );
}
