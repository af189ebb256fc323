import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ENGINE_ARROWS, ROOM_ARROWS, ROOM_LIBRARIES } from './arrows.data.ts';
import { importsOf, sourcesUnder } from './imports-of.ts';

const files = Object.keys(ROOM_ARROWS).flatMap(room => sourcesUnder(room));
const imports = new Map(files.map(file => [file, importsOf(file)]));

describe('arrows point one way', () => {
  it('finds the imports it is to judge', () => {
    expect(files.length).toBeGreaterThan(20);
    expect(importsOf('engine/drill/drill.ts')).toContain('../rink/lines.ts');
  });

  it('a room imports only the rooms below it, and only by their face', () => {
    const wrong: string[] = [];
    for (const [file, names] of imports) {
      const room = file.split('/')[0] ?? '';
      for (const name of names) {
        const other = /^@icewright\/([a-z]+)(\/.*)?$/.exec(name);
        if (other && !ROOM_ARROWS[room]?.includes(other[1] ?? ''))
          wrong.push(
            `${file} imports ${name}: ${room} may import ${ROOM_ARROWS[room]?.join(', ') || 'no room'}.`,
          );
        if (other?.[2]) wrong.push(`${file} imports ${name}: go through the room's index.ts.`);
        if (name.startsWith('.')) {
          const target = posix.normalize(posix.join(posix.dirname(file), name));
          if (!target.startsWith(`${room}/`))
            wrong.push(`${file} reaches into ${target} past the face of that room.`);
          if (room !== 'cli' && target === `${room}/index.ts`)
            wrong.push(`${file} imports its own room's face.`);
        }
      }
    }
    expect(wrong).toEqual([]);
  });

  it('inside the engine each part imports only what lies below it', () => {
    const wrong: string[] = [];
    for (const [file, names] of imports) {
      const [room, part] = file.split('/');
      if (room !== 'engine' || !part || part === 'index.ts') continue;
      const allowed = ENGINE_ARROWS[part];
      if (!allowed) {
        wrong.push(`${file}: the engine has no part "${part}".`);
        continue;
      }
      for (const name of names.filter(each => each.startsWith('.'))) {
        const target = posix.normalize(posix.join(posix.dirname(file), name)).split('/')[1] ?? '';
        if (target !== part && !allowed.includes(target))
          wrong.push(
            `${file} imports ${name}: ${part} lies below ${target}, so the code belongs there or lower.`,
          );
      }
    }
    expect(wrong).toEqual([]);
  });

  it('the pure rooms lean on no library beyond the list', () => {
    const wrong: string[] = [];
    for (const [file, names] of imports) {
      const allowed = ROOM_LIBRARIES[file.split('/')[0] ?? ''];
      if (!allowed) continue;
      for (const name of names.filter(each => !each.startsWith('.') && !each.startsWith('@icewright/')))
        if (!allowed.some(library => name === library || name.startsWith(`${library}/`)))
          wrong.push(`${file} imports ${name}.`);
    }
    expect(wrong).toEqual([]);
  });

  it('has no circle', () => {
    const state = new Map<string, 'open' | 'closed'>();
    const circles: string[] = [];
    const visit = (file: string, trail: readonly string[]): void => {
      if (state.get(file) === 'closed') return;
      if (state.get(file) === 'open') {
        circles.push([...trail.slice(trail.indexOf(file)), file].join(' → '));
        return;
      }
      state.set(file, 'open');
      for (const name of imports.get(file) ?? []) {
        if (!name.startsWith('.')) continue;
        const target = posix.normalize(posix.join(posix.dirname(file), name));
        if (imports.has(target)) visit(target, [...trail, file]);
      }
      state.set(file, 'closed');
    };
    for (const file of files) visit(file, []);
    expect(circles).toEqual([]);
  });
});
