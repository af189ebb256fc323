import { type DrillPart, drillPartText, type ReadPart, readDrillPart } from '@icewright/book';

/** What this window copied last. */
let own: string | null = null;
/** Nobody can have copied anything since: then the browser need not be asked, which may ask the coach. */
let isNewest = false;

window.addEventListener('blur', () => {
  isNewest = false;
});

/** Copies a part of a drill as plain JSON: to the machine's clipboard where the browser lets us, and for this window in any case. */
export function putOnClipboard(part: Omit<DrillPart, 'icewright' | 'schema'>): void {
  own = drillPartText(part);
  isNewest = true;
  // A browser that refuses leaves what was copied to this window alone.
  navigator.clipboard?.writeText(own).catch(() => {});
}

/** What was copied last, here or elsewhere, checked. */
export async function takeFromClipboard(): Promise<ReadPart> {
  const text = isNewest || navigator.clipboard === undefined ? own : await textOfMachine();
  return text === null || text === ''
    ? { kind: 'refused', said: 'Nothing was copied yet.' }
    : readDrillPart(text);
}

async function textOfMachine(): Promise<string | null> {
  try {
    return await navigator.clipboard.readText();
  } catch {
    return own;
  }
}
