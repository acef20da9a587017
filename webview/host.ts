/** The line to the extension: what is sent is typed, what arrives is checked. */
import type { GenericSchema, InferOutput } from 'valibot';
import { readMessage } from './messages.ts';

interface EditorApi {
  postMessage(message: unknown): void;
  getState(): unknown;
  setState(state: unknown): void;
}

declare function acquireVsCodeApi(): EditorApi;

export interface Host<Sent, State> {
  send(message: Sent): void;
  /** What the view kept for the time after it was hidden or reloaded, if it still reads. */
  kept(): State | undefined;
  keep(state: State): void;
}

export function connectHost<Incoming extends GenericSchema, Kept extends GenericSchema, Sent>(
  incoming: Incoming,
  kept: Kept,
  receive: (message: InferOutput<Incoming>) => void,
): Host<Sent, InferOutput<Kept>> {
  const api = acquireVsCodeApi();
  window.addEventListener('message', (event: MessageEvent<unknown>) => {
    const message = readMessage(incoming, event.data);
    if (message !== undefined) receive(message);
  });
  return {
    send: (message) => api.postMessage(message),
    kept: () => readMessage(kept, api.getState()),
    keep: (state) => api.setState(state),
  };
}
