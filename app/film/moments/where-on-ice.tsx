import type { Game, Moment, Team } from '@icewright/book';
import { boardsDistance, type IcePoint } from '@icewright/engine';
import { drawRink, rinkViewBox, svgParts } from '@icewright/picture';
import { useMemo } from 'react';
import { Act } from '../../parts/act.tsx';
import { lengthSaid } from '../../parts/figures.ts';
import { edit } from '../../shell/book.ts';
import { rinkOfSheet, sheetOfGame } from '../fit-of-freeze.ts';

/** Where on the ice the moment was: a press on the sheet, or arrows that move the place by a metre. */
export function WhereOnIce({
  gameId,
  id,
  moment,
  game,
  team,
}: {
  readonly gameId: string;
  readonly id: string;
  readonly moment: Moment;
  readonly game: Game;
  readonly team: Team;
}) {
  const rink = rinkOfSheet(sheetOfGame(game, team));
  const ground = useMemo(() => svgParts(pen => drawRink(pen, rink), { idPrefix: `where-${id}` }), [rink, id]);
  const [x, y, width, height] = rinkViewBox(rink);
  const put = (at: IcePoint) => {
    if (boardsDistance(rink.boards, at) >= 0)
      edit(gameId).set(['moments', id, 'atM'], { xM: tenth(at.xM), yM: tenth(at.yM) });
  };
  const { atM } = moment;
  const said =
    atM === undefined
      ? 'not said'
      : `${lengthSaid(Math.abs(atM.xM), team.lengths)} ${atM.xM < 0 ? 'left' : 'right'} of the centre line, ${lengthSaid(Math.abs(atM.yM), team.lengths)} ${atM.yM < 0 ? 'below' : 'above'} the middle`;
  return (
    <div className="where-on-ice">
      <p className="q2">
        Where <span className="q3">press the place, or move it with the arrows</span>
      </p>
      <div
        className="where-sheet"
        role="slider"
        tabIndex={0}
        aria-label="Where on the ice it was"
        aria-valuenow={atM?.xM ?? 0}
        aria-valuetext={said}
        onPointerDown={event => {
          const box = event.currentTarget.getBoundingClientRect();
          put({
            xM: x + ((event.clientX - box.left) / box.width) * width,
            yM: -(y + ((event.clientY - box.top) / box.height) * height),
          });
        }}
        onKeyDown={event => {
          const step = STEPS[event.key];
          if (!step) return;
          event.preventDefault();
          event.stopPropagation();
          put({ xM: (atM?.xM ?? 0) + step.xM, yM: (atM?.yM ?? 0) + step.yM });
        }}
      >
        <svg className="ice-svg" viewBox={`${x} ${y} ${width} ${height}`} aria-hidden="true">
          {/* biome-ignore lint/security/noDangerouslySetInnerHtml: markup of our own pen, with all words escaped there */}
          <g dangerouslySetInnerHTML={{ __html: ground }} />
          {atM && <circle className="where-at" cx={atM.xM} cy={-atM.yM} r={1.1} />}
        </svg>
      </div>
      {atM && (
        <Act bare onPress={() => edit(gameId).remove(['moments', id, 'atM'])}>
          Take the place out
        </Act>
      )}
    </div>
  );
}

const STEPS: Readonly<Record<string, IcePoint>> = {
  ArrowLeft: { xM: -1, yM: 0 },
  ArrowRight: { xM: 1, yM: 0 },
  ArrowUp: { xM: 0, yM: 1 },
  ArrowDown: { xM: 0, yM: -1 },
};

const tenth = (metres: number): number => Math.round(metres * 10) / 10;
