import type { Drill, Team } from '@icewright/book';
import { drawFreezeAt, freezeHeight, svgFile } from '@icewright/picture';
import { drillMarkup } from '../../drills/out/handout-page.ts';
import { escaped, pageOf, paragraphOf } from '../../drills/out/page-markup.ts';
import { clockText } from '../../film/film-clock.ts';
import { gameTitle } from '../../film/game-words.ts';
import { verdictSaid } from '../../film/moments/moment-glyph.tsx';
import { personWords } from '../../film/people-words.ts';
import { daySaid } from '../../parts/figures.ts';
import { freezeDrawnOf } from '../sheet/freeze-drawn.ts';
import { lineOf } from '../shown-item.ts';
import type { HisItem } from './his-items.ts';
import { withoutOthers } from './without-others.ts';

export interface PlayerPageWish {
  readonly team: Team;
  readonly skaterId: keyof Team['skaters'];
  readonly items: readonly HisItem[];
  /** The film of an item, where it is at hand and wanted. */
  readonly clips: ReadonlyMap<string, Blob>;
  readonly drill: Drill | undefined;
  /** Others are named as they were written; else they are numbers. */
  readonly withNames: boolean;
}

/** One HTML file for one player: his moments with their words and film, and one drill. The speaker's notes are not in it. */
export async function playerPage(wish: PlayerPageWish): Promise<string> {
  const { team, skaterId, items, clips, drill } = wish;
  const said = (words: string) => (wish.withNames ? words : withoutOthers(words, team, skaterId));
  const skater = team.skaters[skaterId];
  const title = skater === undefined ? 'Your moments' : `${skater.number} ${skater.name}`;
  const moments = await Promise.all(
    items.map(async (item, index) =>
      momentMarkup(wish, item, index, said, await clipMarkup(clips.get(item.id))),
    ),
  );
  const spoken: Drill | undefined = drill && {
    ...drill,
    title: said(drill.title),
    says: said(drill.says),
    keyPoints: said(drill.keyPoints),
  };
  return pageOf(title, [
    `<h1>${escaped(title)}</h1>`,
    paragraphOf(PRIVACY, 'cover'),
    ...moments,
    ...(spoken === undefined
      ? []
      : [
          `<section class="moment"><h2>${escaped(spoken.title)}</h2>`,
          ...(await drillMarkup(spoken, { ...team, skaters: {} })),
          '</section>',
        ]),
  ]);
}

/** Said on the page itself: it travels further than whoever made it. */
export const PRIVACY =
  'For you alone. Others can be seen in the film, perhaps minors: do not pass it on and do not put it anywhere.';

function momentMarkup(
  { team, skaterId }: PlayerPageWish,
  shown: HisItem,
  index: number,
  said: (words: string) => string,
  clip: string,
): string {
  const { item, game } = shown;
  const moment = item.of.kind === 'moment' ? game.moments[item.of.moment] : undefined;
  const habit = shown.habitId ? team.habits[shown.habitId] : undefined;
  const freeze = shown.freezeId && game.freezes[shown.freezeId];
  const drawn = freeze ? freezeDrawnOf(freeze, game, team, placed => personWords(placed, team)) : undefined;
  const which = [
    moment && verdictSaid(moment.verdict),
    habit?.title,
    clockText(shown.filmTimeS, 1),
    `${gameTitle(game)}, ${daySaid(game.day)}`,
  ];
  return [
    `<section class="moment"><h2>${escaped(said(lineOf(shown, team)))}</h2>`,
    paragraphOf(which.filter(Boolean).join(', '), 'cover'),
    paragraphOf(said(item.asks), 'says'),
    paragraphOf(said(shown.seen)),
    clip,
    drawn === undefined
      ? ''
      : `<figure class="small">${svgFile(
          pen => drawFreezeAt(pen, drawn, { left: 0, top: 0, width: DRAWING_PX }),
          {
            viewBox: [0, 0, DRAWING_PX, freezeHeight(drawn, DRAWING_PX)],
            label: `Where everybody stood, you are ${team.skaters[skaterId]?.number ?? 'there'}. Places are estimates`,
            idPrefix: `freeze-${index}`,
          },
        )}</figure>`,
    '</section>',
  ]
    .filter(part => part !== '')
    .join('\n');
}

/** Small, so that its letters of eight px are twice as large where it is shown. */
const DRAWING_PX = 260;

async function clipMarkup(clip: Blob | undefined): Promise<string> {
  if (clip === undefined) return '';
  const address = await new Promise<string>((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result));
    reader.onerror = () => reject(new Error('the film could not be put in'));
    reader.readAsDataURL(clip);
  });
  return `<video controls playsinline preload="metadata" src="${address}"></video>`;
}
