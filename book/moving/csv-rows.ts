/** The cells of a CSV text (RFC 4180, also with `;` or tabs, a byte order mark and any line end), or what is wrong. */
export function csvRowsOf(text: string): string[][] | { readonly sentence: string } {
  const plain = text.replace(/^\uFEFF/, '');
  const separator = separatorOf(plain.split(/\r\n|\n|\r/, 1)[0] ?? '');
  const rows: string[][] = [];
  let row: string[] = [];
  let cell = '';
  let isQuoted = false;
  const endRow = () => {
    row.push(cell);
    cell = '';
    if (row.some(each => each.trim() !== '')) rows.push(row);
    row = [];
  };
  for (let at = 0; at < plain.length; at += 1) {
    const letter = plain[at]!;
    if (isQuoted) {
      if (letter !== '"') cell += letter;
      else if (plain[at + 1] === '"') {
        cell += '"';
        at += 1;
      } else isQuoted = false;
    } else if (letter === '"' && cell.trim() === '') {
      cell = '';
      isQuoted = true;
    } else if (letter === separator) {
      row.push(cell);
      cell = '';
    } else if (letter === '\n' || letter === '\r') {
      if (letter === '\r' && plain[at + 1] === '\n') at += 1;
      endRow();
    } else cell += letter;
  }
  if (isQuoted) return { sentence: `Line ${rows.length + 1}: a quotation mark is opened and never closed.` };
  endRow();
  return rows;
}

function separatorOf(firstLine: string): string {
  const counts = [',', ';', '\t'].map(each => [each, firstLine.split(each).length] as const);
  return counts.reduce((best, each) => (each[1] > best[1] ? each : best))[0];
}
