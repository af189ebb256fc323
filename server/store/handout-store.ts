import { randomBytes } from 'node:crypto';
import type { Db } from './open-database.ts';

/** A link by which a player sees one drill, and nothing else. */
export interface Handout {
  /** 128 random bits: whoever has it sees the drill until it ends. */
  readonly token: string;
  readonly document: string;
  /** Shown over the drill when the coach chose so; else empty. */
  readonly teamName: string;
  readonly madeAt: number;
  readonly endsAt: number;
  readonly revokedAt: number | null;
}

export type HandoutStore = ReturnType<typeof handoutStoreOn>;

export const dayMs = 86_400_000;
const TOKEN_BYTES = 16;
/** Links of one drill that are still open: more than this is a mistake somewhere. */
export const mostOpenHandouts = 50;

/** The links for players, on disc. */
export function handoutStoreOn(db: Db, clock: () => number = Date.now) {
  const add = db.prepare(
    'INSERT INTO handouts (token, document, team_name, made_at, ends_at) VALUES (?, ?, ?, ?, ?)',
  );
  const columns =
    'token, document, team_name AS teamName, made_at AS madeAt, ends_at AS endsAt, revoked_at AS revokedAt';
  const byToken = db.prepare<[string], Handout>(`SELECT ${columns} FROM handouts WHERE token = ?`);
  const byDocument = db.prepare<[string], Handout>(
    `SELECT ${columns} FROM handouts WHERE document = ? ORDER BY made_at DESC, token`,
  );
  const revoke = db.prepare(
    'UPDATE handouts SET revoked_at = ? WHERE token = ? AND document = ? AND revoked_at IS NULL',
  );
  return {
    make(document: string, teamName: string, days: number): Handout {
      const token = newToken();
      const now = clock();
      add.run(token, document, teamName, now, now + days * dayMs);
      return byToken.get(token)!;
    },
    of: (document: string): Handout[] => byDocument.all(document),
    /** Ends a link of this document; false when there is no such open link. */
    revoke: (document: string, token: string): boolean => revoke.run(clock(), token, document).changes === 1,
    /** The link that this token opens now, or null: never made, ended or revoked. */
    findOpen(token: string): Handout | null {
      if (!isToken(token)) return null;
      const found = byToken.get(token);
      return found !== undefined && isOpen(found, clock()) ? found : null;
    },
    isOpen: (handout: Handout): boolean => isOpen(handout, clock()),
  };
}

export const newToken = (): string => randomBytes(TOKEN_BYTES).toString('base64url');

export const isToken = (text: string): boolean => /^[A-Za-z0-9_-]{22}$/.test(text);

const isOpen = ({ endsAt, revokedAt }: Handout, nowMs: number): boolean =>
  revokedAt === null && nowMs < endsAt;
