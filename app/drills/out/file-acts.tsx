import { type DrillToExport, exportDrills, type Team } from '@icewright/book';
import type { Paper } from '@icewright/picture';
import { useState } from 'react';
import { Act } from '../../parts/act.tsx';
import { ChoiceField } from '../../parts/field.tsx';
import { countSaid } from '../../parts/figures.ts';
import { named } from '../../parts/named.ts';
import { PAPER_CHOICES } from '../../parts/paper-choices.ts';
import { saveFile } from '../../parts/save-file.ts';
import { drillSchemaAddress } from '../../shell/server.ts';
import { OutRow } from './out-row.tsx';
import { coverOf } from './sheet-of.ts';

type Kind = 'SVG' | 'PNG' | 'PDF' | 'page' | 'drill file';

interface Said {
  readonly kind: Kind;
  readonly failed: boolean;
  readonly words: string;
}

/** Pictures, paper, a page and the drill file: each made when it is asked for, and saved. */
export function FileActs({
  drills,
  team,
}: {
  readonly drills: readonly DrillToExport[];
  readonly team: Team;
}) {
  const [paper, setPaper] = useState<Paper>('a4');
  const [working, setWorking] = useState<Kind | null>(null);
  const [said, setSaid] = useState<Said | null>(null);
  const { drill } = drills[0]!;
  const title = named(drill.title, 'drill');
  const several = drills.length > 1 ? `${title} and ${countSaid(drills.length - 1, 'other')}` : title;
  const make = async (kind: Kind, fileName: string, blobOf: () => Promise<Blob>) => {
    setWorking(kind);
    setSaid(null);
    try {
      saveFile(await blobOf(), fileName);
      setSaid({ kind, failed: false, words: `Saved as ${fileName}.` });
    } catch (error) {
      setSaid({
        kind,
        failed: true,
        words: `The ${kind} could not be made: ${(error as Error).message}. Nothing was changed.`,
      });
    }
    setWorking(null);
  };
  const act = (kind: Kind, words: string, fileName: string, blobOf: () => Promise<Blob>) => (
    <Act working={working === kind} onPress={() => void make(kind, fileName, blobOf)}>
      {words}
    </Act>
  );
  // Beside the act that was pressed.
  const saidOf = (...kinds: readonly Kind[]) =>
    said !== null &&
    kinds.includes(said.kind) && (
      <span className={said.failed ? 'warm' : 'q2'} role={said.failed ? 'alert' : 'status'}>
        {said.words}
      </span>
    );
  return (
    <>
      <OutRow name="Picture" says="this drill with its key, black on white">
        {act('SVG', 'Sharp at any size (SVG)', `${title}.svg`, async () => {
          const { drillSvg } = await import('./picture-files.ts');
          return new Blob([(await drillSvg(drill, team.lengths)).text], { type: 'image/svg+xml' });
        })}
        {act('PNG', 'Picture (PNG)', `${title}.png`, async () =>
          (await import('./picture-files.ts')).drillPng(drill, team.lengths),
        )}
        {saidOf('SVG', 'PNG')}
      </OutRow>
      <OutRow
        name="Paper"
        says={
          drills.length > 1
            ? `a booklet of ${drills.length} drills`
            : 'drawing, findings, key points, the rep over time, cautions; a second page where one is not enough'
        }
      >
        <ChoiceField label="paper" labelHidden value={paper} choices={PAPER_CHOICES} onChange={setPaper} />
        {act(
          'PDF',
          drills.length > 1 ? 'Booklet to print (PDF)' : 'Page to print (PDF)',
          `${several}.pdf`,
          async () =>
            (await import('./booklet.ts')).bookletPdf({
              drills: drills.map(each => each.drill),
              team,
              cover: coverOf(team),
              paper,
              title: several,
            }),
        )}
        {drills.length === 1 && <Act onPress={() => window.print()}>Print</Act>}
        {saidOf('PDF')}
      </OutRow>
      <OutRow name="Page" says="one HTML file that opens anywhere, for a player whom no link reaches">
        {act('page', 'One page (HTML)', `${title}.html`, async () => {
          const { handoutPage } = await import('./handout-page.ts');
          return new Blob([await handoutPage(drill, team, '')], { type: 'text/html' });
        })}
        {saidOf('page')}
      </OutRow>
      <OutRow
        name="Drill file"
        says={
          <>
            for another staff that works with Icewright; no names of yours are in it.{' '}
            <a href={drillSchemaAddress} target="_blank" rel="noreferrer">
              What its fields mean
            </a>
          </>
        }
      >
        {act(
          'drill file',
          'Drill file (JSON)',
          `${several}.icewright-drill.json`,
          async () => new Blob([exportDrills(drills, team.habits)], { type: 'application/json' }),
        )}
        {saidOf('drill file')}
      </OutRow>
    </>
  );
}
