import type * as z from 'zod/mini';
import { drill } from './drill.ts';
import { game } from './game.ts';
import { meeting } from './meeting.ts';
import { practice } from './practice.ts';
import { team } from './team.ts';

export const documentKinds = ['team', 'game', 'drill', 'practice', 'meeting'] as const;
export type DocumentKind = (typeof documentKinds)[number];

/** What each kind of document must look like. */
export const documentSchemas = { team, game, drill, practice, meeting } as const;

export type DocumentOf<Kind extends DocumentKind> = z.infer<(typeof documentSchemas)[Kind]>;
export type AnyDocument = DocumentOf<DocumentKind>;

/** The schema version this program writes. A document of a higher one is refused, never half-read. */
export const currentSchema: Readonly<Record<DocumentKind, number>> = {
  team: 5,
  game: 5,
  drill: 4,
  practice: 1,
  meeting: 1,
};

export const isDocumentKind = (value: unknown): value is DocumentKind =>
  documentKinds.includes(value as DocumentKind);
