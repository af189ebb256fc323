import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drill, DrillAct } from '../documents/drill.ts';
import { newDocument } from '../ydoc/new-document.ts';
import { sampleAct, sampleDrill, sampleSpot } from '../ydoc/sample-documents.ts';
import { readDocument } from '../ydoc/snapshot.ts';
import { drillFileLimit, drillFileSchema } from './drill-file.ts';
import { exportDrills } from './export-drills.ts';
import { type ImportedDrills, importDrills } from './import-drills.ts';
import { stableJson } from './stable-json.ts';

const at = (xM: number, yM: number) => ({ xM, yM });
const s1 = 's1' as never;
/** One act of every kind and one cue of every kind. */
const ACTS = [
  { ...sampleAct(1), cue: { on: 'whistle' } },
  { ...sampleAct(2), kind: 'carry', cue: { on: 'after', seconds: 2 } },
  { rank: 3, kind: 'pass', toSpot: s1, way: 'saucer', speedMps: 14, cue: { on: 'receive', spot: s1 } },
  { rank: 4, kind: 'shoot', atEnd: 'plusX', speedMps: 25, cue: { on: 'puckCrosses', line: 'centreLine' } },
  { rank: 5, kind: 'hold', seconds: 1, cue: { on: 'spotCrosses', spot: s1, line: 'blueLinePlusX' } },
  {
    rank: 6,
    kind: 'chase',
    whom: s1,
    effortRatio: 1,
    cue: { on: 'reaches', spot: s1, atM: at(1, 1), withinM: 2 },
  },
  { rank: 7, kind: 'steal', whom: s1, effortRatio: 1 },
  { rank: 8, kind: 'gap', whom: s1, distanceM: 3 },
  { rank: 9, kind: 'screen', from: s1, alongRatio: 0.5 },
  { rank: 10, kind: 'pickUp', effortRatio: 0.8 },
  { rank: 11, kind: 'turn', angleRad: 3, effortRatio: 0.7 },
  { rank: 12, kind: 'face', whom: s1 },
  { rank: 13, kind: 'leave' },
  { rank: 14, kind: 'stop' },
  { rank: 15, kind: 'pivot' },
] as readonly DrillAct[];

const full = (): Drill =>
  ({
    ...sampleDrill(),
    title: 'Everything at once',
    habits: ['h1', 'gone'],
    from: { kind: 'freeze', game: 'secret-game', freeze: 'f1', said: 'The puck is over our line' },
    variantOf: { drill: 'plain', as: 'harder' },
    rink: { preset: 'own', lengthM: 40, widthM: 20, cornerRadiusM: 6 },
    spots: {
      s1: sampleSpot(1, Object.fromEntries(ACTS.map(act => [`a${act.rank}`, act]))),
      s2: { ...sampleSpot(2), kind: 'goalie', side: 'them' },
    },
    pucks: { p1: { atM: at(2, 2), ownerSpot: 's1', count: 12 } },
    gear: { n1: { kind: 'smallNet', atM: at(5, 5), facingRad: 1 } },
    games: {
      g1: {
        rank: 1,
        fromM: at(-5, -5),
        toM: at(5, 5),
        usCount: 3,
        themCount: 3,
        nets: ['n1'],
        resets: 'coach',
        shiftS: 45,
      },
    },
    flow: { next: { on: 'clear', line: 'centreLine' }, ends: 'byTurns', pauseS: 4, goesTo: { s1: 's2' } },
  }) as unknown as Drill;

const habits = { h1: { title: 'First forward back' } };
const to = { habits, madeAt: '2026-11-28T12:00:00Z' };
const both = () =>
  exportDrills(
    [
      { id: 'plain', drill: sampleDrill() },
      { id: 'full', drill: full() },
    ],
    habits,
  );
const taken = (imported: ImportedDrills) => {
  if (imported.kind === 'refused') throw new Error(imported.said);
  return imported.drills;
};
const outAgain = (imported: ImportedDrills) =>
  exportDrills(
    taken(imported).map(({ id, value }) => ({ id, drill: value })),
    habits,
  );
