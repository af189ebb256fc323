import { useCallback, useEffect, useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { daySaid } from '../../parts/figures.ts';
import type { Answer, OpenLink } from '../../shell/server.ts';

export const LINK_DAYS = [
  { value: '1', said: '1 day' },
  { value: '7', said: '7 days' },
  { value: '14', said: '14 days' },
  { value: '60', said: '60 days' },
] as const;
export type LinkDays = (typeof LINK_DAYS)[number]['value'];

interface Links<Link extends OpenLink> {
  readonly base: string | null;
  readonly links: readonly Link[];
}

/** The links of one document as the server has them; `ask` asks for a change and then looks again. */
export function useLinks<Link extends OpenLink>(find: () => Promise<Answer<Links<Link>>>) {
  const [{ base, links }, setLinks] = useState<Links<Link>>({ base: null, links: [] });
  const [isWorking, setWorking] = useState(false);
  const [failed, setFailed] = useState<string | null>(null);
  const look = useCallback(async () => {
    const answer = await find();
    if (answer.kind === 'ok') setLinks(answer.value);
    else setFailed(answer.said);
  }, [find]);
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
  return { base, open: links.filter(link => link.isOpen), isWorking, failed, ask };
}

/** Links that are open, each with its end and a way to take it back. */
export function LinkList<Link extends OpenLink>(props: {
  readonly base: string | null;
  readonly links: readonly Link[];
  /** What is said of one after its end. */
  readonly moreSaid: (link: Link) => string;
  readonly onEnd: (token: string) => void;
}) {
  const [copied, setCopied] = useState<string | null>(null);
  const addressOf = (link: Link) => `${props.base ?? location.origin}/handout/${link.token}`;
  if (props.links.length === 0) return null;
  return (
    <ul className="out-links">
      {props.links.map(link => (
        <li key={link.token}>
          <a className="out-address" href={addressOf(link)} target="_blank" rel="noreferrer">
            {addressOf(link)}
          </a>
          <span className="q3">
            ends {daySaid(new Date(link.endsAt).toISOString().slice(0, 10))}
            {props.moreSaid(link)}
          </span>
          <Act
            onPress={() => {
              void navigator.clipboard.writeText(addressOf(link)).then(() => setCopied(link.token));
            }}
          >
            {copied === link.token ? 'Copied' : 'Copy'}
          </Act>
          <Act onPress={() => props.onEnd(link.token)}>Take back</Act>
        </li>
      ))}
    </ul>
  );
}

/** Where a link can be opened, and what to do where that is not enough. */
export const reachedSaid = (base: string | null): string =>
  base === null
    ? 'Links work on this machine only; started with --handouts they open in your network. The page needs no link'
    : 'It opens for everybody in your network who has it';
