import type { Team } from '@icewright/book';

/** The one module that speaks HTTP to the server. Documents go another way: see `connection.ts`. */

export interface TeamLine {
  readonly id: string;
  readonly name: string;
  readonly demo: boolean;
}

export type Answer<T> =
  | { readonly kind: 'ok'; readonly value: T }
  /** `said` is a sentence that can be shown as it stands. */
  | { readonly kind: 'none'; readonly reason: 'notReached' | 'refused'; readonly said: string };

export const findTeams = () => ask<readonly TeamLine[]>('/api/teams');

export const makeTeam = (start: Pick<Team, 'name' | 'level' | 'rink'>) =>
  ask<{ readonly id: string }>('/api/teams', { method: 'POST', body: JSON.stringify(start) });

/** Gives the invented team, made on the server if it is not there yet. */
export const openDemo = () => ask<{ readonly id: string }>('/api/demo', { method: 'POST', body: '{}' });

export interface FolderFilm {
  readonly hash: string;
  readonly fileName: string;
  readonly byteCount: number;
  /** Put there for the demo team. */
  readonly demo?: true;
}

/** The films in the server's film folder. */
export const findFilms = () => ask<readonly FolderFilm[]>('/api/films');

/** The whole team, every document in one file. */
export const teamFileAddressOf = (teamId: string) => `/api/teams/${teamId}/file`;

/** That file, with the name the server gives it; refused when a document of the team cannot be written out. */
export async function findTeamFile(
  teamId: string,
): Promise<Answer<{ readonly bytes: Blob; readonly fileName: string }>> {
  try {
    const answer = await fetch(teamFileAddressOf(teamId));
    if (!answer.ok) return refusal(await saidBy(answer));
    const named = /filename="([^"]+)"/.exec(answer.headers.get('content-disposition') ?? '')?.[1];
    return { kind: 'ok', value: { bytes: await answer.blob(), fileName: named ?? 'team.icewright.json' } };
  } catch {
    return notReached();
  }
}

/** What taking in a team file would do; nothing is done yet. */
export const askOfTeamFile = (text: string) =>
  ask<TeamFileTold>('/api/teams/file/told', { method: 'POST', body: text });

export interface TeamFileTold {
  readonly isHere: boolean;
  readonly hasNews: boolean;
  readonly said: string;
}

/** Takes in a team file: all of it or nothing. */
export const takeInTeam = (text: string) =>
  ask<{ readonly id: string }>('/api/teams/file', { method: 'POST', body: text });

/** A link for a player. */
export interface OpenLink {
  readonly token: string;
  readonly madeAt: number;
  readonly endsAt: number;
  readonly revokedAt: number | null;
  readonly isOpen: boolean;
}

/** A link by which a player sees one drill. */
export interface HandoutLink extends OpenLink {
  readonly teamName: string;
}

/** A link by which a player sees a page that was made for him from a meeting. */
export interface PageLink extends OpenLink {
  readonly said: string;
  readonly byteCount: number;
}

export interface HandoutLinks {
  /** What they begin with where players reach them; null: they work on this machine only. */
  readonly base: string | null;
  readonly links: readonly HandoutLink[];
}

export const findHandouts = (drillId: string) => ask<HandoutLinks>(`/api/drills/${drillId}/handouts`);

export const makeHandout = (drillId: string, wish: { readonly days: number; readonly teamName: string }) =>
  ask<HandoutLink>(`/api/drills/${drillId}/handouts`, { method: 'POST', body: JSON.stringify(wish) });

export const endHandout = (drillId: string, token: string) =>
  ask<null>(`/api/drills/${drillId}/handouts/${token}`, { method: 'DELETE' });

export const findPages = (meetingId: string) =>
  ask<{ readonly base: string | null; readonly links: readonly PageLink[] }>(
    `/api/meetings/${meetingId}/handouts`,
  );

export const makePage = (
  meetingId: string,
  page: Blob,
  wish: { readonly days: number; readonly said: string },
) =>
  ask<PageLink>(
    `/api/meetings/${meetingId}/handouts?days=${wish.days}&for=${encodeURIComponent(wish.said)}`,
    { method: 'POST', body: page },
    'text/html',
  );

export const endPage = (meetingId: string, token: string) =>
  ask<null>(`/api/meetings/${meetingId}/handouts/${token}`, { method: 'DELETE' });

/** What the fields of a drill file mean, for those who write one elsewhere. */
export const drillSchemaAddress = '/api/drill-file.schema.json';

/** Whether the machine of the server can make an H.264 film of one that browsers do not decode. */
export const canConvertFilms = async (): Promise<boolean> => {
  const answer = await ask<{ readonly canConvert: boolean }>('/api/conversions');
  return answer.kind === 'ok' && answer.value.canConvert;
};

export type Conversion =
  | { readonly kind: 'none' }
  | { readonly kind: 'going'; readonly share: number | null }
  | { readonly kind: 'done'; readonly film: FolderFilm }
  | { readonly kind: 'failed'; readonly said: string };

export const convertFilm = (hash: string) =>
  ask<Conversion>(`/api/conversions/${hash}`, { method: 'POST', body: '{}' });
export const findConversion = (hash: string) => ask<Conversion>(`/api/conversions/${hash}`);
export const stopConversion = (hash: string) => ask<null>(`/api/conversions/${hash}`, { method: 'DELETE' });

/** Where the bytes of a film lie; a range can be asked for. */
export const filmAddressOf = (hash: string) => `/film/${hash}`;

export async function isFilmThere(hash: string): Promise<boolean> {
  try {
    return (await fetch(filmAddressOf(hash), { method: 'HEAD' })).ok;
  } catch {
    return false;
  }
}

async function ask<T>(
  address: string,
  init?: RequestInit,
  bodyKind = 'application/json',
): Promise<Answer<T>> {
  try {
    const answer = await fetch(address, {
      ...init,
      headers: { accept: 'application/json', ...(init?.body ? { 'content-type': bodyKind } : {}) },
    });
    if (!answer.ok) return refusal(await saidBy(answer));
    // 204 has nothing to read.
    return { kind: 'ok', value: (answer.status === 204 ? null : await answer.json()) as T };
  } catch {
    return notReached();
  }
}

async function saidBy(answer: Response): Promise<string> {
  const given = (await answer.json().catch(() => null)) as { sentence?: string } | null;
  return given?.sentence ?? `The server refused this (${answer.status}). Nothing here was changed.`;
}

const refusal = (said: string) => ({ kind: 'none', reason: 'refused', said }) as const;
const notReached = () =>
  ({
    kind: 'none',
    reason: 'notReached',
    said: 'The server cannot be reached. What is already on this machine can be used; nothing is lost.',
  }) as const;
