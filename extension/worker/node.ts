/** The worker's entry on Node. */
import { parentPort } from 'node:worker_threads';
import type { Numbered, WorkerRequest } from './messages.ts';
import { answerTo } from './service.ts';

parentPort?.on('message', (request: Numbered<WorkerRequest>) => {
  parentPort?.postMessage(answerTo(request));
});
