/** The worker's entry in the browser. */
import type { WorkerMessage } from './messages.ts';
import { makeService } from './service.ts';

const waiting: (() => void)[] = [];
const channel = new MessageChannel();
channel.port1.onmessage = () => waiting.shift()?.();

const handle = makeService(
  (result) => self.postMessage(result),
  () =>
    new Promise((resolve) => {
      waiting.push(resolve);
      channel.port2.postMessage(0);
    }),
);
self.onmessage = (event: MessageEvent<WorkerMessage>) => handle(event.data);
