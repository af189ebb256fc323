import { dayMs, isToken, newToken } from './handout-store.ts';
import type { Db } from './open-database.ts';

/** A page made for one player, with the film that is in it; seen by whoever has its link, until it ends. */
export interface HandoutPage {
  readonly token: string;
  /** The meeting it was made from. */
  readonly document: string;
  /** Whom it is for, as the staff's list says it. */
  readonly said: string;
  readonly byteCount: number;
  readonly madeAt: number;
  readonly endsAt: number;
  readonly revokedAt: number | null;
}

export type HandoutPageStore = ReturnType<typeof handoutPageStoreOn>;

/** Open pages of one meeting: a team has no more players. */
export const mostOpenPages = 60;

/** The players' pages on disc. What has ended is not only shut: its film is gone. */
export function handoutPageStoreOn(db: Db, clock: () => number = Date.now) {
  const columns =
    'token, document, said, length(bytes) AS byteCount, made_at AS madeAt, ends_at AS endsAt, revoked_at AS revokedAt';
  const add = db.prepare(
    'INSERT INTO handout_pages (token, document, said, made_at, ends_at, bytes) VALUES (?, ?, ?, ?, ?, ?)',
  );
  const byToken = db.prepare<[string], HandoutPage>(`SELECT ${columns} FROM handout_pages WHERE token = ?`);
  const byDocument = db.prepare<[string], HandoutPage>(
    `SELECT ${columns} FROM handout_pages WHERE document = ? ORDER BY made_at DESC, token`,
  );
  const bytesOf = db.prepare<[string], Buffer>('SELECT bytes FROM handout_pages WHERE token = ?').pluck();
  const revoke = db.prepare(
    "UPDATE handout_pages SET revoked_at = ?, bytes = x'' WHERE token = ? AND document = ? AND revoked_at IS NULL",
  );
  const empty = db.prepare("UPDATE handout_pages SET bytes = x'' WHERE ends_at <= ? AND length(bytes) > 0");
  const isOpen = ({ endsAt, revokedAt }: HandoutPage): boolean => revokedAt === null && clock() < endsAt;
  const dropEnded = (): void => void empty.run(clock());
  dropEnded();
  return {
    make(document: string, said: string, days: number, bytes: Uint8Array): HandoutPage {
      dropEnded();
      const token = newToken();
      const now = clock();
      add.run(token, document, said, now, now + days * dayMs, bytes);
      return byToken.get(token)!;
    },
    of(document: string): HandoutPage[] {
      dropEnded();
      return byDocument.all(document);
    },
    /** Ends a page of this meeting; false when there is no such open page. */
    revoke: (document: string, token: string): boolean => revoke.run(clock(), token, document).changes === 1,
    /** The page that this token opens now, or null: never made, ended or taken back. */
    findOpen(token: string): Uint8Array | null {
      const found = isToken(token) ? byToken.get(token) : undefined;
      return found !== undefined && isOpen(found) ? bytesOf.get(token)! : null;
    },
    isOpen,
  };
}