const refusalOf = (text: string) => {
  const imported = importDrills(text, to);
  return imported.kind === 'ok' ? 'taken' : imported.said;
};
// biome-ignore lint/suspicious/noExplicitAny: a file that is about to be spoilt
const changed = (change: (file: any) => void) => {
  const file = JSON.parse(both());
  change(file);
  return JSON.stringify(file);
};

describe('a drill file', () => {
  it('goes out, comes in and goes out byte-equal, with every act, cue, game and version', () => {
    const text = both();
    const imported = importDrills(text, to);
    expect(outAgain(imported)).toBe(text);
    const [plain, other] = taken(imported);
    expect(other!.value).toEqual({
      ...full(),
      from: undefined,
      habits: ['h1'],
      variantOf: { drill: plain!.id, as: 'harder' },
      madeAt: to.madeAt,
    });
    for (const { id, value } of [plain!, other!])
      expect(readDocument(newDocument('drill', id, value))).toEqual({ kind: 'ok', value, issues: [] });
  });

  it('holds nothing of the team: no ids of habits, games or documents, no day', () => {
    const text = both();
    for (const secret of ['h1"', 'gone', 'secret-game', '"plain"', '2026-'])
      expect(text).not.toContain(secret);
    expect(text).toContain('First forward back');
  });

  it('finds the habit of the same words, and says which the team has not', () => {
    const text = changed(file => (file.drills[0].habits = ['  first FORWARD back ', 'Stick on puck']));
    expect(taken(importDrills(text, to))[0]).toMatchObject({
      value: { habits: ['h1'] },
      otherHabits: ['Stick on puck'],
    });
  });

  it('a version whose drill is not in the file is a drill of its own there', () => {
    const text = exportDrills([{ id: 'full', drill: full() }], habits);
    expect(taken(importDrills(text, to))[0]!.value.variantOf).toBeUndefined();
  });

  it('is not written for a drill that it could not hold', () => {
    const spots = Object.fromEntries(
      Array.from({ length: 61 }, (_, index) => [`s${index}`, sampleSpot(index)]),
    );
    const drill = { ...sampleDrill(), spots } as unknown as Drill;
    expect(() => exportDrills([{ id: 'd', drill }], habits)).toThrow('at most 60 of them fit here');
  });

  it.each([
    ['not JSON', '{', 'this file is not JSON, or it is cut off'],
    ['other JSON', '[1]', 'this is not a drill file of Icewright'],
    ['a team file', '{"format":"icewright-team","version":1}', 'this is not a drill file of Icewright'],
    ['too long a file', ' '.repeat(drillFileLimit + 1), 'the file is over 4 million characters long'],
    [
      'a newer file',
      changed(file => (file.version = 2)),
      /^the file was made by a newer Icewright \(version 2/,
    ],
    [
      'no version',
      changed(file => delete file.version),
      'the version of the file: this must be 1, and it is missing (version)',
    ],
    [
      'no drills',
      changed(file => (file.drills = [])),
      'the drills of the file: at least 1 must stand here, and it is empty (drills)',
    ],
    [
      'a number out of range',
      changed(file => (file.drills[1].spots.s1.atM.xM = 200)),
      /place along the sheet, in metres, in “.+”: at most 100 is possible, and 200 stands there \(drills\.1\.spots\.s1\.atM\.xM\)$/,
    ],
    [
      'a word for a number',
      changed(file => (file.drills[0].minutes = 'long')),
      /^minutes, in “.+”: a number is needed here, and “long” stands there \(drills\.0\.minutes\)$/,
    ],
    [
      'a missing field',
      changed(file => delete file.drills[0].title),
      'title, in drill 1 of the file: a text is needed here, and it is missing (drills.0.title)',
    ],
    [
      'a level nobody has',
      changed(file => (file.drills[0].level = 'legend')),
      /^level, in “.+”: this must be one of u10, .*, and “legend” stands there \(drills\.0\.level\)$/,
    ],
    [
      'an act nobody can do',
      changed(file => (file.drills[1].spots.s1.acts.a1.kind = 'fly')),
      /\(drills\.1\.spots\.s1\.acts\.a1\.kind\)$/,
    ],
    [
      'a field nobody knows, deep inside',
      changed(file => (file.drills[1].spots.s1.acts.a1.wings = 2)),
      /“wings”, in “.+”: nothing here has this name \(drills\.1\.spots\.s1\.acts\.a1\.wings\)$/,
    ],
    [
      'a way to the prototype',
      both().replace('"p1":', '"__proto__":'),
      /^a puck, in “.+”: nothing here has this name \(drills\.1\.pucks\.__proto__\)$/,
    ],
    [
      'too many spots',
      changed(file => {
        for (let index = 0; index < 60; index += 1)
          file.drills[1].spots[`more${index}`] = file.drills[1].spots.s2;
      }),
      /^skaters, in “.+”: at most 60 of them fit here/,
    ],
    [
      'a version of no drill',
      changed(file => (file.drills[1].variantOf.drill = 2)),
      /^“.+”: there is no such drill in the file, and 2 stands there \(drills\.1\.variantOf\.drill\)$/,
    ],
    [
      'a version of itself',
      changed(file => (file.drills[1].variantOf.drill = 1)),
      /^“.+”: a drill is no version of itself, and 1 stands there \(drills\.1\.variantOf\.drill\)$/,
    ],
    [
      'a number over all bounds',
      both().replace('"minutes": 8', '"minutes": 1e999'),
      /^minutes, in “.+”: .*\(drills\.0\.minutes\)$/,
    ],
  ])('refuses %s with the path and the reason', (_, text, said) => {
    expect(refusalOf(text)).toMatch(said);
  });
});

const published = new URL('../../docs/drill-file.schema.json', import.meta.url);

/** Another's reading of the published schema; it comes with the tool that builds the app, and may be away one day. */
const independent = await (async () => {
  const name = 'ajv/dist/2020.js';
  try {
    const { Ajv2020 } = await import(name);
    return new Ajv2020({ strict: false }).compile(JSON.parse(readFileSync(published, 'utf8'))) as (
      value: unknown,
    ) => boolean;
  } catch {
    return null;
  }
})();

describe('a file that is refused', () => {
  const saidOf = (change: Parameters<typeof changed>[0]): string => {
    const imported = importDrills(changed(change), to);
    return imported.kind === 'ok' ? 'taken' : imported.said;
  };
  // biome-ignore lint/suspicious/noExplicitAny: a file that is about to be spoilt
  const passOf = (file: any): [string, any] => {
    const spots = file.drills[1].spots as Record<
      string,
      { role: string; acts: Record<string, { kind: string }> }
    >;
    for (const spot of Object.values(spots))
      for (const act of Object.values(spot.acts)) if (act.kind === 'pass') return [spot.role, act];
    throw new Error('no pass in it');
  };

  it('names whom and where in a coach’s words, not the fields of the file', () => {
    let role = '';
    const title = JSON.parse(both()).drills[1].title;
    const fast = saidOf(file => {
      const [who, act] = passOf(file);
      role = who;
      act.speedMps = 'fast';
    });
    expect(fast).toContain(
      `${role} passes: speed, in metres a second, in “${title}”: a number is needed here`,
    );
  });

  it('is one in which somebody is named who is not in the drill', () => {
    const nobody = saidOf(file => {
      passOf(file)[1].toSpot = 'nobody';
    });
    expect(nobody).toMatch(/“.+”: .+ passes to somebody who is not in the drill/);
    const away = saidOf(file => {
      passOf(file)[1].cue = { on: 'receive', spot: 'gone' };
    });
    expect(away).toMatch(/waits for somebody who is not in the drill/);
  });
});

describe('the published schema', () => {
  it('is the one that reads the file (UPDATE_GOLDEN=1 writes it anew)', () => {
    if (process.env.UPDATE_GOLDEN === '1') writeFileSync(published, JSON.stringify(drillFileSchema()));
    expect(existsSync(published)).toBe(true);
    expect(JSON.parse(readFileSync(published, 'utf8'))).toEqual(drillFileSchema());
  });

  it('every name it refers to is there, and it says the limits', () => {
    const schema = JSON.parse(readFileSync(published, 'utf8'));
    const refs = [...readFileSync(published, 'utf8').matchAll(/"#\/\$defs\/([^"]+)"/g)].map(
      ([, name]) => name!,
    );
    expect(refs.length).toBeGreaterThan(10);
    for (const name of refs) expect(schema.$defs).toHaveProperty(name);
    expect(schema.$defs.drill.properties.spots.maxProperties).toBe(60);
    expect(schema.$defs.drill.additionalProperties).toBe(false);
  });

  it.skipIf(independent === null)('another reader of JSON Schema takes what we write', () => {
    expect(independent!(JSON.parse(both()))).toBe(true);
  });
});

