import { describe, expect, it } from 'vitest';
import { recordingOf } from '../pen/recording-pen.ts';
import { MIDDLE_FIRST } from '../scenes/middle-first.plan.ts';
import { drawKey } from './key.ts';
import { KEY_ENTRIES, usedMarks } from './used-marks.ts';

describe('the key', () => {
  it('holds the marks used on the drawing and no others', () => {
    expect(usedMarks(MIDDLE_FIRST)).toEqual([
      'skating',
      'withPuck',
      'backward',
      'pivot',
      'stop',
      'pass',
      'shot',
      'fires',
      'waits',
      'whistle',
      'us',
      'them',
      'goalie',
      'coach',
      'line',
      'pucks',
    ]);
    expect(usedMarks()).toEqual([]);
  });

  it('says every entry with a word, inside its width', () => {
    const words = recordingOf(pen =>
      drawKey(pen, KEY_ENTRIES, { x: 0, y: 0, width: 400, lettering: 'cardKey', scale: 3 }),
    ).flatMap(call => (call.call === 'text' && call.lettering === 'cardKey' ? [call] : []));
    expect(words).toHaveLength(KEY_ENTRIES.length);
    for (const word of words) expect(word.x).toBeLessThan(400);
  });
});
