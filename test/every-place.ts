import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { demoValues } from '../server/demo/demo-values.ts';
import { appOfFile } from './app-of-file.ts';
import { seriousViolations } from './axe.ts';
import { shot, withPage } from './with-page.ts';

export interface PageSize {
  readonly width: number;
  readonly height: number;
  readonly touch: boolean;
}

const NOWHERE = { hash: 'none', byteCount: 1 };
const demo = demoValues(
  { hunt: NOWHERE, join: NOWHERE },
  { today: '2026-11-25', at: '2026-11-25T12:00:00Z' },
);
const idsOf = (kind: string) => demo.filter(({ value }) => value.kind === kind).map(({ id }) => id);
const team = demo.find(({ value }) => value.kind === 'team')!.value;

/** Each page with what must stand on it before it is looked at. Film is in the dark theme, all else in the light one. */
const PAGES: readonly (readonly [path: string, there: string])[] = [
  ['/film', '.games tbody tr'],
  ['/film/game-hunt', '.moments tbody tr'],
  ['/film/game-hunt?freeze=ourLine', '[data-testid="held"]'],
  ['/film/game-join?freeze=redLine', '[data-testid="held"]'],
  ['/film/meeting/meeting-together', '.item-head'],
  ['/film/meeting/meeting-together/speak', '.speak-next .still canvas[data-frame]'],
  ['/film/meeting/meeting-together/sheet', '.card-paper svg'],
  ['/habits', '.habit-rate'],
  ...Object.keys('habits' in team ? team.habits : {}).map(id => [`/habits/${id}`, '.say'] as const),
  ['/drills', '.postcard svg'],
  ...idsOf('drill').map(id => [`/drills/${id}`, '[aria-label="Time of the rep"]'] as const),
  ['/practices', '.practice-list > li'],
  ...idsOf('practice').flatMap(id => [
    [`/practices/${id}`, '[data-item]'] as const,
    [`/practices/${id}/card`, '.card-paper svg'] as const,
  ]),
  ['/ledger', '.ledger-line svg'],
  ['/team', '.roster tbody tr'],
  ['/figures', 'table tbody tr'],
];

/** Of pages that differ only by what lies in them one is enough at the smaller sizes, and for the slow look of the rules. */
const DIFFERENT = PAGES.filter(
  ([path], index) => PAGES.findIndex(([other]) => kindOf(other) === kindOf(path)) === index,
);

/** One size a file, so that two browsers can look at once: every page at the largest, one of each kind at the others and by WCAG. */
export const lookAtEveryPlace = ({ width, height, touch }: PageSize): void => {
  const app = appOfFile();

  describe('every place and everything that can be opened: theme, width, WCAG 2.2 AA, fingers, console', () => {
    it(`at ${width} × ${height}`, { timeout: 300_000 }, () =>
      withPage(
        app,
        `places ${width}`,
        async page => {
          const wrong: string[] = [];
          for (const each of width === 1440 ? PAGES : DIFFERENT) {
            const [path, there] = each;
            if (DIFFERENT.includes(each)) await page.goto(`${app.url}${path}`);
            else expect(await leadsTo(page, path), path).toBe(true);
            await page.locator(there).first().waitFor();
            const found = [
              ...(await wrongTheme(page, path)),
              ...(await tooWide(page)),
              ...(DIFFERENT.includes(each) ? await seriousViolations(page) : []),
              ...(touch ? await tooSmallForAFinger(page) : []),
            ];
            wrong.push(...found.map(fault => `${path}: ${fault}`));
            await shot(page, `${width} ${path}`);
          }
          expect(wrong).toEqual([]);
        },
        { size: { width, height }, touch },
      ),
    );
  });
};

/** To another page without loading the app anew, as a press on a link leads there: nothing of the one before is left. */
const leadsTo = (page: Page, path: string): Promise<boolean> =>
  page.evaluate(async to => {
    const before = document.querySelector('#work h1');
    history.pushState(null, '', to);
    await new Promise(resolve => setTimeout(resolve, 0));
    return before !== null && !before.isConnected;
  }, path);

const wrongTheme = async (page: Page, path: string): Promise<string[]> => {
  const theme = await page.evaluate(() => document.documentElement.dataset.theme);
  return theme === (path.startsWith('/film') ? 'film' : 'ice') ? [] : [`in the theme of ${theme}`];
};

/** What reaches over the right edge of the page and makes it scroll sideways. */
const tooWide = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const width = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth <= width) return [];
    return [...document.querySelectorAll('body *')]
      .filter(one => one.getBoundingClientRect().right > width + 1)
      .map(one => `${one.tagName} ${one.className}`)
      .slice(0, 5);
  });

/** Acts lower than 44 px; figures and links within words are left out, as WCAG 2.5.8 does. */
const tooSmallForAFinger = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [
      ...document.querySelectorAll<HTMLElement>(
        'button.act, a.act, input.entry, select.entry, .strip a, a.back',
      ),
    ]
      .filter(one => one.checkVisibility() && one.getBoundingClientRect().height < 44)
      .map(one => `${one.className}: ${one.textContent?.slice(0, 30)}`),
  );

function kindOf(path: string): string {
  const [, place, id, more, view] = path.split(/[/?]/);
  return [place, id === undefined ? '' : 'one', more?.replace(/=.*/, '') ?? '', view ?? ''].join(' ');
}
