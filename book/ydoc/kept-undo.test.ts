import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as Y from 'yjs';
import { changeText, removeAt, setAt } from './change.ts';
import { KEPT_STEPS, type KeptUndo, keptUndoOf } from './kept-undo.ts';
import { moveItem } from './move-item.ts';
import { newDocument } from './new-document.ts';
import { sampleAct, sampleDrill, sampleSpot } from './sample-documents.ts';
import { readDocument } from './snapshot.ts';

/** A person's browser: what it keeps of a document are the messages as they came, or, once they are many, the document as it stands. */
class Browser {
  ydoc!: Y.Doc;
  undo!: KeptUndo;
  readonly client: number;
  #messages: Uint8Array[];

  constructor(client: number, start: Uint8Array) {
    this.client = client;
    this.#messages = [start];
    this.#open(undefined);
  }

  reload(gathers = false): void {
    // As the browser's store would give it back: plain values alone.
    const kept = structuredClone(this.undo.kept());
    if (gathers) this.#messages = [Y.encodeStateAsUpdate(this.ydoc)];
    this.#open(kept);
  }

  /** The last message was never written, though the steps were. */
  loseLast(): void {
    this.#messages.pop();
  }

  #open(kept: ReturnType<KeptUndo['kept']> | undefined): void {
    const ydoc = new Y.Doc({ guid: 'd1' });
    this.undo = keptUndoOf(ydoc, 'me');
    ydoc.transact(() => {
      for (const message of this.#messages) Y.applyUpdate(ydoc, message);
    }, 'read');
    this.undo.giveBack(kept);
    // As every page has a number of its own, one that is loaded again writes as another; here not, to be compared with its twin.
    ydoc.clientID = this.client;
    ydoc.on('update', (update: Uint8Array) => this.#messages.push(update));
    this.ydoc = ydoc;
  }
}

const start = Y.encodeStateAsUpdate(newDocument('drill', 'd1', sampleDrill()));

const meet = (one: Browser, other: Browser) => {
  const [from, to] = [one, other].map(({ ydoc }) => Y.encodeStateAsUpdate(ydoc));
  Y.applyUpdate(other.ydoc, from!);
  Y.applyUpdate(one.ydoc, to!);
};

const drillOf = ({ ydoc }: Browser): unknown => {
  const read = readDocument(ydoc);
  if (read.kind !== 'ok') throw new Error(JSON.stringify(read));
  return read;
};

const write = (browser: Browser, change: (ydoc: Y.Doc) => unknown) => {
  browser.undo.manager.stopCapturing();
  change(browser.ydoc);
};
const minutes = (browser: Browser, value: number) => write(browser, y => setAt(y, ['minutes'], value, 'me'));
const minutesOf = (browser: Browser) => (drillOf(browser) as { value: { minutes: number } }).value.minutes;

describe('undo after the page was loaded again', () => {
  it('takes back and does again what was written before, in its order', () => {
    for (const gathers of [false, true]) {
      const me = new Browser(101, start);
      const first = minutesOf(me);
      for (const value of [11, 12, 13]) minutes(me, value);
      me.undo.manager.undo();
      me.reload(gathers);
      expect(minutesOf(me)).toBe(12);
      me.undo.manager.undo();
      me.undo.manager.undo();
      expect(minutesOf(me)).toBe(first);
      expect(me.undo.manager.canUndo()).toBe(false);
      me.reload(gathers);
      for (const value of [11, 12, 13]) {
        me.undo.manager.redo();
        expect(minutesOf(me)).toBe(value);
      }
    }
  });

  it('brings back a skater that was taken out, with all her acts, though the store was gathered meanwhile', () => {
    const me = new Browser(101, start);
    const before = drillOf(me);
    write(me, y => removeAt(y, ['spots', 's1'], 'me'));
    me.reload(true);
    me.reload(true);
    me.undo.manager.undo();
    expect(drillOf(me)).toEqual(before);
  });

  it('leaves what somebody else wrote in between', () => {
    const [me, other] = [new Browser(101, start), new Browser(202, start)];
    minutes(me, 11);
    write(me, y => setAt(y, ['title'], 'Mine', 'me'));
    me.reload();
    minutes(other, 22);
    meet(me, other);
    minutes(other, 23);
    meet(me, other);
    me.undo.manager.undo();
    me.undo.manager.undo();
    expect(minutesOf(me)).toBe(23);
    expect(drillOf(me)).toMatchObject({ value: { title: 'Back to the middle' } });
  });

  it('gives another the field that both wrote apart, though the page was loaded again since', () => {
    for (const clients of [
      [101, 202],
      [202, 101],
    ] as const) {
      const [me, other] = [new Browser(clients[0], start), new Browser(clients[1], start)];
      minutes(me, 11);
      minutes(other, 22);
      meet(me, other);
      me.reload(true);
      me.undo.manager.undo();
      expect(minutesOf(me)).toBe(22);
    }
  });

  it('leaves out a step whose change was lost when the browser died, and keeps those before it', () => {
    const me = new Browser(101, start);
    minutes(me, 11);
    minutes(me, 12);
    me.loseLast();
    me.reload();
    expect(minutesOf(me)).toBe(11);
    expect(me.undo.manager.undoStack).toHaveLength(1);
    me.undo.manager.undo();
    expect(minutesOf(me)).toBe(sampleDrill().minutes);
  });

  it('leaves out steps whose deleted things another window let the store forget', () => {
    const me = new Browser(101, start);
    minutes(me, 11);
    write(me, y => removeAt(y, ['spots', 's1'], 'me'));
    write(me, y => setAt(y, ['title'], 'Mine', 'me'));
    const kept = me.undo.kept();
    const forgetful = new Y.Doc();
    Y.applyUpdate(forgetful, Y.encodeStateAsUpdate(me.ydoc));
    // The other window has the title still, and not the skater.
    const title = kept.undo.at(-1)!;
    const ydoc = new Y.Doc();
    const undo = keptUndoOf(ydoc, 'me');
    Y.applyUpdate(ydoc, Y.encodeStateAsUpdate(forgetful));
    undo.giveBack({ ...kept, undo: [...kept.undo.slice(0, 2), { ...title, deleted: [] }] });
    expect(undo.manager.undoStack).toHaveLength(1);
  });

  it('keeps so many steps and lets the document forget what older ones deleted', () => {
    const me = new Browser(101, start);
    for (let step = 0; step < KEPT_STEPS + 50; step += 1)
      write(me, y => setAt(y, ['title'], `Title number ${step}, and as it was a long one it may go`, 'me'));
    const full = Y.encodeStateAsUpdate(me.ydoc).byteLength;
    me.reload();
    expect(me.undo.manager.undoStack).toHaveLength(KEPT_STEPS);
    expect(Y.encodeStateAsUpdate(me.ydoc).byteLength).toBeLessThan(full - 40 * 50);
    while (me.undo.manager.canUndo()) me.undo.manager.undo();
    expect(drillOf(me)).toMatchObject({ value: { title: expect.stringContaining('number 49,') } });
  });

  it('comes to the same as if nobody had ever loaded the page again, whatever two people do', () => {
    const change = fc.oneof(
      fc.record({ what: fc.constant('minutes' as const), to: fc.integer({ min: 1, max: 60 }) }),
      fc.record({ what: fc.constant('words' as const), to: fc.string({ maxLength: 12 }) }),
      fc.record({
        what: fc.constantFrom('add', 'take', 'turn', 'act', 'up'),
        to: fc.integer({ min: 1, max: 4 }),
      }),
      fc.record({ what: fc.constantFrom('undo', 'redo', 'undo', 'redo', 'meet'), to: fc.constant(0) }),
      fc.record({ what: fc.constantFrom('reload', 'gather'), to: fc.constant(0) }),
    );
    const deed = fc.record({ who: fc.constantFrom(0, 1), change });
    fc.assert(
      fc.property(fc.array(deed, { minLength: 3, maxLength: 40 }), deeds => {
        const [real, twin] = [0, 1].map(
          () => [new Browser(101, start), new Browser(202, start)] as const,
        ) as [readonly [Browser, Browser], readonly [Browser, Browser]];
        for (const { who, change } of deeds) {
          for (const pair of [real, twin]) {
            if (change.what === 'meet') meet(...pair);
            else play(pair[who as 0 | 1], change, pair === real);
          }
          expect(real.map(drillOf)).toEqual(twin.map(drillOf));
          expect(real.map(({ undo }) => [undo.manager.canUndo(), undo.manager.canRedo()])).toEqual(
            twin.map(({ undo }) => [undo.manager.canUndo(), undo.manager.canRedo()]),
          );
        }
        meet(...real);
        expect(drillOf(real[0])).toEqual(drillOf(real[1]));
      }),
      { numRuns: 80, seed: 7 },
    );
  });
});

function play(me: Browser, { what, to }: { what: string; to: number | string }, reloads: boolean): void {
  const { manager } = me.undo;
  if (what === 'undo') manager.undo();
  else if (what === 'redo') manager.redo();
  else if (what === 'reload' || what === 'gather') {
    if (reloads) me.reload(what === 'gather');
    else manager.stopCapturing();
  } else
    write(me, y => {
      const spot = `s${to}`;
      if (what === 'minutes') setAt(y, ['minutes'], to, 'me');
      else if (what === 'words') changeText(y, ['keyPoints'], String(to), 'me');
      else if (what === 'add') setAt(y, ['spots', spot], sampleSpot(Number(to), { a1: sampleAct(1) }), 'me');
      else if (what === 'take') removeAt(y, ['spots', spot], 'me');
      else if (what === 'turn') setAt(y, ['spots', spot, 'facingRad'], Number(to) / 4, 'me');
      else if (what === 'act') setAt(y, ['spots', spot, 'acts', 'a2'], sampleAct(2), 'me');
      else moveItem(y, ['spots'], spot, 0, 'me');
    });
}
