/** Starts the worker as a thread of Node; takes the place of `start.ts` in the bundle for Node. */
import path from 'node:path';
import { Worker } from 'node:worker_threads';
import type { WorkerResult } from './messages.ts';
import type { WorkerEvents, WorkerLine, WorkerScript } from './line.ts';

export function startWorker(script: WorkerScript, events: WorkerEvents): Promise<WorkerLine> {
  const worker = new Worker(path.join(script.folder, 'worker-node.cjs'));
  worker.on('message', (result: WorkerResult) => events.onResult(result));
  worker.on('error', (error) =>
    events.onEnd(error instanceof Error ? error.message : String(error)),
  );
  return Promise.resolve({
    post: (request) => worker.postMessage(request),
    stop: () => void worker.terminate(),
  });
}
