/** What a field is called by a coach, with its unit. */
const FIELDS: Readonly<Record<string, string>> = {
  xM: 'place along the sheet, in metres',
  yM: 'place across the sheet, in metres',
  atM: 'place',
  fromM: 'first corner',
  toM: 'second corner',
  throughM: 'way',
  facingRad: 'facing',
  role: 'name',
  side: 'side',
  kind: 'kind',
  waitingCount: 'how many wait behind',
  speedMps: 'speed, in metres a second',
  effortRatio: 'effort, of one',
  distanceM: 'gap, in metres',
  withinM: 'how near, in metres',
  seconds: 'seconds',
  toSpot: 'whom the pass goes to',
  whom: 'whom it is about',
  ownerSpot: 'whose puck it is',
  way: 'way of the pass',
  facing: 'which way she faces',
  stops: 'whether it ends in a stop',
  cue: 'what starts it',
  on: 'what starts it',
  line: 'line',
  rank: 'order',
  count: 'how many',
  acts: 'acts',
  usCount: 'how many of us play',
  themCount: 'how many of them play',
  shiftS: 'length of a go, in seconds',
  nets: 'nets',
  next: 'when the next rep starts',
  pauseS: 'pause, in seconds',
  ends: 'which ends are used',
  goesTo: 'whose line is joined next',
  title: 'title',
  says: 'cue word',
  keyPoints: 'key points',
  minutes: 'minutes',
  level: 'level',
  rink: 'ice',
  preset: 'ice',
  habits: 'habits',
  wanted: 'what is wanted',
  variantOf: 'what it is a version of',
  spots: 'skaters',
  pucks: 'pucks',
  gear: 'things on the ice',
  games: 'small games',
  flow: 'how reps follow each other',
  schema: 'version',
  madeAt: 'when it was made',
};

const ACTS: Readonly<Record<string, string>> = {
  skate: 'skates',
  carry: 'carries',
  pass: 'passes',
  shoot: 'shoots',
  chase: 'chases',
  gap: 'keeps a gap',
  steal: 'goes for the puck',
  screen: 'is in a lane',
  pickUp: 'picks a puck up',
  leave: 'leaves the puck',
  turn: 'turns',
  stop: 'stops',
  pivot: 'turns round',
  face: 'faces',
  hold: 'holds',
};

/**
 * Where in a drill something is, as a coach would say it: "F2 passes: speed, in metres a second". `path` is keys from the plan down, the plan
 * any value at all, also a damaged one. Empty for the plan as a whole; a name that nobody knows is given as it stands. Our own words.
 */
export const draftPlaceSaid = (path: readonly PropertyKey[], plan: unknown): string => {
  const keys = path.map(String);
  const [list, id] = keys;
  if (list === undefined) return '';
  if (id === undefined || !['spots', 'pucks', 'gear', 'games'].includes(list)) return fieldOf(keys);
  const item = within(within(plan, list), id);
  if (list !== 'spots') return joined(THINGS[list] ?? list, keys.slice(2));
  const role = within(item, 'role');
  const who = typeof role === 'string' && role.trim() !== '' ? role : 'somebody without a name';
  if (keys[2] !== 'acts' || keys[3] === undefined) return joined(who, keys.slice(2));
  const kind = within(within(within(item, 'acts'), keys[3]), 'kind');
  const does = typeof kind === 'string' ? ACTS[kind] : undefined;
  return joined(does === undefined ? `an act of ${who}` : `${who} ${does}`, keys.slice(4));
};

const THINGS: Readonly<Record<string, string>> = {
  pucks: 'a puck',
  gear: 'a thing on the ice',
  games: 'a small game',
};

const joined = (what: string, keys: readonly string[]): string =>
  keys.length === 0 ? what : `${what}: ${fieldOf(keys)}`;

/** The last name that means something; numbers in a list do not. */
const fieldOf = (keys: readonly string[]): string => {
  const names = keys.filter(key => !/^\d+$/.test(key));
  const last = names.at(-1) ?? '';
  return FIELDS[last] ?? `“${last}”`;
};

const within = (value: unknown, key: string): unknown =>
  typeof value === 'object' && value !== null && Object.hasOwn(value, key)
    ? (value as Record<string, unknown>)[key]
    : undefined;
