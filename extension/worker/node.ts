/** The worker's entry on Node. */
import { parentPort } from 'node:worker_threads';
import type { WorkerMessage } from './messages.ts';
import { makeService } from './service.ts';

const handle = makeService(
  (result) => parentPort?.postMessage(result),
  () => new Promise((resolve) => setImmediate(resolve)),
);
parentPort?.on('message', (message: WorkerMessage) => handle(message));
