import type * as z from 'zod/mini';
import { type DocumentKind, documentKinds, documentSchemas } from './kinds.ts';
import { longTexts } from './long-texts.ts';

/**
 * How a document lies in a Y.Doc, derived from its schema: the document, each list and each item of a list is a
 * Y.Map; a long text is a Y.Text; everything else (a point, a cue, a standard) is one value, replaced as a whole by
 * its last writer, so that a merge can never mix the halves of two people's values into one that nobody chose.
 */
export interface Shape {
  readonly schema: z.ZodMiniType;
  /** Field schemas of an object; null for an item that is one of several kinds (an act). */
  readonly fields: Readonly<Record<string, z.ZodMiniType>> | null;
  /** The item shape of each list in it. */
  readonly lists: ReadonlyMap<string, Shape>;
  readonly texts: ReadonlySet<string>;
}

interface Definition {
  readonly type: string;
  readonly shape?: Record<string, z.ZodMiniType>;
  readonly valueType?: z.ZodMiniType;
}

const definitionOf = (schema: z.ZodMiniType): Definition => schema._zod.def as unknown as Definition;

export const isOptional = (schema: z.ZodMiniType): boolean =>
  (schema._zod as { optin?: string }).optin === 'optional';

const shapes = new Map<DocumentKind, Shape>(
  documentKinds.map(kind => [kind, shapeFrom(documentSchemas[kind], longTexts[kind], '')]),
);

export const shapeOf = (kind: DocumentKind): Shape => shapes.get(kind)!;

function shapeFrom(schema: z.ZodMiniType, texts: readonly string[], prefix: string): Shape {
  const fields = definitionOf(schema).shape ?? null;
  const lists = new Map<string, Shape>();
  const own = new Set<string>();
  for (const [key, field] of Object.entries(fields ?? {})) {
    const { type, valueType } = definitionOf(field);
    if (type === 'record') lists.set(key, shapeFrom(valueType!, texts, `${prefix}${key}.*.`));
    if (texts.includes(prefix + key)) own.add(key);
  }
  return { schema, fields, lists, texts: own };
}
