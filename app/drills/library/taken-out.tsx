import type { Team } from '@icewright/book';
import { useState } from 'react';
import { Link } from 'wouter';
import { Act } from '../../parts/act.tsx';
import { countSaid } from '../../parts/figures.ts';
import { named } from '../../parts/named.ts';
import { addressOfDrill } from '../../shell/addresses.ts';
import { setRemoved } from '../../shell/book.ts';
import { entriesTakenOut } from '../../shell/season.ts';

/** The drills that were taken out of the library, at its foot: none of them is lost, each can be read and put back. */
export function TakenOut({ team }: { readonly team: Team }) {
  const [isOpen, setOpen] = useState(false);
  const gone = entriesTakenOut(team, 'drill').sort(([, a], [, b]) => a.title.localeCompare(b.title));
  if (gone.length === 0) return null;
  return (
    <section className="taken-out" aria-label="Taken out">
      <Act bare opens={isOpen} onPress={() => setOpen(!isOpen)}>
        {countSaid(gone.length, 'drill')} taken out
      </Act>
      {isOpen && (
        <ul>
          {gone.map(([id, entry]) => {
            const title = named(entry.title, 'drill');
            return (
              <li key={id}>
                <Link href={addressOfDrill(id)} className="w">
                  {title}
                </Link>
                <Act label={`Put ${title} back`} onPress={() => setRemoved(id, false)}>
                  Put back
                </Act>
              </li>
            );
          })}
        </ul>
      )}
    </section>
  );
}
