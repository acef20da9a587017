/** The worker's entry in the browser. */
import type { WorkerMessage } from './messages.ts';
import { makeService } from './service.ts';

const handle = makeService((result) => self.postMessage(result));
self.onmessage = (event: MessageEvent<WorkerMessage>) => handle(event.data);
