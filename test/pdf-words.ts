import { inflateSync } from 'node:zlib';

/**
 * The words of a PDF whose fonts say which letters their glyphs are (ISO 32000-1, 9.10.3: ToUnicode), line after line as
 * they were drawn. Enough for files of this workbench; other programs' files may be packed otherwise.
 */
export function pdfWords(bytes: Buffer): string {
  const objects = objectsOf(bytes);
  const fonts = new Map<string, ReadonlyMap<number, string>>();
  for (const { head } of objects.values()) {
    const named = /\/Font\s*<<([^>]*)>>/.exec(head)?.[1] ?? '';
    for (const [, name, id] of named.matchAll(/\/(\w+)\s+(\d+)\s+0\s+R/g)) {
      const mapped = /\/ToUnicode\s+(\d+)\s+0\s+R/.exec(objects.get(Number(id))?.head ?? '')?.[1];
      const map = mapped === undefined ? undefined : objects.get(Number(mapped))?.stream;
      if (map !== undefined) fonts.set(name!, lettersOf(map));
    }
  }
  return [...objects.values()]
    .filter(({ stream }) => stream !== undefined && / Tf\b/.test(stream))
    .map(({ stream }) => wordsOf(stream!, fonts))
    .join('\n');
}

interface PdfObject {
  readonly head: string;
  readonly stream: string | undefined;
}

function objectsOf(bytes: Buffer): ReadonlyMap<number, PdfObject> {
  const text = bytes.toString('latin1');
  const objects = new Map<number, PdfObject>();
  for (const found of text.matchAll(/(?:^|\n)(\d+) 0 obj\b([\s\S]*?)(?:\bstream\r?\n|\bendobj)/g)) {
    const head = found[2]!;
    const from = found.index + found[0].length;
    const length = Number(/\/Length (\d+)/.exec(head)?.[1]);
    const isPacked = head.includes('/FlateDecode');
    const stream = found[0].endsWith('endobj') ? undefined : bytes.subarray(from, from + length);
    objects.set(Number(found[1]), {
      head,
      stream: stream && (isPacked ? inflateSync(stream) : stream).toString('latin1'),
    });
  }
  return objects;
}

/** Lines `<from> <to> [<letters> …]` and `<from> <to> <first>` of a ranges part, `<glyph> <letters>` of a chars part. */
function lettersOf(map: string): ReadonlyMap<number, string> {
  const letters = new Map<number, string>();
  for (const [, part] of map.matchAll(/beginbfrange([\s\S]*?)endbfrange/g)) {
    for (const [, from, , list, first] of part!.matchAll(/<(\w+)>\s*<(\w+)>\s*(?:\[([^\]]*)\]|<(\w+)>)/g)) {
      const each = list === undefined ? [first!] : [...list.matchAll(/<([\w ]+)>/g)].map(([, hex]) => hex!);
      each.forEach((hex, index) => {
        letters.set(Number.parseInt(from!, 16) + index, utf16Of(hex));
      });
    }
  }
  for (const [, part] of map.matchAll(/beginbfchar([\s\S]*?)endbfchar/g))
    for (const [, glyph, hex] of part!.matchAll(/<(\w+)>\s*<(\w+)>/g))
      letters.set(Number.parseInt(glyph!, 16), utf16Of(hex!));
  return letters;
}

/** One glyph may be several letters, written with spaces between: `<0066 0069>` is fi. */
const utf16Of = (hex: string): string =>
  Buffer.from(hex.replaceAll(' ', ''), 'hex').swap16().toString('utf16le');

function wordsOf(stream: string, fonts: ReadonlyMap<string, ReadonlyMap<number, string>>): string {
  let font: ReadonlyMap<number, string> | undefined;
  const lines: string[] = [];
  for (const [, named, shown] of stream.matchAll(/\/(\w+) [\d.]+ Tf|\[([^\]]*)\] TJ/g)) {
    if (named !== undefined) font = fonts.get(named);
    else
      lines.push(
        [...shown!.matchAll(/<(\w*)>/g)]
          .flatMap(([, hex]) => hex!.match(/.{4}/g) ?? [])
          .map(glyph => font?.get(Number.parseInt(glyph, 16)) ?? '')
          .join(''),
      );
  }
  return lines.join('\n');
}
