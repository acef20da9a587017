/**
 * Starts the worker where there is no Node: from a Blob, because a worker may not be started from
 * the address of an extension. The bundle for Node has `node-start.ts` in the place of this file.
 */
import type { WorkerEvents, WorkerLine, WorkerScript } from './line.ts';
import type { WorkerResult } from './messages.ts';

export async function startWorker(script: WorkerScript, events: WorkerEvents): Promise<WorkerLine> {
  const bytes = await script.read();
  const address = URL.createObjectURL(new Blob([bytes.slice()], { type: 'text/javascript' }));
  const worker = new Worker(address);
  worker.onmessage = (event: MessageEvent<WorkerResult>) => events.onResult(event.data);
  worker.onerror = (event) => events.onEnd(event.message);
  return {
    post: (request) => worker.postMessage(request),
    stop: () => {
      worker.terminate();
      URL.revokeObjectURL(address);
    },
  };
}
