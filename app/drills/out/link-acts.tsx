import type { Team } from '@icewright/book';
import { useCallback, useEffect, useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { ChoiceField } from '../../parts/field.tsx';
import { daySaid } from '../../parts/figures.ts';
import {
  type Answer,
  endHandout,
  findHandouts,
  type HandoutLink,
  type HandoutLinks,
  makeHandout,
} from '../../shell/server.ts';
import { OutRow } from './out-row.tsx';

const DAYS = [
  { value: '1', said: '1 day' },
  { value: '7', said: '7 days' },
  { value: '14', said: '14 days' },
  { value: '60', said: '60 days' },
] as const;
type Days = (typeof DAYS)[number]['value'];

/** Links by which a player sees this drill and nothing else, and an end to each. */
export function LinkActs({ drillId, team }: { readonly drillId: string; readonly team: Team }) {
  const [{ base, links }, setLinks] = useState<HandoutLinks>({ base: null, links: [] });
  const [days, setDays] = useState<Days>('14');
  const [isNamed, setNamed] = useState(false);
  const [isWorking, setWorking] = useState(false);
  const [failed, setFailed] = useState<string | null>(null);
  const [copied, setCopied] = useState<string | null>(null);
  const look = useCallback(async () => {
    const answer = await findHandouts(drillId);
    if (answer.kind === 'ok') setLinks(answer.value);
    else setFailed(answer.said);
  }, [drillId]);
  useEffect(() => {
    void look();
  }, [look]);
  const ask = async (asked: Promise<Answer<unknown>>) => {
    setWorking(true);
    const answer = await asked;
    setFailed(answer.kind === 'none' ? answer.said : null);
    await look();
    setWorking(false);
  };
  const addressOf = (link: HandoutLink) => `${base ?? location.origin}/handout/${link.token}`;
  const open = links.filter(link => link.isOpen);
  return (
    <OutRow
      wide
      name="Link for a player"
      says={`shows this drill as it stands, and nothing else of yours. ${REACHED[base === null ? 'here' : 'network']}`}
    >
      <ChoiceField label="ends after" labelHidden value={days} choices={DAYS} onChange={setDays} />
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
      {open.length > 0 && (
        <ul className="out-links">
          {open.map(link => (
            <li key={link.token}>
              <a className="out-address" href={addressOf(link)} target="_blank" rel="noreferrer">
                {addressOf(link)}
              </a>
              <span className="q3">
                ends {daySaid(new Date(link.endsAt).toISOString().slice(0, 10))}
                {link.teamName === '' ? '' : `, says ${link.teamName}`}
              </span>
              <Act
                onPress={() => {
                  void navigator.clipboard.writeText(addressOf(link)).then(() => setCopied(link.token));
                }}
              >
                {copied === link.token ? 'Copied' : 'Copy'}
              </Act>
              <Act onPress={() => void ask(endHandout(drillId, link.token))}>Take back</Act>
            </li>
          ))}
        </ul>
      )}
    </OutRow>
  );
}

/** Where a link can be opened, and what to do where that is not enough. */
const REACHED = {
  here: 'Links work on this machine only; started with --handouts they open in your network. The page above needs no link',
  network: 'It opens for everybody in your network who has it',
} as const;
