/** The worker's entry in the browser. */
import type { Numbered, WorkerRequest } from './messages.ts';
import { answerTo } from './service.ts';

self.onmessage = (event: MessageEvent<Numbered<WorkerRequest>>) => {
  self.postMessage(answerTo(event.data));
};
