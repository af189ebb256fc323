import type { ManyAnswered, ManyAsked, ManyChunk, ManyDrill, ManyPart } from './many-messages.ts';

/** The part of a `Worker` that the pool needs; tests give one of their own. */
export interface ManyWorker {
  postMessage(asked: ManyAsked): void;
  onmessage: ((event: { readonly data: ManyAnswered }) => void) | null;
  onerror: ((event: { readonly message?: string }) => void) | null;
}

/** Chunks of one drill that are being played. */
export interface ManyWork {
  /** Parts in the order of the chunks. Rejects with `Cancelled`, or with why a chunk could not be played. */
  readonly parts: Promise<readonly ManyPart[]>;
  readonly cancel: () => void;
}

export interface ManyPool {
  /** `onPart` gets each part as it comes, and how many of the chunks are done. */
  readonly play: (
    drill: ManyDrill,
    chunks: readonly ManyChunk[],
    onPart?: (part: ManyPart, doneCount: number) => void,
  ) => ManyWork;
}

/** The work was stopped on purpose: nothing has failed. */
export class Cancelled extends Error {}

interface Task {
  readonly drillId: number;
  readonly drill: ManyDrill;
  readonly chunk: ManyChunk;
  readonly done: (part: ManyPart) => void;
  readonly failed: (why: Error) => void;
  isOff: boolean;
}

/**
 * A few workers that take chunks from one list, each one at a time. What is cancelled is never begun; what a worker has
 * under way is let run out and thrown away. Workers are made when there is work for them.
 */
export const manyPool = (makeWorker: () => ManyWorker, workerCount: number): ManyPool => {
  const waiting: Task[] = [];
  const idle: Desk[] = [];
  let deskCount = 0;
  let drillCount = 0;
  const drillIds = new WeakMap<ManyDrill, number>();

  const drillIdOf = (drill: ManyDrill): number => {
    const known = drillIds.get(drill);
    if (known !== undefined) return known;
    drillIds.set(drill, drillCount);
    return drillCount++;
  };
  const handOut = (): void => {
    while (waiting.length > 0) {
      if (idle.length === 0 && deskCount < workerCount) {
        idle.push({ worker: makeWorker(), drillId: -1 });
        deskCount++;
      }
      const desk = idle.pop();
      if (!desk) return;
      const task = waiting.shift()!;
      begin(desk, task, () => {
        idle.push(desk);
        handOut();
      });
    }
  };
  const play: ManyPool['play'] = (drill, chunks, onPart) => {
    const drillId = drillIdOf(drill);
    const parts: ManyPart[] = [];
    let doneCount = 0;
    let stop = (_why: Error): void => {};
    const promise = new Promise<readonly ManyPart[]>((resolve, reject) => {
      const tasks = chunks.map(
        (chunk, i): Task => ({
          drillId,
          drill,
          chunk,
          isOff: false,
          failed: why => stop(why),
          done: part => {
            parts[i] = part;
            doneCount++;
            onPart?.(part, doneCount);
            if (doneCount === chunks.length) resolve(parts);
          },
        }),
      );
      stop = why => {
        for (const task of tasks) task.isOff = true;
        waiting.splice(0, waiting.length, ...waiting.filter(task => !task.isOff));
        reject(why);
      };
      if (chunks.length === 0) resolve([]);
      waiting.push(...tasks);
      handOut();
    });
    return { parts: promise, cancel: () => stop(new Cancelled('stopped')) };
  };
  return { play };
};

/** A worker and the drill it was told last. */
interface Desk {
  readonly worker: ManyWorker;
  drillId: number;
}

const begin = (desk: Desk, task: Task, free: () => void): void => {
  const { worker } = desk;
  worker.onmessage = ({ data }) => {
    // Free first, so that the next chunk is under way while this one is looked at.
    free();
    if (task.isOff) return;
    if (data.kind === 'failed') task.failed(new Error(data.why));
    else task.done(data.part);
  };
  worker.onerror = event => {
    free();
    task.failed(new Error(event.message ?? 'a worker of the many-run stopped'));
  };
  const isNew = desk.drillId !== task.drillId;
  desk.drillId = task.drillId;
  worker.postMessage({
    drillId: task.drillId,
    chunk: task.chunk,
    ...(isNew && { drill: task.drill }),
  });
};
