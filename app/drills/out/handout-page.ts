import type { Drill, Team } from '@icewright/book';
import { STANDING_CAUTIONS } from '@icewright/picture';
import { drillSvg } from './picture-files.ts';
import { sheetOf } from './sheet-of.ts';

/** The drill as one HTML file that needs nothing beside it: for a player whom no link reaches. */
export async function handoutPage(
  drill: Drill,
  team: Pick<Team, 'lengths' | 'skaters'>,
  cover: string,
): Promise<string> {
  const { text: svg } = await drillSvg(drill, team.lengths, true);
  const sheet = sheetOf(drill, team, cover);
  const figures = sheet.figures.map(
    ({ name, words }) => `<dt>${escaped(name)}</dt><dd>${escaped(words)}</dd>`,
  );
  return [
    '<!doctype html><html lang="en"><head><meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; font-src data:">`,
    `<title>${escaped(sheet.title)}</title><style>${STYLE}</style></head><body><main>`,
    cover === '' ? '' : `<p class="cover">${escaped(cover)}</p>`,
    `<h1>${escaped(sheet.title)}</h1>`,
    sheet.says === '' ? '' : `<p class="says">${escaped(sheet.says)}</p>`,
    `<figure>${svg}</figure>`,
    listOf('Key points', sheet.keyPoints),
    `<dl>${figures.join('')}</dl>`,
    listOf('Before the first whistle', [...sheet.cautions, ...STANDING_CAUTIONS]),
    '</main></body></html>\n',
  ].join('\n');
}

const listOf = (head: string, lines: readonly string[]): string =>
  lines.length === 0
    ? ''
    : `<h2>${head}</h2><ul>${lines.map(line => `<li>${escaped(line)}</li>`).join('')}</ul>`;

const STYLE = `body{margin:0;background:#fff;color:#000;font:16px/1.45 "Encode Sans",Arial,sans-serif}
main{max-width:1100px;margin:0 auto;padding:20px}
h1{font:400 34px/1.2 Newsreader,Georgia,serif;margin:0 0 4px}
h2{font-size:16px;margin:24px 0 4px}
.says{font:italic 400 19px/1.3 Newsreader,Georgia,serif;margin:0 0 12px}
.cover{font-size:13px;color:#444;margin:0 0 8px}
figure{margin:0}svg{width:100%;height:auto}
ul{margin:0;padding-left:20px}
dl{display:grid;grid-template-columns:max-content 1fr;gap:2px 16px;margin:24px 0 0}
dt{color:#444}dd{margin:0}`;

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escaped = (words: string): string => words.replace(/[&<>"]/g, letter => ENTITIES[letter] ?? letter);
