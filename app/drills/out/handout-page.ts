import type { Drill, Team } from '@icewright/book';
import { STANDING_CAUTIONS } from '@icewright/picture';
import { escaped, listOf, pageOf, paragraphOf } from './page-markup.ts';
import { drillSvg } from './picture-files.ts';
import { sheetOf } from './sheet-of.ts';

/** The drill as one HTML file that needs nothing beside it: for a player whom no link reaches. */
export async function handoutPage(
  drill: Drill,
  team: Pick<Team, 'lengths' | 'skaters'>,
  cover: string,
): Promise<string> {
  return pageOf(drill.title, [
    paragraphOf(cover, 'cover'),
    `<h1>${escaped(drill.title)}</h1>`,
    ...(await drillMarkup(drill, team)),
  ]);
}

/** What the skaters hear, the drawing, key points, figures and cautions. */
export async function drillMarkup(
  drill: Drill,
  team: Pick<Team, 'lengths' | 'skaters'>,
): Promise<readonly string[]> {
  const { text: svg } = await drillSvg(drill, team.lengths, true);
  const sheet = sheetOf(drill, team, '');
  const figures = sheet.figures.map(
    ({ name, words }) => `<dt>${escaped(name)}</dt><dd>${escaped(words)}</dd>`,
  );
  return [
    paragraphOf(sheet.says, 'says'),
    `<figure>${svg}</figure>`,
    listOf('Key points', sheet.keyPoints),
    `<dl>${figures.join('')}</dl>`,
    listOf('Before the first whistle', [...sheet.cautions, ...STANDING_CAUTIONS]),
  ];
}
