/** Which room may import which: the one place that says so. `test/house/arrows.test.ts` reads it. */
export const ROOM_ARROWS: Readonly<Record<string, readonly string[]>> = {
  engine: [],
  picture: ['engine'],
  book: ['engine'],
  server: ['book', 'engine'],
  app: ['book', 'picture', 'engine'],
  checks: ['engine'],
  cli: ['checks', 'server', 'book', 'picture', 'engine'],
};

/** Inside the engine: what each part may import of the others. */
export const ENGINE_ARROWS: Readonly<Record<string, readonly string[]>> = {
  units: [],
  random: ['units'],
  statistics: ['units'],
  rink: ['units'],
  skater: ['rink', 'statistics', 'units'],
  puck: ['rink', 'units'],
  pass: ['puck', 'skater', 'rink', 'random', 'statistics', 'units'],
  control: ['puck', 'skater', 'rink', 'statistics', 'units'],
  drill: ['control', 'pass', 'puck', 'skater', 'rink', 'random', 'statistics', 'units'],
  many: ['habit', 'film', 'drill', 'statistics', 'random', 'skater', 'rink', 'pass', 'puck', 'units'],
  flow: ['drill', 'statistics', 'skater', 'rink', 'units'],
  film: ['control', 'pass', 'puck', 'skater', 'rink', 'random', 'statistics', 'units'],
  habit: ['film', 'drill', 'control', 'pass', 'puck', 'skater', 'rink', 'random', 'statistics', 'units'],
  ideas: [
    'many',
    'flow',
    'habit',
    'film',
    'drill',
    'pass',
    'puck',
    'skater',
    'rink',
    'random',
    'statistics',
    'units',
  ],
  defaults: [
    'ideas',
    'flow',
    'habit',
    'film',
    'many',
    'drill',
    'control',
    'pass',
    'puck',
    'skater',
    'rink',
    'units',
  ],
  practice: ['flow', 'habit', 'film', 'drill', 'statistics', 'units'],
};

/** Libraries a room may lean on when it runs. A room that is not listed may use what its package.json names. */
export const ROOM_LIBRARIES: Readonly<Record<string, readonly string[]>> = {
  engine: [],
  picture: ['d3-path'],
  book: ['yjs', 'zod'],
  checks: [],
};
