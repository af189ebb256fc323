import { ValueField } from '../../parts/field.tsx';
import { edit, endStep } from '../../shell/book.ts';

/** How long playback stands at a freeze. */
export function HoldField({
  gameId,
  freezeId,
  holdS,
}: {
  readonly gameId: string;
  readonly freezeId: string;
  readonly holdS: number | undefined;
}) {
  const keep = (value: string) => {
    endStep(gameId);
    // Nought is kept: a hand that sets it is not overruled by the next mark.
    edit(gameId).set(['freezes', freezeId, 'holdS'], Number(value));
  };
  return (
    <div className="hold-field">
      <ValueField
        type="number"
        label="In playback it stands for"
        value={`${holdS ?? 0}`}
        min={0}
        max={600}
        step={0.5}
        unit="s"
        onChange={keep}
      />
    </div>
  );
}
