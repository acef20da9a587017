/**
 * Runs searches beside each other on the worker's one thread: some steps at a time, then a pause in
 * which messages come in. So a cancel is read at most a slice and a step after it was sent.
 */
import type { Progress, Search } from '../../engine/search/step.ts';
import type { SearchReply, WorkerResult } from './messages.ts';

/** Milliseconds of steps between two pauses; a step takes some more. */
const SLICE = 6;
/** Milliseconds between two reports of progress. */
const REPORT = 100;

/**
 * Resolves once messages that have come in were handled. Each surrounding has its own way: a timer waits
 * 4 ms each time in a browser, and on Node a message channel would hold back the messages of others.
 */
export type Pause = () => Promise<void>;

export class Runner {
  private readonly cancelled = new Set<number>();
  private readonly running = new Set<number>();
  private readonly post: (result: WorkerResult) => void;
  private readonly pause: Pause;

  constructor(post: (result: WorkerResult) => void, pause: Pause) {
    this.post = post;
    this.pause = pause;
  }

  start(id: number, search: Search<SearchReply>): void {
    this.running.add(id);
    void this.run(id, search)
      .then((result) => this.post(result))
      .catch((error: unknown) => this.post({ id, failed: describe(error) }))
      .finally(() => {
        this.running.delete(id);
        this.cancelled.delete(id);
      });
  }

  cancel(id: number): void {
    if (this.running.has(id)) this.cancelled.add(id);
  }

  private async run(id: number, search: Search<SearchReply>): Promise<WorkerResult> {
    let reported = performance.now();
    for (;;) {
      await this.pause();
      if (this.cancelled.has(id)) {
        // What is half done is dropped with the generator; finished tables are kept.
        return { id, cancelled: true };
      }
      const until = performance.now() + SLICE;
      let step = search.next();
      while (!step.done && performance.now() < until) step = search.next();
      if (step.done) return { id, body: step.value };
      if (performance.now() - reported < REPORT) continue;
      reported = performance.now();
      this.post({ id, progress: progressOf(step.value) });
    }
  }
}

function progressOf({ nodes, depth, best }: Progress): {
  nodes: number;
  depth: number;
  best?: number;
} {
  return { nodes, depth, ...(best === undefined ? {} : { best: best.length }) };
}

export function describe(error: unknown): string {
  return error instanceof Error ? (error.stack ?? error.message) : String(error);
}
