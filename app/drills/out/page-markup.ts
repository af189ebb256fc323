/** Parts of a page that is handed out as one HTML file: it needs nothing beside it, runs no script and loads nothing. */

export const pageOf = (title: string, body: readonly string[]): string =>
  [
    '<!doctype html><html lang="en"><head><meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; font-src data:; media-src data:">`,
    `<title>${escaped(title)}</title><style>${STYLE}</style></head><body><main>`,
    ...body.filter(part => part !== ''),
    '</main></body></html>\n',
  ].join('\n');

/** Undefined where there is nothing to say. */
export const paragraphOf = (words: string, className = ''): string =>
  words === '' ? '' : `<p${className === '' ? '' : ` class="${className}"`}>${escaped(words)}</p>`;

export const listOf = (head: string, lines: readonly string[]): string =>
  lines.length === 0
    ? ''
    : `<h2>${head}</h2><ul>${lines.map(line => `<li>${escaped(line)}</li>`).join('')}</ul>`;

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
export const escaped = (words: string): string =>
  words.replace(/[&<>"]/g, letter => ENTITIES[letter] ?? letter);

const STYLE = `body{margin:0;background:#fff;color:#000;font:16px/1.45 "Encode Sans",Arial,sans-serif}
main{max-width:1100px;margin:0 auto;padding:20px}
h1{font:400 34px/1.2 Newsreader,Georgia,serif;margin:0 0 4px}
h2{font-size:16px;margin:24px 0 4px}
.says{font:italic 400 19px/1.3 Newsreader,Georgia,serif;margin:0 0 12px}
.cover{font-size:13px;color:#444;margin:0 0 8px}
figure{margin:0}svg{width:100%;height:auto}
ul{margin:0;padding-left:20px}
dl{display:grid;grid-template-columns:max-content 1fr;gap:2px 16px;margin:24px 0 0}
dt{color:#444}dd{margin:0}
.moment{border-top:1px solid #bbb;padding:16px 0}
.moment>h2:first-child{font:400 24px/1.2 Newsreader,Georgia,serif;margin:0}
video{width:100%;max-height:80vh;background:#000;display:block;margin:8px 0}
.small{max-width:520px}`;