const junk = fc.oneof(
  fc.constantFrom(null, true, '', 'x', -1, 0, 1, 1.5, 1e9, -1e308, [], {}, [[]], { xM: 1 }, '__proto__'),
  fc.string({ maxLength: 300 }),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
);
const spoil = fc.record({
  how: fc.constantFrom('put', 'drop', 'add', 'cut', 'letters'),
  /** Where to, as a share of all places in the file. */
  where: fc.double({ min: 0, max: 0.999, noNaN: true }),
  junk,
  key: fc.constantFrom('kind', 'atM', 'cue', 'extra', '__proto__', 'constructor', 'spots', '0'),
});

describe('any damage at all', () => {
  it('2,000 spoilt files: none throws, each is taken whole or refused with a reason, as the schema says', () => {
    let [takenCount, refusedCount] = [0, 0];
    fc.assert(
      fc.property(fc.array(spoil, { minLength: 1, maxLength: 3 }), spoils => {
        const text = spoils.reduce(spoilt, both());
        const imported = importDrills(text, to);
        const isSchemaAlone =
          imported.kind === 'ok' ||
          !/no such drill|of itself|not JSON|newer|not in the drill/.test(imported.said);
        if (independent !== null && isSchemaAlone && !text.includes('__proto__'))
          expect(independent(JSON.parse(text))).toBe(imported.kind === 'ok');
        if (imported.kind === 'ok') {
          takenCount += 1;
          // Habits the team has not are named, not taken; all else is there again.
          const file = JSON.parse(text);
          for (const [index, { value, otherHabits }] of imported.drills.entries()) {
            expect(value.habits.length + otherHabits.length).toBeLessThanOrEqual(
              file.drills[index].habits.length,
            );
            file.drills[index].habits = value.habits.map(() => 'First forward back');
          }
          expect(outAgain(imported)).toBe(stableJson({ $schema: 'urn:icewright:drill-file:1', ...file }));
          return;
        }
        refusedCount += 1;
        expect(imported.said.length).toBeGreaterThan(5);
        if (imported.path === '')
          expect(imported.said).toMatch(/JSON|not a drill file|newer|nothing here is called/);
      }),
      { numRuns: 2000, seed: 20261128 },
    );
    // Both ways are walked, else the test says nothing.
    expect(takenCount).toBeGreaterThan(100);
    expect(refusedCount).toBeGreaterThan(500);
  });
});

interface Spot {
  readonly within: Record<string, unknown>;
  readonly key: string;
}

function spoilt(
  text: string,
  { how, where, junk: value, key }: typeof spoil extends fc.Arbitrary<infer T> ? T : never,
): string {
  if (how === 'cut' || how === 'letters') {
    const from = Math.floor(where * text.length);
    return (
      text.slice(0, from) +
      (how === 'cut' ? '' : JSON.stringify(value)) +
      text.slice(from + (how === 'cut' ? 400 : 3))
    );
  }
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch {
    return text;
  }
  const places = placesIn(file, []);
  const place = places[Math.floor(where * places.length)];
  if (place === undefined) return text;
  if (how === 'drop') delete place.within[place.key];
  else
    Object.defineProperty(place.within, how === 'put' ? place.key : key, {
      value,
      enumerable: true,
      configurable: true,
      writable: true,
    });
  return JSON.stringify(file);
}

function placesIn(value: unknown, found: Spot[]): Spot[] {
  if (typeof value !== 'object' || value === null) return found;
  for (const [key, inner] of Object.entries(value)) {
    found.push({ within: value as Record<string, unknown>, key });
    placesIn(inner, found);
  }
  return found;
}
