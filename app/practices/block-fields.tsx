import type { Team } from '@icewright/book';
import { Link } from 'wouter';
import { Act } from '../parts/act.tsx';
import { ChoiceField, ValueField, WordsField } from '../parts/field.tsx';
import { named } from '../parts/named.ts';
import { addressOfDrill, addressOfFreeze, addressOfMoment } from '../shell/addresses.ts';
import { type Editing, endStep } from '../shell/book.ts';
import { entriesOf, type Season } from '../shell/season.ts';
import { wordsThatFollow } from './block-words.ts';
import type { Schedule } from './schedule.ts';

const WORDS = [
  ['says', 'What the skaters hear'],
  ['leads', 'Leads'],
  ['groups', 'Groups'],
  ['ice', 'Ice'],
  ['pucks', 'Pucks'],
] as const;

/** Everything about one block, beside the plan. */
export function BlockFields(props: {
  readonly team: Team;
  readonly season: Season;
  readonly schedule: Schedule;
  readonly practiceId: string;
  readonly blockId: string;
  readonly editing: Editing;
  readonly onRemove: () => void;
}) {
  const { team, season, schedule, blockId, editing } = props;
  const index = schedule.blocks.findIndex(({ id }) => id === blockId);
  const block = schedule.blocks[index]?.block;
  if (block === undefined) return null;
  const at = (key: string) => ['blocks', blockId, key];
  const drills = entriesOf(team, 'drill').sort(([, a], [, b]) => a.title.localeCompare(b.title));
  const taken = block.drill && team.contents[block.drill];
  return (
    <section className="sec block-fields">
      <h2>
        {named(block.title, 'block')}{' '}
        <span className="q3">
          block {index + 1}, {block.minutes} minutes
        </span>
      </h2>
      <WayBack season={season} drillId={block.drill} isTakenOut={taken?.removed === true} />
      <WordsField
        label="Name"
        voice="words"
        value={block.title}
        onChange={value => editing.text(at('title'), value)}
      />
      <div className="pair">
        <ValueField
          type="number"
          label="Minutes"
          min={1}
          max={120}
          value={String(block.minutes)}
          onChange={value => editing.set(at('minutes'), Number(value))}
        />
        <ValueField
          type="number"
          label="Then to change over"
          unit="min"
          min={0}
          max={20}
          value={String(block.changeoverMinutes)}
          onChange={value => editing.set(at('changeoverMinutes'), Number(value))}
        />
      </div>
      <ChoiceField
        label="Drill"
        value={block.drill ?? ''}
        choices={[
          { value: '', said: 'none: a talk, a stretch, free ice' },
          ...drills.map(([id, entry]) => ({ value: id, said: entry.title })),
          ...(block.drill && taken?.removed
            ? [{ value: block.drill, said: `${taken.title}, taken out of the library` }]
            : []),
        ]}
        onChange={value => {
          endStep(props.practiceId);
          editing.transact(() => {
            if (value === '') editing.remove(at('drill'));
            else editing.set(at('drill'), value);
            const drillOf = (id: string | undefined) =>
              id === undefined ? undefined : season.drills.get(id);
            const to = drillOf(value);
            // One that could not be opened has no words to give.
            if (value !== '' && to === undefined) return;
            const words = wordsThatFollow(block, drillOf(block.drill), to);
            for (const [key, said] of Object.entries(words)) editing.text(at(key), said);
          });
        }}
      />
      {WORDS.map(([key, label]) => (
        <WordsField
          key={key}
          label={label}
          voice={key === 'says' ? 'words' : 'figures'}
          value={block[key]}
          onChange={value => editing.text(at(key), value)}
        />
      ))}
      <WordsField
        label="Key points, one a line"
        rows={4}
        value={block.keyPoints}
        onChange={value => editing.text(at('keyPoints'), value)}
      />
      <p className="block-acts">
        <Act
          onPress={() => editing.move(['blocks'], blockId, index - 1)}
          notNow={index === 0 ? 'it is the first' : undefined}
        >
          Earlier
        </Act>
        <Act
          onPress={() => editing.move(['blocks'], blockId, index + 1)}
          notNow={index === schedule.blocks.length - 1 ? 'it is the last' : undefined}
        >
          Later
        </Act>
        <Act bare onPress={props.onRemove}>
          Take out
        </Act>
      </p>
    </section>
  );
}

/** From the block to its drill, from the drill to the freeze it was made from, from the freeze to the film. */
function WayBack({
  season,
  drillId,
  isTakenOut,
}: {
  readonly season: Season;
  readonly drillId: string | undefined;
  readonly isTakenOut: boolean;
}) {
  if (drillId === undefined) return null;
  const drill = season.drills.get(drillId);
  const from = drill?.from;
  const game = from === undefined ? undefined : season.games.find(([id]) => id === from.game)?.[1];
  const moment =
    from === undefined || game === undefined
      ? undefined
      : Object.entries(game.moments).find(([, one]) => one.freeze === from.freeze);
  return (
    <p className="way-back q2">
      <Link href={addressOfDrill(drillId)}>{drill?.title ?? 'The drill'}</Link>
      {isTakenOut && ', taken out of the library'}
      {from !== undefined && (
        <>
          , made from{' '}
          <Link href={addressOfFreeze(from.game, from.freeze)}>
            {from.said === '' ? 'a freeze' : from.said}
          </Link>
        </>
      )}
      {from !== undefined && moment !== undefined && (
        <>
          {' '}
          (<Link href={addressOfMoment(from.game, moment[0])}>the clip</Link>)
        </>
      )}
    </p>
  );
}
