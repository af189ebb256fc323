import { inOrder, type Team } from '@icewright/book';
import type { ReactNode } from 'react';
import { Act } from '../../parts/act.tsx';
import { named } from '../../parts/named.ts';
import type { Situation } from '../moments/new-moment.ts';

/** The strengths that are most of a game; the others stand with the moment. */
const STRENGTHS = ['5v5', '5v4', '4v5', '4v4', '6v5'];
const PERIODS = [1, 2, 3, 4];

/** How the game stands while it is marked: one press each, and every moment marked from then on takes it. */
export function HowItStands({
  team,
  stands,
  onStands,
}: {
  readonly team: Team;
  readonly stands: Partial<Situation>;
  readonly onStands: (stands: Partial<Situation>) => void;
}) {
  const { score = { us: 0, them: 0 } } = stands;
  const choose = <Field extends keyof Situation>(field: Field, value: NonNullable<Situation[Field]>) => {
    const { [field]: was, ...rest } = stands;
    // Pressed again it is not said any more.
    onStands(was === value ? rest : { ...rest, [field]: value });
  };
  const goals = (side: 'us' | 'them', by: number) =>
    onStands({ ...stands, score: { ...score, [side]: Math.min(99, Math.max(0, score[side] + by)) } });
  return (
    <div className="how-it-stands">
      <Group says="Period">
        {PERIODS.map(one => (
          <Act key={one} isOn={stands.period === one} onPress={() => choose('period', one)}>
            {one === 4 ? 'overtime' : one}
          </Act>
        ))}
      </Group>
      <Group says="On the ice, us v them">
        {STRENGTHS.map(one => (
          <Act key={one} isOn={stands.strength === one} onPress={() => choose('strength', one)}>
            {one}
          </Act>
        ))}
      </Group>
      <Group says="Score, us : them">
        <Act label="A goal of ours less" onPress={() => goals('us', -1)}>
          −
        </Act>
        <Act label="A goal of ours" onPress={() => goals('us', 1)}>
          +
        </Act>
        <output className="num stands-score">{stands.score ? `${score.us} : ${score.them}` : '– : –'}</output>
        <Act label="A goal of theirs" onPress={() => goals('them', 1)}>
          +
        </Act>
        <Act label="A goal of theirs less" onPress={() => goals('them', -1)}>
          −
        </Act>
      </Group>
      {Object.keys(team.units).length > 0 && (
        <Group says="Our unit">
          {inOrder(team.units).map(([id, one]) => (
            <Act key={id} isOn={stands.unit === id} onPress={() => choose('unit', id)}>
              {named(one.title, 'unit')}
            </Act>
          ))}
        </Group>
      )}
    </div>
  );
}

const Group = ({ says, children }: { readonly says: string; readonly children: ReactNode }) => (
  <fieldset>
    <legend className="q2">{says}</legend>
    <div>{children}</div>
  </fieldset>
);
