import { STAND_TO_BEGIN_WITH } from '@icewright/engine';
import { Link } from 'wouter';
import { Act } from '../parts/act.tsx';
import { ChoiceField, ValueField, WordsField } from '../parts/field.tsx';
import { StateField } from '../parts/state-field.tsx';
import { addressOfFreeze, addressOfMoment } from '../shell/addresses.ts';
import type { Editing } from '../shell/book.ts';
import type { ShownItem } from './shown-item.ts';

type Stands = 'press' | 'clock' | 'no';

/** All that can be written and set of one item, beside the list. */
export function ItemFields(props: {
  readonly shown: ShownItem;
  readonly place: { readonly index: number; readonly count: number };
  readonly editing: Editing;
  readonly onMove: (toIndex: number) => void;
  readonly onRemove: () => void;
}) {
  const { shown, editing, place } = props;
  const { id, item } = shown;
  const at = (key: string) => ['items', id, key];
  const stands: Stands = item.stop === undefined ? 'no' : item.stop.seconds === undefined ? 'press' : 'clock';
  const setStands = (value: Stands) => {
    if (value === 'no') return editing.remove(at('stop'));
    const where = item.stop ?? (shown.state === 'there' ? shown : undefined);
    if (where === undefined) return;
    const { frameIndex, filmTimeS } = where;
    editing.set(at('stop'), {
      frameIndex,
      filmTimeS,
      ...(value === 'clock' ? { seconds: STAND_TO_BEGIN_WITH.value } : {}),
    });
  };
  return (
    <section className="sec block-fields item-fields" aria-label="This moment in the meeting">
      <WordsField
        label="What is said"
        voice="words"
        value={item.says}
        placeholder="One line; the team may read it"
        onChange={words => editing.text(at('says'), words)}
      />
      <WordsField
        label="The question for the group"
        voice="words"
        value={item.asks}
        onChange={words => editing.text(at('asks'), words)}
      />
      <WordsField
        label="Notes, for the speaker alone"
        rows={3}
        value={item.notes}
        onChange={words => editing.text(at('notes'), words)}
      />
      <div className="pair">
        <ChoiceField<Stands>
          label="The film"
          value={stands}
          choices={[
            { value: 'press', said: 'stands until pressed' },
            { value: 'clock', said: 'stands for seconds' },
            { value: 'no', said: 'runs through' },
          ]}
          onChange={setStands}
        />
        {item.stop?.seconds !== undefined && (
          <ValueField
            type="number"
            label="Stands"
            unit="s"
            min={1}
            max={600}
            value={String(item.stop.seconds)}
            onChange={value => editing.set(at('stop'), { ...item.stop, seconds: Number(value) })}
          />
        )}
        <ValueField
          type="number"
          label="Talk"
          unit="min"
          min={0}
          max={60}
          step={0.25}
          value={String(item.talkMinutes)}
          onChange={value => editing.set(at('talkMinutes'), Number(value))}
        />
      </div>
      <p className="block-acts">
        <Act
          onPress={() => props.onMove(place.index - 1)}
          notNow={place.index === 0 ? 'it is the first' : undefined}
        >
          Earlier
        </Act>
        <Act
          onPress={() => props.onMove(place.index + 1)}
          notNow={place.index === place.count - 1 ? 'it is the last' : undefined}
        >
          Later
        </Act>
        <StateField
          says="In the meeting"
          isOn={!item.hidden}
          on="shown"
          off="hidden, takes no time"
          onChange={isShown => editing.set(at('hidden'), !isShown)}
        />
        <Act bare onPress={props.onRemove}>
          Take out
        </Act>
      </p>
      <p className="q2">
        <Link
          href={
            item.of.kind === 'moment'
              ? addressOfMoment(item.of.game, item.of.moment)
              : addressOfFreeze(item.of.game, item.of.freeze)
          }
        >
          In the film room
        </Link>
      </p>
    </section>
  );
}
