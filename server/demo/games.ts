import { type Game, game } from '@icewright/book';
import freezesOnFilm from './freezes.json' with { type: 'json' };

/** What the demo needs to know of a film that lies in the film folder. */
export interface DemoFilm {
  readonly hash: string;
  readonly byteCount: number;
}

/** Pins and feet as somebody clicked them on a frame of the demo films: landmark or skater, x and y in pixels. */
interface ClickedFreeze {
  readonly film: string;
  readonly frameIndex: number;
  readonly filmTimeS: number;
  readonly pins: readonly (readonly (string | number)[])[];
  readonly feet: readonly (readonly (string | number)[])[];
  readonly puck: readonly number[];
  readonly carrier: string | null;
}

const CLICKED = freezesOnFilm as Record<string, ClickedFreeze>;

/** Twenty seconds against Quillback Bay, filmed from one place: the puck is lost, three hunt, the gap holds. */
export function huntGame(film: DemoFilm, dayOf: string, at: string): Game {
  return gameOf(
    dayOf,
    'home',
    { us: 2, them: 3 },
    film,
    { fileName: 'quillback-home.mp4', durationS: 20, frameCount: 600 },
    at,
    {
      turnover: freezeOf('A.turnover', 'The puck is lost above their circles', 'hunt', at),
      redLine: freezeOf('A.redLine', 'At the red line', 'five', at),
      ourLine: freezeOf('A.ourLine', 'The puck is over our blue line', 'firstBack', at),
    },
    [
      ['hunt', 'done', 122, 4.0667, 'lantern-21', 0, 'turns on the spot and goes', 'turnover'],
      ['five', 'done', 201, 6.7, undefined, 0, 'all five come back together', 'redLine'],
      [
        'firstBack',
        'missed',
        234,
        7.8,
        'lantern-21',
        0.11,
        'chases the puck from behind, four metres too high',
        'ourLine',
      ],
      ['gap', 'done', 234, 7.8, 'lantern-27', 0, 'one stick and a half', 'ourLine'],
      ['house', 'done', 311, 10.3667, 'lantern-4', 0, 'both defenders stopped', undefined],
      ['firstBack', 'done', 311, 10.3667, 'lantern-14', 0, 'inside by the time of the shot', undefined],
    ],
  );
}

/** Sixteen seconds at Quillback Bay, the camera following: out on the right side, a defender joins. */
export function joinGame(film: DemoFilm, dayOf: string, at: string): Game {
  return gameOf(
    dayOf,
    'away',
    { us: 4, them: 2 },
    film,
    { fileName: 'quillback-away.mp4', durationS: 16.016, frameCount: 960 },
    at,
    {
      outlet: freezeOf('B.outlet', 'The wing has it on the boards', 'five', at),
      redLine: freezeOf('B.redLine', 'At the red line', 'lateDefender', at),
      shot: freezeOf('B.shot', 'The shot', 'house', at),
    },
    [
      ['five', 'cannotSee', 165, 2.7528, undefined, 0, 'the picture is too narrow', 'outlet'],
      ['lateDefender', 'done', 360, 6.006, 'lantern-27', 0, 'started with the first pass', 'redLine'],
      ['five', 'missed', 360, 6.006, undefined, 0.03, 'two stayed home', 'redLine'],
      ['hunt', 'missed', 770, 12.8462, 'lantern-14', 0.06, 'looks at the goalie, not at the puck', undefined],
      ['hunt', 'done', 815, 13.597, 'lantern-21', 0, '', undefined],
    ],
  );
}

type DemoMoment = readonly [
  habit: string,
  verdict: 'done' | 'missed' | 'cannotSee',
  frameIndex: number,
  filmTimeS: number,
  skater: string | undefined,
  costGoals: number,
  note: string,
  freeze: string | undefined,
];

function gameOf(
  dayOf: string,
  place: 'home' | 'away',
  score: { us: number; them: number },
  film: DemoFilm,
  file: { fileName: string; durationS: number; frameCount: number },
  at: string,
  freezes: Record<string, unknown>,
  moments: readonly DemoMoment[],
): Game {
  return game.parse({
    kind: 'game',
    schema: 5,
    follows: {},
    opinions: {},
    opponent: 'Quillback Bay',
    day: dayOf,
    place,
    score,
    note: '',
    films: { film: { rank: 0, hash: film.hash, byteCount: film.byteCount, label: 'whole game', ...file } },
    moments: Object.fromEntries(
      moments.map(([habit, verdict, frameIndex, filmTimeS, skater, costGoals, note, freeze], index) => [
        `moment-${index + 1}`,
        {
          habit,
          verdict,
          film: 'film',
          frameIndex,
          filmTimeS,
          costGoals,
          note,
          by: 'Ashdown',
          taggedAt: at,
          ...(skater ? { skater } : {}),
          ...(freeze ? { freeze } : {}),
        },
      ]),
    ),
    freezes,
    tracks: {},
    marks: {},
  });
}

function freezeOf(name: string, title: string, habit: string, at: string): unknown {
  const clicked = CLICKED[name];
  if (!clicked) throw new Error(`The demo has no clicked freeze "${name}".`);
  return {
    film: 'film',
    frameIndex: clicked.frameIndex,
    filmTimeS: clicked.filmTimeS,
    picture: { widthPx: 1280, heightPx: 720 },
    title,
    habit,
    attacks: 'plusX',
    pins: Object.fromEntries(
      clicked.pins.map(([landmark, xPx, yPx], index) => [
        `pin-${index + 1}`,
        { landmark, at: { xPx, yPx }, leftOut: false },
      ]),
    ),
    clickSdPx: 1,
    skaters: Object.fromEntries(
      clicked.feet.map(([id, xPx, yPx]) => [`placed-${id}`, placedOf(String(id), { xPx, yPx })]),
    ),
    puck: {
      at: { xPx: clicked.puck[0], yPx: clicked.puck[1] },
      ...(clicked.carrier ? { carrier: `placed-${clicked.carrier}` } : {}),
    },
    madeAt: at,
  };
}

function placedOf(id: string, feet: unknown): unknown {
  const number = id.slice(1);
  const ours = id.startsWith('L');
  return {
    side: ours ? 'us' : 'them',
    kind: number === '31' || number === '30' ? 'goalie' : 'skater',
    role: ROLES[id] ?? number,
    feet,
    ...(ours ? { skater: `lantern-${number}` } : {}),
  };
}

const ROLES: Readonly<Record<string, string>> = {
  L14: 'LW',
  L21: 'C',
  L9: 'RW',
  L4: 'LD',
  L27: 'RD',
  L31: 'G',
  Q23: 'X1',
  Q19: 'X2',
  Q11: 'X3',
  Q44: 'X4',
  Q6: 'X5',
  Q30: 'G',
};
