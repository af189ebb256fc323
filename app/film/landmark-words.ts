/**
 * The name of a rink marking as a person beside the picture says it. The map lies as the picture does: the camera stands
 * below its lower edge, so +y is far and −y near, −x left and +x right.
 */
export const landmarkWords = (id: string): string => {
  const match = /^([a-zA-Z]+)(?:([+-])x)?(?:([+-])y)?(?:\.(.+))?$/.exec(id);
  if (!match) return id;
  const [, kind = '', xSign, ySign, rest = ''] = match;
  const sideways = xSign === '+' ? 'right' : xSign === '-' ? 'left' : '';
  const ownDepth = ySign === '+' ? 'far' : ySign === '-' ? 'near' : '';
  const partDepth = rest.includes('+y') ? 'far' : rest.includes('-y') ? 'near' : '';
  const place = [sideways, ownDepth].filter(Boolean).join(', ');
  const boards = `at the ${partDepth || ownDepth} boards`;
  switch (kind) {
    case 'centreSpot':
      return 'Centre spot';
    case 'centreLine':
      return rest.startsWith('centreCircle')
        ? `Centre circle on the red line, ${partDepth} side`
        : `Red line ${boards}`;
    case 'centreLineEdge':
      return `Red line ${boards}, ${sideways} edge`;
    case 'blueLineInner':
      return `Blue line ${boards}, ${sideways}, centre edge`;
    case 'blueLineOuter':
      return `Blue line ${boards}, ${sideways}, goal edge`;
    case 'neutralSpot':
      return `Neutral spot, ${place}`;
    case 'endSpot':
      return `End spot, ${place}`;
    case 'goalLine':
      return `Goal line ${boards}, ${sideways}`;
    case 'goalPost':
      return `Net, ${sideways}: ${ownDepth} post`;
    case 'crease':
      return rest === 'goalLine'
        ? `Crease at the goal line, ${place}`
        : `Crease where the arc begins, ${place}`;
    case 'trapezoid':
      return `Trapezoid at the ${rest === 'boards' ? 'boards' : 'goal line'}, ${place}`;
    case 'hashEnd':
      return `Hash mark, circle ${place}: ${partWords(rest)}`;
    case 'lCorner':
      return `L mark, spot ${place}: ${partWords(rest)}`;
    case 'refCrease':
      return `Officials' crease at the near boards, ${sideways || (rest.includes('+x') ? 'right' : 'left')}`;
    default:
      return id;
  }
};

/** The mark and which end and side it is of, without its part: that is seen. */
export const landmarkShort = (id: string): string => {
  const [name] = landmarkWords(id).split(/,| on | at | where /) as [string];
  const sideways = id.includes('+x') ? 'right' : id.includes('-x') ? 'left' : '';
  const depth = /[+-]x([+-])y/.exec(id)?.[1] ?? /([+-])y/.exec(id)?.[1];
  const ends = [sideways, depth === '+' ? 'far' : depth === '-' ? 'near' : ''].filter(Boolean).join(' ');
  return ends === '' ? name : `${name}, ${ends}`;
};

/** Which part of the list a marking stands in. */
export const landmarkGroup = (id: string): string => {
  const kind = /^[a-zA-Z]+/.exec(id)?.[0] ?? '';
  return GROUPS.find(([, kinds]) => kinds.includes(kind))?.[0] ?? 'Others';
};

const GROUPS: readonly (readonly [string, readonly string[]])[] = [
  ['Spots', ['centreSpot', 'neutralSpot', 'endSpot']],
  ['Red line', ['centreLine', 'centreLineEdge']],
  ['Blue lines', ['blueLineInner', 'blueLineOuter']],
  ['Goal lines and nets', ['goalLine', 'goalPost']],
  ['Creases and trapezoids', ['crease', 'trapezoid', 'refCrease']],
  ['Hash marks', ['hashEnd']],
  ['L marks at the end spots', ['lCorner']],
];

export const LANDMARK_GROUPS: readonly string[] = GROUPS.map(([name]) => name);

const partWords = (rest: string): string =>
  rest
    .split('.')
    .map(part => PARTS[part] ?? part)
    .join(', ');

const PARTS: Readonly<Record<string, string>> = {
  goalSide: 'goal side',
  blueSide: 'blue-line side',
  boardsSide: 'outer',
  middleSide: 'inner',
};
