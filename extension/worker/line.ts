/** A line to a running worker, however it was started. */
import type { WorkerMessage, WorkerResult } from './messages.ts';

/** A running worker. */
export interface WorkerLine {
  post(message: WorkerMessage): void;
  stop(): void;
}

export interface WorkerEvents {
  onResult(result: WorkerResult): void;
  /** It has ended by itself; `reason` is for the log. */
  onEnd(reason: string): void;
}

/** Where the worker's script is. */
export interface WorkerScript {
  /** Of the folder with the bundles, as a path of the file system (used on Node only). */
  readonly folder: string;
  /** The script for the browser. */
  read(): Promise<Uint8Array>;
}
