import type { Game, Mark } from '@icewright/book';
import { USUAL_SIZE_M } from '@icewright/picture';
import { useEffect, useRef } from 'react';
import { Act } from '../../parts/act.tsx';
import { WordsField } from '../../parts/field.tsx';
import { LENGTH_UNIT, type Lengths } from '../../parts/figures.ts';
import { edit } from '../../shell/book.ts';
import { frameAtTime, timeOfFrame } from '../frame-index.ts';
import { findFreeze } from '../make-freeze.ts';
import type { Player } from '../player.ts';
import { usePlayerPart } from '../use-player.ts';
import type { FilmTie } from './film-tie.ts';
import { SLACK_S } from './mark-places.ts';
import { markSaid, whenSaid, whoIsAt } from './mark-words.ts';
import type { MarksDesk } from './use-marks-desk.ts';

/** What the chosen mark says, how large it is, when it is seen. */
export function MarkChosen({
  id,
  mark,
  gameId,
  game,
  player,
  tie,
  lengths,
  desk,
}: {
  readonly id: string;
  readonly mark: Mark;
  readonly gameId: string;
  readonly game: Game;
  readonly player: Player;
  readonly tie: FilmTie;
  readonly lengths: Lengths;
  readonly desk: MarksDesk;
}) {
  const { index } = player.film;
  const frameIndex = usePlayerPart(player, state => state.frameIndex);
  const usualM = USUAL_SIZE_M[mark.kind];
  const box = useRef<HTMLDivElement>(null);
  // A text is written where it was laid: the words come next.
  // biome-ignore lint/correctness/useExhaustiveDependencies: with another mark, not with every letter
  useEffect(() => {
    if (mark.kind === 'text' && mark.text === '')
      box.current?.querySelector('input')?.focus({ preventScroll: true });
  }, [id]);
  const hereS = timeOfFrame(index, frameIndex);
  const hereFreeze = findFreeze(game, mark.film, frameIndex);
  return (
    <div className="mark-chosen" ref={box}>
      <p>
        <b className="b">{markSaid(mark, game)}</b>{' '}
        <span className="q2">
          {whenSaid(mark, game.freezes)}
          {tiedWords(mark, player, tie)}
        </span>
      </p>
      <div className="mark-fields">
        <WordsField
          label="Words"
          voice="words"
          value={mark.text}
          maxLength={80}
          onChange={words => edit(gameId).text(['marks', id, 'text'], words)}
        />
        {usualM !== undefined && (
          <SizeField
            says={`${mark.kind === 'lane' ? 'Width' : 'Radius'}, ${LENGTH_UNIT[lengths]}`}
            sizeM={mark.sizeM ?? usualM}
            lengths={lengths}
            onSize={sizeM => desk.write.set(id, { sizeM }, 'keys')}
          />
        )}
        {mark.freeze ? (
          <Act
            notNow={goneAfter(mark, game)}
            onPress={() => {
              const atS = game.freezes[mark.freeze!]?.filmTimeS ?? mark.fromS;
              desk.write.tieToFreeze(id, undefined);
              desk.write.set(id, { fromS: Math.max(0, atS - 1), toS: Math.min(index.endS, atS + 1) }, 'keys');
            }}
          >
            Also before and after
          </Act>
        ) : (
          <>
            <Act onPress={() => desk.write.set(id, { fromS: hereS, toS: Math.max(mark.toS, hereS) })}>
              From this picture
            </Act>
            <Act onPress={() => desk.write.set(id, { toS: hereS, fromS: Math.min(mark.fromS, hereS) })}>
              To this picture
            </Act>
            {hereFreeze && (
              <Act onPress={() => desk.write.tieToFreeze(id, hereFreeze)}>Only while this freeze stands</Act>
            )}
          </>
        )}
        <Act
          onPress={() => {
            desk.write.remove(id);
            desk.choose(undefined);
          }}
        >
          Take it out
        </Act>
      </div>
    </div>
  );
}

const FEET_IN_A_METRE = 1 / 0.3048;

function SizeField({
  says,
  sizeM,
  lengths,
  onSize,
}: {
  readonly says: string;
  readonly sizeM: number;
  readonly lengths: Lengths;
  readonly onSize: (sizeM: number) => void;
}) {
  const perM = lengths === 'metres' ? 1 : FEET_IN_A_METRE;
  return (
    <label className="field">
      <span className="label">{says}</span>
      <input
        type="number"
        className="entry mark-size"
        min={0.2 * perM}
        max={20 * perM}
        step={lengths === 'metres' ? 0.1 : 0.5}
        value={Math.round(sizeM * perM * 10) / 10}
        onChange={event => {
          const size = event.target.valueAsNumber / perM;
          if (size >= 0.2 && size <= 20) onSize(size);
        }}
      />
    </label>
  );
}

/** On how many of its pictures a mark can be drawn, where that is not all of them. */
const tiedWords = (mark: Mark, player: Player, tie: FilmTie): string => {
  if (mark.freeze) return '';
  const { index } = player.film;
  const first = frameAtTime(index, mark.fromS + SLACK_S);
  const last = frameAtTime(index, mark.toS + SLACK_S);
  const all = last - first + 1;
  let tied = 0;
  for (let at = first; at <= last; at++) if (tie.fitAt(at)) tied++;
  return tied === all
    ? ''
    : `, but only ${tied} of these ${all} pictures ${tied === 1 ? 'is' : 'are'} tied to the ice: carry the pins through them`;
};

/** A mark on somebody who is placed in a freeze alone must not go on where he was: nobody knows where he is then. */
const goneAfter = (mark: Mark, game: Game): string | undefined => {
  const alone = mark.at.find(place => place.placed && !place.track);
  return (
    alone &&
    `${whoIsAt(alone, game) ?? 'the skater'} is known in this freeze alone: follow him through the film first`
  );
};
