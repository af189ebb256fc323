import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { sourcesUnder } from './imports-of.ts';

describe('the engine and the pictures know no clock and no chance', () => {
  it('call neither Date nor Math.random', () => {
    const found = ['engine', 'picture', 'checks'].flatMap(sourcesUnder).flatMap(file =>
      readFileSync(file, 'utf8')
        .split('\n')
        .flatMap((text, index) =>
          /\b(Date\.now|new Date|Math\.random|performance\.now)\b/.test(text.replace(/\/\/.*|^\s*\*.*/, ''))
            ? [`${file}:${index + 1}`]
            : [],
        ),
    );
    expect(found).toEqual([]);
  });
});
